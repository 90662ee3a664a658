import { kitOf, stowTrip } from '@waymend/planner/stow/stow-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { StowAnswer } from '@waymend/planner/answer/stow-answer';
import type { Result } from '@waymend/core/result';
import { refuse as refusal } from '@waymend/core/result';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { paintFor } from '../text/paint.ts';
import { labelLines } from '../text/stow-labels.ts';
import { stowLines } from '../text/stow-text.ts';
import { refuse } from './garage-at.ts';
import type { Planned } from './planned.ts';
import { planned } from './planned.ts';

/** Longest a stowage thinks when nobody says otherwise. */
const PATIENCE_SECONDS = 10;

export async function stowCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const seconds = secondsOf(options['stowSeconds']);
  if (!seconds.ok) {
    refuse(io, [seconds.error]);
    return EXIT.refused;
  }
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const answer = stowPlanned(io, made.planned, seconds.value);
  if (!answer.ok) {
    refuse(io, [answer.error]);
    return EXIT.refused;
  }
  const { json, units } = made.planned.asked;
  if (json) io.out(`${JSON.stringify(answer.value, null, 2)}\n`);
  else {
    const lines =
      options['labels'] === true
        ? labelLines(answer.value, units)
        : stowLines(answer.value, units, paintFor(io.colour));
    io.out(`${lines.join('\n')}\n`);
  }
  return EXIT.done;
}

/** Stows the kit of a plan that has been made. */
export function stowPlanned(
  io: Io,
  { prepared, solved, solver }: Planned,
  seconds = PATIENCE_SECONDS,
): Result<StowAnswer> {
  return stowTrip(prepared.built, kitOf(prepared.built, solved), SHIPPED_TRADE, solver, {
    clock: () => io.clock() / 1000,
    timeLimit: seconds,
    shouldStop: io.stopAsked,
  });
}

function secondsOf(written: unknown): Result<number> {
  if (written === undefined) return { ok: true, value: PATIENCE_SECONDS };
  const value = Number(written);
  if (Number.isFinite(value) && value >= 0.05 && value <= 86_400) return { ok: true, value };
  return refusal('stow-seconds-wrong', 'stow-seconds must be a number from 0.05 to 86,400');
}
