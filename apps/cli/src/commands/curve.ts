import { frontier } from '@waymend/core/choosing/frontier';
import { chanceOfLoss } from '@waymend/planner/explain/reading';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { asked } from '../text/ask.ts';
import { curveText, gapOf } from '../text/curve-text.ts';
import { paintFor } from '../text/paint.ts';
import { garageAt, refuse } from './garage-at.ts';
import { noPlan } from './planned.ts';

/** Mass against chance, every point proven or with its gap (M9). */
export async function curveCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const garage = await garageAt(io, path);
  if (garage === null) return EXIT.refused;
  const how = asked(garage, { ...options, limit: options['limit'] ?? 'none' });
  if (!how.ok) {
    refuse(io, [how.error]);
    return EXIT.refused;
  }
  const points = Number(options['points'] ?? 30);
  if (!Number.isInteger(points) || points < 2 || points > 60) {
    refuse(io, [{ id: 'points-unclear', message: '--points wants a whole number from 2 to 60' }]);
    return EXIT.refused;
  }
  const made = prepare(garage, how.value.tripId, SHIPPED_TRADE, how.value.question);
  if (!made.ok) {
    refuse(io, [made.error]);
    return EXIT.refused;
  }
  const solver = await createHighsSolver();
  const patience = {
    clock: () => io.clock() / 1000,
    shouldStop: io.stopAsked,
    ...(how.value.seconds === null ? {} : { timeLimit: how.value.seconds }),
  };
  let done = 0;
  const answer = frontier(made.value.stated.problem, solver, {
    points,
    ...patience,
    onPoint: () => {
      done += 1;
      if (io.interactive) io.err(`\r\u001b[K${done} of about ${points} points ...`);
    },
  });
  if (io.interactive) io.err('\r\u001b[K');
  if (answer.kind === 'failed') {
    refuse(io, [{ id: 'solver-failed', message: `The solver gave up: ${answer.cause}` }]);
    return EXIT.refused;
  }
  if (answer.kind === 'no-plan') {
    const question = { ...how.value.question, aim: { kind: 'best-chance' } } as const;
    const outcome = solve(made.value, question, solver, patience);
    if (outcome.kind === 'no-plan') return noPlan(io, how.value.json, outcome.sentences);
    return unfinished(io);
  }
  // Stopped before the first point: that says nothing about whether there is a plan.
  if (answer.points.length === 0) return unfinished(io);
  const shown = [...answer.points].sort((a, b) => a.grams - b.grams);
  if (how.value.json) {
    const rows = shown.map((p) => ({
      massGrams: p.grams,
      pieces: p.pieces,
      unaided: chanceOfLoss(p.loss),
      proven: p.proven,
      gap: gapOf(p),
    }));
    io.out(
      `${JSON.stringify({ schema: 'waymend.curve/1', trip: how.value.tripId, complete: answer.complete, points: rows }, null, 2)}\n`,
    );
  } else {
    io.out(
      curveText(garage.trips[how.value.tripId]?.name ?? how.value.tripId, shown, answer.stoppedBy ?? null, {
        units: how.value.units,
        paint: paintFor(io.colour),
      }),
    );
  }
  return EXIT.done;
}

function unfinished(io: Io): ExitCode {
  refuse(io, [
    { id: 'curve-unfinished', message: 'No point was found in the time given; allow more --seconds' },
  ]);
  return EXIT.refused;
}
