import { aboutOneIn } from '@waymend/planner/words/chance';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { PlanProgress } from '@waymend/core/choosing/plan';
import type { Io } from '../io.ts';

/** Work shorter than this says nothing. */
const QUIET_MS = 700;
const BETWEEN_MS = 200;

/** One line on standard error while the proof runs: best so far, and what could at most still be won. */
export function progressOn(io: Io): {
  readonly show: (progress: PlanProgress) => void;
  readonly end: () => void;
} {
  const started = io.clock();
  let last = started;
  let shown = false;
  return {
    show: ({ loss, bound }) => {
      const now = io.clock();
      if (!io.interactive || now - started < QUIET_MS || now - last < BETWEEN_MS) return;
      last = now;
      shown = true;
      const best =
        loss === null
          ? 'looking for a first plan'
          : `best so far: help needed on ${aboutOneIn(1 - Math.exp(-loss * SCORE_UNIT))} trips`;
      const gap =
        loss === null || loss <= 0
          ? ''
          : `, at most ${((100 * (loss - bound)) / loss).toFixed(1)} % of that left to win`;
      io.err(`\r\u001b[K${best}${gap} ...`);
    },
    end: () => {
      if (shown) io.err('\r\u001b[K');
    },
  };
}
