import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { PATTERNS } from '../src/patterns/all.ts';
import type { Place } from '../src/shape/place.ts';
import type { Condition, Feature } from '../src/shape/words.ts';

function isPlace(value: unknown): value is Place {
  return (
    typeof value === 'object' && value !== null && 'id' in value && 'torqueNm' in value && 'sizes' in value
  );
}

function holds(when: Condition | undefined, features: ReadonlySet<Feature>): boolean {
  return (
    (when?.all ?? []).every((feature) => features.has(feature)) &&
    (when?.any === undefined || when.any.some((feature) => features.has(feature))) &&
    !(when?.none ?? []).some((feature) => features.has(feature))
  );
}

const places = new Map<string, Place>();
const folder = join(import.meta.dirname, '../src/places');

beforeAll(async () => {
  for (const file of readdirSync(folder)) {
    const module: unknown = await import(pathToFileURL(join(folder, file)).href);
    for (const list of Object.values(module ?? {})) {
      for (const item of Array.isArray(list) ? list : []) if (isPlace(item)) places.set(item.id, item);
    }
  }
});

describe.each(PATTERNS.map((pattern) => [pattern.id, pattern] as const))(
  '%s against the places',
  (_, pattern) => {
    it('has no fitting at a place that its features rule out', () => {
      expect(places.size).toBeGreaterThan(30);
      const features = new Set(pattern.features);
      const out = pattern.fittings.filter((fitting) => {
        const place = places.get(fitting.place);
        return place !== undefined && !holds(place.when, features);
      });
      expect(out.map((fitting) => fitting.place)).toEqual([]);
    });

    // Common practice, no source: one vehicle's torque may lie off the typical range, a truck's most of all.
    it('torques are of the order that the place says', () => {
      const reach = pattern.ratedGrossKg > 5000 ? 3 : 1.6;
      const out = pattern.fittings.filter((fitting) => {
        const [low, high] = places.get(fitting.place)?.torqueNm ?? [0, Number.POSITIVE_INFINITY];
        return (fitting.torqueNm ?? high) < low / 2 || (fitting.torqueNm ?? low) > high * reach;
      });
      expect(places.size).toBeGreaterThan(30);
      expect(out.map((fitting) => `${fitting.place} ${fitting.torqueNm}`)).toEqual([]);
    });
  },
);
