import type { Scene } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Simulated } from '@waymend/core/simulating/simulate';
import { simulate } from '@waymend/core/simulating/simulate';
import type { SimulateAnswer, SimulatedChance } from '../answer/simulate-answer.ts';
import { rateRatios } from '../explain/at-real-mass.ts';
import type { Prepared } from '../plan/plan-trip.ts';
import type { Trade } from '../trade.ts';
import { statedChance } from './stated.ts';
import type { KitForWalk } from './kit-for-walk.ts';
import { kitForWalk, lawOf } from './kit-for-walk.ts';
import { piecesByJob } from './pieces-by-job.ts';
import { seeded } from './randomness.ts';
import { stories } from './stories.ts';

/** A kit to be walked: the pieces by id, and its mass with cases. */
export interface KitToWalk {
  readonly title: string;
  readonly carried: ReadonlySet<string>;
  readonly grams: number;
}

export interface SimulateAsk {
  readonly trips: number;
  readonly seed: number;
  readonly against?: KitToWalk;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (done: number, of: number) => void;
}

/** Told when somebody stopped it: half a simulation is no answer. */
export type SimulateOutcome =
  | { readonly kind: 'simulated'; readonly answer: SimulateAnswer }
  | { readonly kind: 'stopped' };

/** Draws trips for the scene of a plan and walks the kit, and another if asked, through them (M12). */
export function simulateTrip(
  { built }: Pick<Prepared, 'built'>,
  kit: KitToWalk,
  trade: Trade,
  ask: SimulateAsk,
): Result<SimulateOutcome> {
  const { scene } = built;
  const kits = [kit, ...(ask.against === undefined ? [] : [ask.against])];
  const expected: (readonly number[])[] = [];
  for (const { grams } of kits) {
    const ratios = rateRatios(built, trade, grams);
    if (!ratios.ok) return ratios;
    expected.push(scene.trouble.map((t) => t.expected * (ratios.value.get(t.failure) ?? 1)));
  }
  const law = lawOf(expected);
  const walked = kits.map(({ carried }, k) => kitForWalk(scene, carried, expected[k] ?? [], law));
  const outcome = simulate(
    law,
    walked.map((w) => w.kit),
    {
      trips: ask.trips,
      randomness: seeded(ask.seed),
      ...(ask.shouldStop ? { shouldStop: ask.shouldStop } : {}),
      ...(ask.onProgress ? { onProgress: ask.onProgress } : {}),
    },
  );
  if (outcome.kind === 'stopped') return ok({ kind: 'stopped' });
  const [first, second] = outcome.kits;
  const [walk] = walked;
  if (first === undefined || walk === undefined) throw new Error('a simulation without a kit');
  const stated = statedChance(scene, kit.carried, expected[0] ?? []);
  const pieces = piecesByJob(scene, kit.carried);
  return ok({
    kind: 'simulated',
    answer: {
      schema: 'waymend.simulate/1',
      trip: built.tripId,
      seed: ask.seed,
      trips: first.trips,
      unaided: chanceOf(first),
      stated: stated.bound,
      statedExactStock: stated.exact,
      words: agreement(first, stated),
      strands: strandsOf(scene, first),
      used: usedOf(scene, first, walk, pieces),
      stories: stories(scene, law, walk, pieces, seeded(ask.seed)),
      against:
        second === undefined || ask.against === undefined
          ? null
          : {
              title: ask.against.title,
              massGrams: ask.against.grams,
              unaided: chanceOf(second),
              onlyThisKit: outcome.against[1]?.worse ?? 0,
              onlyTheOther: outcome.against[1]?.better ?? 0,
            },
    },
  });
}

function chanceOf({ unaided, interval }: Simulated): SimulatedChance {
  return { chance: unaided, low: interval.low, high: interval.high };
}

function agreement(
  { unaided, interval }: Simulated,
  stated: { readonly bound: number; readonly exact: number },
): string {
  const points = (p: number): string => `${(p * 100).toFixed(1)} %`;
  if (interval.low <= stated.bound && stated.bound <= interval.high)
    return 'The drawn trips and the stated chance agree.';
  if (stated.bound < interval.low)
    return `The drawn trips end better than stated, by about ${points(unaided - stated.bound)}: the stated chance counts spares that several failures share on the safe side, and does not count a second repair when the first one's spares have run out.`;
  return `The drawn trips end worse than stated, by about ${points(stated.bound - unaided)}: chance alone does that on one seed in 40, so try another; if another does it too, please report it with this garage.`;
}

function strandsOf(scene: Scene, { stranded }: Simulated): SimulateAnswer['strands'] {
  const by = new Map<string, { failure: string; title: string; group: string; share: number }>();
  scene.trouble.forEach((t, n) => {
    const known = by.get(t.failure) ?? { failure: t.failure, title: t.title, group: t.group, share: 0 };
    known.share += stranded[n] ?? 0;
    by.set(t.failure, known);
  });
  return [...by.values()].filter((s) => s.share > 0).sort((a, b) => b.share - a.share);
}

function usedOf(
  scene: Scene,
  { repairs }: Simulated,
  { jobs }: KitForWalk,
  pieces: ReadonlyMap<string, readonly string[]>,
): SimulateAnswer['used'] {
  const names = new Map(scene.pieces.map((p) => [p.id, { id: p.belonging, name: p.name }]));
  const by = new Map<string, { id: string; name: string; perTrip: number }>();
  repairs.forEach((counts, trouble) => {
    counts.forEach((perTrip, answer) => {
      const job = jobs[trouble]?.[answer];
      if (job === undefined || perTrip === 0) return;
      const belongings = new Map(
        (pieces.get(job.id) ?? []).flatMap((p) => {
          const piece = names.get(p);
          return piece === undefined ? [] : [[piece.id, piece.name] as const];
        }),
      );
      for (const [id, name] of belongings) {
        const known = by.get(id) ?? { id, name, perTrip: 0 };
        known.perTrip += perTrip;
        by.set(id, known);
      }
    });
  });
  return [...by.values()].sort((a, b) => b.perTrip - a.perTrip || (a.id < b.id ? -1 : 1));
}
