import { grams, millilitres, wholeMillimetres } from '@waymend/core/quantity/units';
import { layOut } from '@waymend/core/stowing/lay-out';
import type { StowOutcome } from '@waymend/core/stowing/stow';
import { stow } from '@waymend/core/stowing/stow';
import type { StowPiece, StowProblem } from '@waymend/core/stowing/stow-problem';
import { checkStowage } from '@waymend/planner/checking/stowage/check-stowage';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { randomStowage } from '../packages/solver/test/stowing/random-stowage.ts';

const solver = await createHighsSolver();
const CASES = [1, 2, 3, 4, 5, 6];

/** Bags of a quarter of their room, one thing put by hand where it does not belong, and a pouch with some things in it now. */
function tight(n: number): StowProblem {
  const problem = randomStowage(n, 45);
  const lies = { bag: 'pouch-t', pocket: null };
  const hand = { kind: 'bag', bag: 'pouch-e', pocket: null } as const;
  return {
    ...problem,
    pieces: problem.pieces.map((piece, p) =>
      p === n ? { ...piece, byHand: hand } : p % 9 === 0 ? { ...piece, now: lies } : piece,
    ),
    bags: problem.bags.map((bag) => ({
      ...bag,
      millilitres: bag.millilitres === null ? null : millilitres(Math.round(bag.millilitres / 4)),
    })),
  };
}

/** What a stowing that reads one rule falsely says; checked against the true problem it must be found out. */
interface Mutant {
  readonly name: string;
  readonly problem?: (problem: StowProblem) => StowProblem;
  readonly outcome?: (outcome: StowOutcome) => StowOutcome;
}

const pieces = (problem: StowProblem, change: (piece: StowPiece) => StowPiece): StowProblem => ({
  ...problem,
  pieces: problem.pieces.map(change),
});
const bags = (
  problem: StowProblem,
  change: (bag: StowProblem['bags'][number]) => StowProblem['bags'][number],
) => ({
  ...problem,
  bags: problem.bags.map(change),
});

const MUTANTS: readonly Mutant[] = [
  {
    name: 'everything is short enough for every pocket',
    problem: (p) => pieces(p, (piece) => ({ ...piece, size: { ...piece.size, length: piece.size.width } })),
  },
  {
    name: 'slots are twice as wide',
    problem: (p) =>
      bags(p, (bag) => ({
        ...bag,
        pockets: bag.pockets.map((q) => ({ ...q, width: wholeMillimetres(2 * q.width) })),
      })),
  },
  {
    name: 'bags hold any number of litres',
    problem: (p) => bags(p, (bag) => ({ ...bag, millilitres: null, length: null, height: null })),
  },
  { name: 'liquids are no liquids', problem: (p) => pieces(p, (piece) => ({ ...piece, marks: [] })) },
  { name: 'every bag holds spills', problem: (p) => bags(p, (bag) => ({ ...bag, spillproof: true })) },
  {
    name: 'nothing is wanted at once',
    problem: (p) => pieces(p, (piece) => ({ ...piece, firstGrab: false })),
  },
  { name: 'nothing belongs together', problem: (p) => pieces(p, (piece) => ({ ...piece, groups: [] })) },
  {
    name: 'everything weighs a gram',
    problem: (p) => pieces(p, (piece) => ({ ...piece, grams: grams(1) })),
  },
  { name: 'nothing is ever used', problem: (p) => pieces(p, (piece) => ({ ...piece, uses: 0 })) },
  {
    name: 'the berths are all on the load floor',
    problem: (p) => ({
      ...p,
      berths: p.berths.map((berth) => ({ ...berth, z: wholeMillimetres(0) })),
    }),
  },
  {
    name: 'what was put by hand may go elsewhere',
    problem: (p) => pieces(p, ({ byHand: _, ...piece }) => piece),
  },
  {
    name: 'nothing lies anywhere yet',
    problem: (p) => pieces(p, ({ now: _, ...piece }) => piece),
  },
  {
    name: 'a piece is left out of the answer',
    outcome: (o) => ({ ...o, stowage: { ...o.stowage, places: o.stowage.places.slice(1) } }),
  },
  {
    name: 'a broken rule is kept quiet',
    outcome: (o) => ({ ...o, broken: o.broken.slice(1) }),
  },
  {
    name: 'a bound is above what was found',
    outcome: (o) => ({ ...o, levels: o.levels.map((level) => ({ ...level, bound: level.value + 1 })) }),
  },
];

function rejected({
  problem: falsify = (p) => p,
  outcome: corrupt = (o) => o,
}: Omit<Mutant, 'name'>): number {
  return CASES.filter((n) => {
    const problem = tight(n);
    const started = performance.now();
    const outcome = corrupt(
      stow(falsify(problem), solver, {
        clock: () => (performance.now() - started) / 1000,
        timeLimit: 0.4,
      }),
    );
    const { stowage, levels, broken } = outcome;
    return !checkStowage(problem, stowage, { levels, broken: broken.map(({ rule }) => rule) }).ok;
  }).length;
}

describe('stowings that are wrong on purpose', () => {
  it('[M14] [M8] the right one passes the check in every case', () => {
    expect(rejected({})).toBe(0);
    // The cases are worth checking: many places, bags that may go elsewhere, things of every mark.
    const layout = layOut(tight(1));
    expect(layout.spots.length).toBeGreaterThan(40);
    expect(layout.homes.some((homes) => homes.length > 1)).toBe(true);
  });

  it.each(MUTANTS.map(({ name, ...mutant }) => [name, mutant] as const))(
    '[M14] is found out: %s',
    (_, mutant) => {
      expect(rejected(mutant)).toBeGreaterThan(0);
    },
  );
});
