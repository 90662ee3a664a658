import { loadAnswer } from '@waymend/planner/explain/load-answer';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { LoadAnswer } from '@waymend/planner/answer/plan-answer';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { asked } from '../text/ask.ts';
import { heading } from '../text/layout.ts';
import { loadLines } from '../text/load-text.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse } from './garage-at.ts';
import type { Planned } from './planned.ts';
import { stowPlanned } from './stow.ts';
import { planned } from './planned.ts';

export async function loadCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  if (options['withoutKit'] === true) return withoutKit(io, path, options);
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { answer, asked: how, garage } = made.planned;
  const stowed = stowedLoad(io, made.planned, Object.keys(garage.bags).length > 0);
  if (!stowed.ok) {
    refuse(io, [stowed.error]);
    return EXIT.refused;
  }
  print(io, answer.trip.name, 'with the planned kit', answer.load, how.units, how.json, stowed.value);
  return EXIT.done;
}

/** Longest to think about where things go, when only the axles are asked about. */
const STOW_SECONDS = 3;

/** The load once everything is where it is stowed; null for a garage without bags. */
function stowedLoad(io: Io, made: Planned, bags: boolean): Result<LoadAnswer | null> {
  if (!bags) return ok(null);
  const stowed = stowPlanned(io, made, STOW_SECONDS);
  return stowed.ok ? ok(stowed.value.load) : stowed;
}

/** No plan needed: what everything but the kit already weighs. */
async function withoutKit(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const garage = await garageAt(io, path);
  if (garage === null) return EXIT.refused;
  const how = asked(garage, options);
  if (!how.ok) {
    refuse(io, [how.error]);
    return EXIT.refused;
  }
  const built = buildScene(garage, how.value.tripId, SHIPPED_TRADE, how.value.question);
  const load = built.ok ? loadAnswer(built.value, SHIPPED_TRADE, []) : built;
  if (!load.ok) {
    refuse(io, [load.error]);
    return EXIT.refused;
  }
  print(
    io,
    garage.trips[how.value.tripId]?.name ?? how.value.tripId,
    'before the kit',
    load.value,
    how.value.units,
    how.value.json,
  );
  return EXIT.done;
}

function print(
  io: Io,
  trip: string,
  when: string,
  load: LoadAnswer,
  units: 'metric' | 'inch',
  json: boolean,
  stowed?: LoadAnswer | null,
): void {
  if (json) {
    const more = stowed === undefined ? {} : { stowed };
    io.out(`${JSON.stringify({ schema: 'waymend.load/1', trip, when, load, ...more }, null, 2)}\n`);
    return;
  }
  const lines = [...heading(`${trip}: load ${when}`, paintFor(io.colour)), ...loadLines(load, units)];
  if (stowed !== undefined && stowed !== null)
    lines.push(
      '',
      ...heading('As stowed (waymend stow), the bags themselves counted', paintFor(io.colour)),
      ...loadLines(stowed, units),
    );
  io.out(`${lines.join('\n')}\n`);
}
