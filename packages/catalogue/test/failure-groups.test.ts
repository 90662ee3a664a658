import { FAILURE_GROUPS } from '../src/failures/groups.ts';
import type { Surface } from '../src/shape/words.ts';
import { GROUPS, SURFACES } from '../src/shape/words.ts';
import { describe, expect, test } from 'vitest';

type BySurface = Readonly<Record<Surface, number>>;

function events(km: BySurface, ids: (id: string) => boolean): number {
  return FAILURE_GROUPS.filter((group) => ids(group.id))
    .flatMap((group) => SURFACES.map((surface) => (km[surface] / 10_000) * group.per10000km[surface]))
    .reduce((a, b) => a + b, 0);
}

const EACH_10000: readonly [Surface, BySurface][] = SURFACES.map((surface) => [
  surface,
  { sealed: 0, gravel: 0, corrugated: 0, rock: 0, sand: 0, [surface]: 10_000 },
]);

describe('failure groups', () => {
  test('[M1] there is one record for each group of the word list and no other', () => {
    expect(FAILURE_GROUPS.map((group) => group.id).sort()).toEqual([...GROUPS].sort());
  });

  test('[M1] the rates add up to the printed sums of each surface', () => {
    // Printed to two decimals in the trade's table of default rates, so half a hundredth either way.
    const all: BySurface = { sealed: 0.47, gravel: 1.51, corrugated: 4.48, rock: 5.83, sand: 1.56 };
    const withoutTyres: BySurface = { sealed: 0.32, gravel: 0.51, corrugated: 1.98, rock: 1.83, sand: 0.76 };
    for (const [surface, km] of EACH_10000) {
      expect(Math.abs(events(km, () => true) - all[surface]), surface).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(
        Math.abs(events(km, (id) => id !== 'tyre') - withoutTyres[surface]),
        surface,
      ).toBeLessThanOrEqual(0.005 + 1e-9);
    }
  });

  test('[M1] the worked trip of 3,200 km has 0.33 tyre events, 0.26 others and a 13 % chance of stopping', () => {
    // The trade's worked check, printed to two decimals and a whole per cent.
    const km: BySurface = { sealed: 1200, gravel: 1000, corrugated: 700, rock: 50, sand: 250 };
    expect(events(km, (id) => id === 'tyre')).toBeCloseTo(0.33, 2);
    expect(events(km, (id) => id !== 'tyre')).toBeCloseTo(0.26, 2);
    const stopping = FAILURE_GROUPS.filter((group) => group.id !== 'tyre')
      .map((group) => events(km, (id) => id === group.id) * group.immobilises)
      .reduce((a, b) => a + b, 0);
    expect(Math.round(100 * (1 - Math.exp(-stopping)))).toBe(13);
  });

  test('[M5] with no kit the worked trip leaves 0.44 immobilisations, with everything aboard 0.056', () => {
    const km: BySurface = { sealed: 1200, gravel: 1000, corrugated: 700, rock: 50, sand: 250 };
    const left = (restored: (group: (typeof FAILURE_GROUPS)[number]) => number): number =>
      FAILURE_GROUPS.map(
        (group) => events(km, (id) => id === group.id) * group.immobilises * (1 - restored(group)),
      ).reduce((a, b) => a + b, 0);
    expect(left(() => 0)).toBeCloseTo(0.44, 2);
    expect(left((group) => group.restored)).toBeCloseTo(0.056, 2);
  });

  test('[M11] the shape of each prior has the spread of its 90 % factor', () => {
    // Computed: a log-normal with 90 % within x/: f has ln f = 1.645 sigma and a squared variation coefficient of
    // exp(sigma^2) - 1; a gamma distribution of shape k has 1/k. Printed to one decimal.
    for (const { id, factor90, gammaShape } of FAILURE_GROUPS) {
      const sigma = Math.log(factor90) / 1.6449;
      expect(Math.abs(gammaShape - 1 / (Math.exp(sigma ** 2) - 1)), id).toBeLessThanOrEqual(0.06);
    }
  });

  test('[M1] rougher surfaces never break fewer parts than sealed road', () => {
    for (const { id, per10000km } of FAILURE_GROUPS)
      for (const surface of SURFACES)
        expect(per10000km[surface], `${id} ${surface}`).toBeGreaterThanOrEqual(per10000km.sealed);
  });

  test('[M5] chances are chances and every record says what it leans on', () => {
    for (const { id, immobilises, restored, factor90, basis } of FAILURE_GROUPS) {
      expect(immobilises, id).toBeGreaterThan(0);
      expect(immobilises, id).toBeLessThanOrEqual(1);
      expect(restored, id).toBeGreaterThan(0);
      expect(restored, id).toBeLessThanOrEqual(1);
      expect(factor90, id).toBeGreaterThan(1);
      expect(basis.kind, id).toBe('estimate');
    }
  });
});
