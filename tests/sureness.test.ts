import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import type { Prepared, Question } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { doubts, worthOfKnowing } from '@waymend/planner/sureness/measure-next';
import { otherSizes, sceneWithSize } from '@waymend/planner/sureness/other-sizes';
import type { SureAsk } from '@waymend/planner/sureness/sure-trip';
import { sureOf } from '@waymend/planner/sureness/sure-trip';
import type { Trade } from '@waymend/planner/trade';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check, everyKit, isFeasible } from './support/every-kit.ts';
import { randomGarage } from './support/random-garage.ts';
import { steady } from './support/steady.ts';
import { TINY_TRADE } from './support/tiny-trade.ts';

const solver = await createHighsSolver();

/** The small trade, where some places are met in two sizes. */
const OTHER: ReadonlyMap<string, string> = new Map([
  ['wheel-nut', '17 mm'],
  ['shock-lower', '13 mm'],
  ['alternator-bolt', '17 mm'],
]);
const DOUBTFUL: Trade = {
  ...TINY_TRADE,
  places: TINY_TRADE.places.map((place) => {
    const other = OTHER.get(place.id);
    return other === undefined ? place : { ...place, sizes: [place.sizes[0], other] };
  }),
};
const BEST: Question = { aim: { kind: 'best-chance' } };

const PLAIN = {
  copies: 1,
  weighed: false,
  state: 'ready' as const,
  forSale: false,
  doesNotFit: false,
  confirmed: false,
};

describe('[M11] what knowing a size is worth', () => {
  it('[M11] is what trying every kit for every size gives', { timeout: 120_000 }, () => {
    let looked = 0;
    let gained = 0;
    fc.assert(
      fc.property(randomGarage(6, 2), (some) => {
        // What the other sizes take is at home.
        const more = Object.fromEntries(
          ['wrench-13', 'wrench-17', 'socket-17'].map((is) => [`more-${is}`, { ...PLAIN, is }]),
        );
        const garage = { ...some, belongings: { ...some.belongings, ...more } };
        const prepared = prepare(garage, 't', DOUBTFUL, BEST);
        if (!prepared.ok) return;
        const { scene } = prepared.value.built;
        const answer = solve(prepared.value, BEST, solver);
        if (answer.kind !== 'solved') return;
        const carried = new Set(answer.solved.choice.carried.flatMap((p) => scene.pieces[p]?.id ?? []));
        for (const doubt of doubts(prepared.value, DOUBTFUL).slice(0, 2)) {
          const found = worthOfKnowing(prepared.value, BEST, carried, doubt, solver, {});
          let gain = 0;
          for (const { size, chance } of doubt.others) {
            const other = sceneWithSize(scene, doubt.joint.id, size);
            const chances = everyKit(other)
              .filter((kit) => withinLimits(prepared.value, kit) && isFeasible(check(other, kit)))
              .map((kit) => check(other, kit).figures.chance);
            const planned = check(other, { carried: [...carried], bought: [], bundles: [] }).figures.chance;
            if (chances.length > 0) gain += chance * Math.max(0, Math.max(...chances) - planned);
          }
          expect(found?.gain).toBeCloseTo(gain, 4);
          looked++;
          if (gain > 1e-3) gained++;
        }
      }),
      steady(120),
    );
    // The property says something only where sizes matter.
    expect(looked).toBeGreaterThan(20);
    expect(gained).toBeGreaterThan(3);
  });

  it('[M11] asks only about sizes that are made there, the assumed one right in seven of ten cases', () => {
    const scene = demo().built.scene;
    for (const { joint, others } of doubts(demo(), SHIPPED_TRADE)) {
      expect(joint.status).toBe('assumed');
      expect(others.reduce((sum, o) => sum + o.chance, 0)).toBeCloseTo(0.3, 12);
      expect(others.map((o) => o.size.label)).not.toContain(joint.size.label);
      const [first] = others;
      const changed = sceneWithSize(scene, joint.id, first?.size ?? joint.size).joints;
      expect(changed.filter((j, n) => j !== scene.joints[n])).toHaveLength(1);
    }
    expect(otherSizes(scene.joints[0] ?? never(), undefined)).toEqual([]);
  });
});

describe('[M11] how sure the plan of the demo is', () => {
  const ask: SureAsk = { draws: 6, seed: 4, sizes: 3 };

  it('[M11] the same seed gives the same answer, whole and within its own limits', {
    timeout: 120_000,
  }, () => {
    const first = sure(ask);
    expect(JSON.stringify(sure(ask))).toBe(JSON.stringify(first));
    for (const { chance, low, median, high } of [first.chance, first.together]) {
      expect(low).toBeLessThan(median);
      expect(median).toBeLessThan(high);
      expect(low).toBeLessThan(chance);
      expect(chance).toBeLessThan(high);
    }
    expect(first.planned).toBe(6);
    for (const { share, how } of first.items)
      expect(how).toBe(share >= 0.9 ? 'sure' : share >= 0.5 ? 'likely' : 'taste');
    // The spare wheel is in the best kit whatever the rates.
    expect(first.items.find((i) => i.name === 'mounted spare wheel')?.share).toBe(1);
    const [worse, better] = first.whatIf;
    expect(worse?.chance).toBeLessThan(first.chance.chance);
    expect(better?.chance).toBeGreaterThan(first.chance.chance);
    for (const { chance, best } of first.whatIf) expect(best).toBeGreaterThanOrEqual(chance - 1e-3);
    const gains = first.measureNext.map((m) => m.gain);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  it('[M11] says when it was stopped instead of giving half an answer', () => {
    let asked = 0;
    const stopped = outcome({ ...ask, patience: { shouldStop: () => ++asked > 3 } });
    expect(stopped.kind).toBe('stopped');
  });
});

function demo(): Prepared {
  const text = readFileSync(new URL('../examples/demo.garage.yaml', import.meta.url), 'utf8');
  const garage = readGarage(text, 'demo');
  if (!garage.ok) throw new Error(garage.error[0]?.message);
  const [trip = ''] = Object.keys(garage.value.trips);
  const prepared = prepare(garage.value, trip, SHIPPED_TRADE, BEST);
  if (!prepared.ok) throw new Error(prepared.error.message);
  return prepared.value;
}

function outcome(ask: SureAsk) {
  const prepared = demo();
  const solved = solve(prepared, BEST, solver);
  if (solved.kind !== 'solved') throw new Error(solved.kind);
  const result = sureOf(prepared, BEST, solved.solved, solver, SHIPPED_TRADE, ask);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

function sure(ask: SureAsk) {
  const result = outcome(ask);
  if (result.kind !== 'sure') throw new Error(result.kind);
  return result.answer;
}

function withinLimits(
  { built }: Prepared,
  kit: { readonly grams: number; readonly millilitres: number; readonly cents: number },
): boolean {
  const { grams, millilitres, cents } = built.scene.limits;
  return (
    kit.grams <= (grams ?? Infinity) && kit.millilitres <= (millilitres ?? Infinity) && kit.cents <= cents
  );
}

function never(): never {
  throw new Error('the demo has joints');
}
