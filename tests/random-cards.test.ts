import { jobCard } from '@waymend/planner/card/job-card';
import { buildScene } from '@waymend/planner/scene/build-scene';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomGarage } from './support/random-garage.ts';
import { steady } from './support/steady.ts';
import { TINY_TRADE } from './support/tiny-trade.ts';

describe('cards of random garages', () => {
  it('[M8] 300 garages: every way, grade and missing need on every card is what the checker finds', () => {
    const seen = { cards: 0, now: 0, missing: 0, rough: 0, others: 0 };
    fc.assert(
      fc.property(randomGarage(14, 5), fc.integer({ min: 0, max: 400 }), (garage, helpKm) => {
        const built = buildScene(garage, 't', TINY_TRADE);
        if (!built.ok) throw new Error(built.error.message);
        const ask = { carried: { kind: 'everything' }, with: 'everything', helpKm } as const;
        for (const job of built.value.scene.jobs.filter((j) => !j.expedient)) {
          // It throws where the planner's rules and the checker's differ.
          const card = jobCard(built.value, TINY_TRADE, { ...ask, job: job.id });
          if (!card.ok) throw new Error(`no card for ${job.id}`);
          const { now, grade, why, needs, expedients } = card.value;
          expect(now).toBe(grade !== null);
          if (!now) expect(why.length).toBeGreaterThan(0);
          for (const e of expedients)
            expect(e.reachesHelp).toBe(
              (e.trustedKm ?? Number.POSITIVE_INFINITY) >= helpKm && e.trustedKm !== 0,
            );
          seen.cards += 1;
          if (now) seen.now += 1;
          if (grade !== null && grade !== 'proper') seen.rough += 1;
          if (needs.some((n) => n.best === null)) seen.missing += 1;
          if (needs.some((n) => n.others.length > 0)) seen.others += 1;
        }
      }),
      steady(300, 3),
    );
    // Cards that can always, or never, be done would say little.
    expect(seen.cards).toBeGreaterThan(600);
    expect(seen.now).toBeGreaterThan(50);
    expect(seen.rough).toBeGreaterThan(20);
    expect(seen.missing).toBeGreaterThan(100);
    expect(seen.others).toBeGreaterThan(50);
  }, 300_000);
});
