import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { sureOf } from '@waymend/planner/sureness/sure-trip';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { paintFor } from '../text/paint.ts';
import { sureText } from '../text/sure-text.ts';
import { wholeNumber } from '../text/whole-number.ts';
import { refuse } from './garage-at.ts';
import { planned } from './planned.ts';

/** How sure the plan is, what to measure next, and what to see to at home (M11). */
export async function sureCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const draws = wholeNumber(options['draws'], 'draws', 5, 1_000);
  const sizes = wholeNumber(options['sizes'], 'sizes', 0, 500);
  const seed = wholeNumber(options['seed'], 'seed', 0, 2 ** 31 - 1);
  if (!draws.ok || !sizes.ok || !seed.ok) {
    refuse(
      io,
      [draws, sizes, seed].flatMap((n) => (n.ok ? [] : [n.error])),
    );
    return EXIT.refused;
  }
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { prepared, solved, asked: how } = made.planned;
  const outcome = sureOf(prepared, how.question, solved, await createHighsSolver(), SHIPPED_TRADE, {
    draws: draws.value,
    sizes: sizes.value,
    seed: seed.value,
    patience: { clock: () => io.clock() / 1000, shouldStop: io.stopAsked },
    onStep: (done, of) => {
      if (io.interactive) io.err(`\r\u001b[K${done} of ${of} other kits looked for ...`);
    },
  });
  if (io.interactive) io.err('\r\u001b[K');
  if (!outcome.ok) {
    refuse(io, [outcome.error]);
    return EXIT.refused;
  }
  if (outcome.value.kind === 'stopped') {
    refuse(io, [
      { id: 'sure-stopped', message: 'Stopped: half of it is no answer; ask for fewer --draws or --sizes' },
    ]);
    return EXIT.refused;
  }
  const { answer } = outcome.value;
  io.out(
    how.json ? `${JSON.stringify(answer, null, 2)}\n` : sureText(answer, how.units, paintFor(io.colour)),
  );
  return EXIT.done;
}
