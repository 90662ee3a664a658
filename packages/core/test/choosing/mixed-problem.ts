import { randomProblem } from '../../src/choosing/random-problem.ts';

/** A small problem with one of everything; the same number gives the same one. */
export const mixedProblem = (number: number) =>
  randomProblem({
    number,
    pieces: 14,
    needs: 20,
    events: 12,
    massShare: 0.5,
    enough: 0.3,
    must: 2,
    gain: 50,
  });
