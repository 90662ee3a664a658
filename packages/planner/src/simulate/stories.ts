import type { Scene } from '@waymend/core/repairing/scene';
import { kindDrawer } from '@waymend/core/simulating/draw-kind';
import type { Randomness } from '@waymend/core/simulating/simulate';
import type { TripLaw } from '@waymend/core/simulating/trip-law';
import { poissonWeights } from '@waymend/core/simulating/trip-law';
import { walker } from '@waymend/core/simulating/walk';
import type { StoryAnswer } from '../answer/simulate-answer.ts';
import type { KitForWalk } from './kit-for-walk.ts';

/** Trips told; quiet ones are no story. */
const STORIES = 5;
/** A stream of its own: the stories are not the first trips of the count. */
const STREAM = -1;
/** Tries before it is accepted that hardly anything happens on this trip. */
const MOST_TRIES = 5000;

/** A handful of drawn trips on which something happened, in the order it happened. */
export function stories(
  scene: Scene,
  law: TripLaw,
  { kit, jobs }: KitForWalk,
  pieces: ReadonlyMap<string, readonly string[]>,
  randomness: Randomness,
): readonly StoryAnswer[] {
  const expected = law.expected.reduce((sum, e) => sum + e, 0);
  if (expected === 0) return [];
  const names = new Map(scene.pieces.map((p) => [p.id, p.name]));
  const next = randomness(STREAM);
  const drawKind = kindDrawer(law.expected);
  const weights = poissonWeights(expected, 1e-9);
  const walk = walker(kit);
  const told: StoryAnswer[] = [];
  for (let tries = 0; told.length < STORIES && tries < MOST_TRIES; tries++) {
    const failures = countOf(weights, next());
    const trip = {
      kinds: Int32Array.from({ length: failures }, () => drawKind(next())),
      fate: Float64Array.from({ length: failures }, next),
      luck: Float64Array.from({ length: failures }, next),
    };
    const events: StoryAnswer['events'][number][] = [];
    const strandedAt = walk(trip, failures, (trouble, answer, held) => {
      const job = jobs[trouble]?.[answer];
      events.push({
        failure: scene.trouble[trouble]?.failure ?? '',
        title: scene.trouble[trouble]?.title ?? '',
        job: job?.title ?? null,
        held,
        ranOut: answer < 0 && (jobs[trouble]?.length ?? 0) > 0,
        with: held ? (pieces.get(job?.id ?? '') ?? []).flatMap((p) => names.get(p) ?? []) : [],
      });
    });
    if (events.length > 0) told.push({ home: strandedAt < 0, events });
  }
  return told;
}

function countOf(weights: readonly number[], uniform: number): number {
  let left = uniform;
  for (const [n, w] of weights.entries()) {
    if (left < w) return n;
    left -= w;
  }
  return weights.length - 1;
}
