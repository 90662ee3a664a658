import type { NeedIndex } from '../choosing/problem.ts';
import { isBetter, worstOf } from './grade.ts';
import type { Bench } from './bench.ts';
import { holdWays } from './hold-ways.ts';
import type { GradedNeed, GradedWay, NeedPool } from './need-pool.ts';
import type { Crew, Joint } from '../repairing/scene.ts';
import { turnWays } from './turn-ways.ts';
import type { Trains, TurnWay } from './turn-way.ts';

/** Undoing a joint, a need a grade: turning it, and holding its other end at the same moment where it must be held. */
export function jointNeed(
  pool: NeedPool,
  bench: Bench,
  trains: Trains,
  joint: Joint,
  crew: Crew,
): GradedNeed {
  const turns = turnWays(bench, trains, joint, crew);
  const words = `turn ${joint.title} (${joint.size.label})`;
  if (joint.hold === undefined) return pool.graded(bestOfEach(turns), words);
  const holds = holdWays(pool, bench, joint, joint.hold);
  return pool.graded(pairs(pool, bestOfEach(turns), bestOfEach(holds)), `${words} and hold its other end`);
}

/** A way that takes no more pieces at no better a grade is not needed beside its equal. */
function bestOfEach(ways: readonly TurnWay[]): readonly TurnWay[] {
  const best = new Map<string, TurnWay>();
  for (const way of ways) {
    const key = `${[...way.pieces].sort((a, b) => a - b).join(',')};${way.needs.join(',')}`;
    const known = best.get(key);
    if (known === undefined || isBetter(way.grade, known.grade)) best.set(key, way);
  }
  return [...best.values()];
}

/**
 * Two sides at the same moment (M3): no piece on both, and at most one of them swings a drive handle. Since only one side has
 * a handle, the needs of a drive train can meet the other side's pieces only where a piece is both; such pieces are rare and
 * are kept apart by name.
 */
function pairs(pool: NeedPool, turns: readonly TurnWay[], holds: readonly TurnWay[]): readonly GradedWay[] {
  const out = new Map<string, GradedWay>();
  const inside = new Map<NeedIndex, ReadonlySet<number>>();
  for (const turn of turns) {
    for (const hold of holds) {
      if (turn.handle && hold.handle) continue;
      if (turn.pieces.some((p) => hold.pieces.includes(p))) continue;
      if (clash(pool, inside, turn, hold) || clash(pool, inside, hold, turn)) continue;
      const grade = worstOf(turn.grade, hold.grade);
      if (grade === null) continue;
      const pieces = [...turn.pieces, ...hold.pieces].sort((a, b) => a - b);
      const needs = [...turn.needs, ...hold.needs];
      const key = `${pieces.join(',')};${needs.join(',')}`;
      const known = out.get(key);
      if (known === undefined || isBetter(grade, known.grade)) out.set(key, { pieces, needs, grade });
    }
  }
  return [...out.values()];
}

/** Whether a piece of one side might also be what meets a need of the other. */
function clash(
  pool: NeedPool,
  inside: Map<NeedIndex, ReadonlySet<number>>,
  one: TurnWay,
  other: TurnWay,
): boolean {
  return other.needs.some((need) => {
    const pieces = inside.get(need) ?? piecesBelow(pool, need);
    inside.set(need, pieces);
    return one.pieces.some((p) => pieces.has(p));
  });
}

function piecesBelow(pool: NeedPool, need: NeedIndex, into = new Set<number>()): ReadonlySet<number> {
  const node = pool.needs[need];
  if (node === undefined) return into;
  if (node.kind === 'enough') {
    for (const { piece } of node.from) into.add(piece);
    return into;
  }
  for (const way of node.ways) {
    for (const p of way.pieces) into.add(p);
    for (const n of way.needs) piecesBelow(pool, n, into);
  }
  return into;
}
