import { KitState } from '@waymend/core/choosing/kit-state';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { Joint } from '@waymend/core/repairing/scene';
import type { MeasureNext } from '../answer/sure-answer.ts';
import type { Patience, Prepared, Question } from '../plan/plan-trip.ts';
import { solve } from '../plan/plan-trip.ts';
import type { Trade } from '../trade.ts';
import { jointUses } from '../views/joint-worth.ts';
import { chanceUnder } from './band.ts';
import { carry, openByGroup } from './open-by-group.ts';
import { withScene } from './other-scene.ts';
import type { PossibleSize } from './other-sizes.ts';
import { otherSizes, sceneWithSize } from './other-sizes.ts';

/** A joint whose size is only assumed, that some job turns, and that may have other sizes. */
export interface Doubt {
  readonly joint: Joint;
  readonly others: readonly PossibleSize[];
}

/** The doubts of a scene, what the jobs lean on most first. */
export function doubts({ built: { scene } }: Prepared, { places }: Trade): readonly Doubt[] {
  const uses = jointUses(scene);
  const byId = new Map<string, Trade['places'][number]>(places.map((p) => [p.id, p]));
  const stops = (joint: Joint): number => uses.get(joint.id)?.stops ?? 0;
  return scene.joints
    .filter((joint) => joint.status === 'assumed' && stops(joint) > 0)
    .sort((a, b) => stops(b) - stops(a) || (a.id < b.id ? -1 : 1))
    .flatMap((joint) => {
      const others = otherSizes(joint, byId.get(joint.place));
      return others.length === 0 ? [] : [{ joint, others }];
    });
}

/**
 * What knowing a size before choosing is worth: over the sizes it may have, the chance of the best kit for that size less
 * the chance of the planned kit, weighted by how likely the size is. Null when somebody stopped it.
 */
export function worthOfKnowing(
  prepared: Prepared,
  question: Question,
  carried: ReadonlySet<string>,
  { joint, others }: Doubt,
  solver: Solver,
  patience: Patience,
): MeasureNext | null {
  let gain = 0;
  const found: MeasureNext['others'][number][] = [];
  for (const { size, chance } of others) {
    const other = withScene(prepared, sceneWithSize(prepared.built.scene, joint.id, size));
    if (!other.ok) continue;
    const { reading } = other.value;
    const outcome = solve(other.value, question, solver, patience);
    if (patience.shouldStop?.() === true) return null;
    if (outcome.kind !== 'solved') continue;
    const planned = chanceUnder(
      openByGroup(reading, carry(new KitState(reading.compiled), reading, carried)),
      new Map(),
    );
    const best = chanceUnder(openByGroup(reading, outcome.solved.state), new Map());
    // A kit that fits other limits (least mass, must-do) may be worse than the planned one; nobody would change to it.
    const better = Math.max(0, best - planned);
    gain += chance * better;
    const { scene } = other.value.built;
    const changed = outcome.solved.choice.carried.flatMap((p) => scene.pieces[p] ?? []);
    found.push({
      size: size.label,
      likely: chance,
      planned,
      best,
      joins: better === 0 ? [] : [...new Set(changed.filter((p) => !carried.has(p.id)).map((p) => p.name))],
    });
  }
  return {
    joint: joint.id,
    title: joint.title,
    assumed: joint.size.label,
    gain,
    how: howTo(joint),
    others: found,
  };
}

/** What to bring to the vehicle to find out. */
function howTo({ drive, size }: Joint): string {
  const flats = size.kind === 'across-flats';
  if (drive === 'flare' || (drive === 'hex' && flats))
    return 'a caliper across the flats, or offer up the nearest sockets until one goes on without play';
  if (drive === 'hex-key' || drive === 'lobe' || drive === 'spline')
    return 'clean the recess and offer up keys, the largest that goes in is the size';
  if (drive === 'locknut-hex' || drive === 'locknut-peg')
    return 'take the cap off and use a caliper; the parts list of the maker says it too';
  return 'offer up the nearest tool, or a caliper';
}
