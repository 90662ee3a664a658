import { loadAnswer } from '@waymend/planner/explain/load-answer';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { LoadAnswer } from '@waymend/planner/answer/plan-answer';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { asked } from '../text/ask.ts';
import { heading } from '../text/layout.ts';
import { loadLines } from '../text/load-text.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse } from './garage-at.ts';
import { planned } from './planned.ts';

export async function loadCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  if (options['withoutKit'] === true) return withoutKit(io, path, options);
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { answer, asked: how } = made.planned;
  print(io, answer.trip.name, 'with the planned kit', answer.load, how.units, how.json);
  return EXIT.done;
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
): void {
  if (json) {
    io.out(`${JSON.stringify({ schema: 'waymend.load/1', trip, when, load }, null, 2)}\n`);
    return;
  }
  const lines = [...heading(`${trip}: load ${when}`, paintFor(io.colour)), ...loadLines(load, units)];
  io.out(`${lines.join('\n')}\n`);
}
