import type { Solver } from '@waymend/core/choosing/solver-port';
import type { SureItem } from '../answer/sure-answer.ts';
import type { Patience, Prepared, Question, Solved } from '../plan/plan-trip.ts';
import { solve } from '../plan/plan-trip.ts';
import type { RateDraw } from './draws.ts';
import { sceneUnder, withScene } from './other-scene.ts';

/** In at least so many of the draws: sure; likely; else it is a matter of taste. */
const SURE = 0.9;
const LIKELY = 0.5;

/** The best kit under one belief, in the question it answers. */
export interface BestKit {
  readonly belongings: ReadonlySet<string>;
  readonly solved: Solved;
  readonly under: Prepared;
}

/** The best kit under one belief about the rates; null when that belief admits no plan. */
export function bestKitUnder(
  prepared: Prepared,
  question: Question,
  draw: RateDraw,
  solver: Solver,
  patience: Patience,
): BestKit | null {
  const under = withScene(prepared, sceneUnder(prepared.built.scene, draw));
  if (!under.ok) return null;
  const outcome = solve(under.value, question, solver, patience);
  if (outcome.kind !== 'solved') return null;
  return {
    belongings: belongingsOf(under.value, outcome.solved),
    solved: outcome.solved,
    under: under.value,
  };
}

export function belongingsOf({ built }: Prepared, { choice }: Solved): ReadonlySet<string> {
  return new Set(choice.carried.flatMap((p) => built.scene.pieces[p]?.belonging ?? []));
}

/** How often each belonging is in the best kit; those that never are, and are not carried now, are left out. */
export function sureItems(
  { built }: Prepared,
  now: ReadonlySet<string>,
  kits: readonly ReadonlySet<string>[],
): readonly SureItem[] {
  const times = new Map<string, number>();
  for (const kit of kits) for (const id of kit) times.set(id, (times.get(id) ?? 0) + 1);
  const seen = new Set<string>();
  const items: SureItem[] = [];
  for (const { belonging, name, grams, owned } of built.scene.pieces) {
    if (seen.has(belonging) || (!now.has(belonging) && !times.has(belonging))) continue;
    seen.add(belonging);
    const share = kits.length === 0 ? 0 : (times.get(belonging) ?? 0) / kits.length;
    const how = share >= SURE ? 'sure' : share >= LIKELY ? 'likely' : 'taste';
    items.push({ id: belonging, name, grams, owned, inKit: now.has(belonging), share, how });
  }
  return items.sort((a, b) => b.share - a.share || b.grams - a.grams || (a.id < b.id ? -1 : 1));
}
