import { useCallback, useState } from 'react';
import type { CardTerms } from '../../worker/jobs/protocol.ts';

/** What was said of the moment at the roadside, on this device and for this day only. */
export interface Roadside extends Omit<CardTerms, 'here' | 'people'> {
  /** What a card looks among. */
  readonly among: 'kit' | 'everything';
  /** People of the trip who are not here, by id. */
  readonly away: readonly string[];
}

export const CALM: Roadside = {
  among: 'kit',
  away: [],
  dark: false,
  helpKm: null,
  daylightHours: null,
  waterDays: null,
  hurt: false,
  danger: false,
  convoy: false,
};

const KEY = 'waymend.roadside.';

/** What stands for a trip on a day; each change is kept at once, so that a phone that dies forgets nothing. */
export function useRoadside(
  trip: string,
  day: string,
): readonly [Roadside, (change: Partial<Roadside>) => void] {
  const [said, setSaid] = useState(() => readRoadside(trip, day));
  const change = useCallback(
    (fields: Partial<Roadside>) => {
      setSaid((before) => {
        const next = { ...before, ...fields };
        writeRoadside(trip, day, next);
        return next;
      });
    },
    [trip, day],
  );
  return [said, change];
}

/** Distances, water and light of yesterday are nobody's of today. */
export function readRoadside(trip: string, day: string): Roadside {
  let found: unknown = null;
  try {
    found = JSON.parse(localStorage.getItem(KEY + trip) ?? 'null');
  } catch {
    return CALM;
  }
  if (typeof found !== 'object' || found === null || Reflect.get(found, 'day') !== day) return CALM;
  const of = (key: string): unknown => Reflect.get(found, key);
  const number = (key: string): number | null => {
    const value = of(key);
    return typeof value === 'number' && Number.isFinite(value) && value >= 0 ? value : null;
  };
  const away = of('away');
  return {
    among: of('among') === 'everything' ? 'everything' : 'kit',
    away: Array.isArray(away) ? away.filter((one): one is string => typeof one === 'string') : [],
    dark: of('dark') === true,
    helpKm: number('helpKm'),
    daylightHours: number('daylightHours'),
    waterDays: number('waterDays'),
    hurt: of('hurt') === true,
    danger: of('danger') === true,
    convoy: of('convoy') === true,
  };
}

function writeRoadside(trip: string, day: string, said: Roadside): void {
  try {
    localStorage.setItem(KEY + trip, JSON.stringify({ ...said, day }));
  } catch {
    // It holds until the page is closed.
  }
}
