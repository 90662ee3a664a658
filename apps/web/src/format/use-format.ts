import { MM_PER_INCH, NM_PER_POUND_FOOT } from '@waymend/core/quantity/units';
import { aboutOneIn, grouped, percent } from '@waymend/planner/words/chance';
import { loadText, massText } from '@waymend/planner/words/mass';
import { moneyText } from '@waymend/planner/words/money';
import { useMemo } from 'react';
import { useRecord, useSettings } from '../shell/stores.tsx';
import { KM_PER_MILE } from './field-units.ts';

/** A space that keeps a number and its unit on one line. */
const bound = (text: string): string => text.replace(/(\d) (?=\S)/g, '$1\u00a0');

/** Numbers as this owner reads them: in metric or inch units, two or three figures, units bound to their number. */
export interface Format {
  readonly units: 'metric' | 'inch';
  /** Whole grams. */
  readonly mass: (grams: number) => string;
  /** Axle and gross masses, kilograms. */
  readonly load: (kg: number) => string;
  /** Chance 0..1 in words: 'about 1 in 14'. */
  readonly chance: (probability: number) => string;
  /** The same without 'about', for columns: '1 in 14'. */
  readonly oneIn: (probability: number) => string;
  readonly percent: (probability: number) => string;
  /** Whole cents in the garage's currency. */
  readonly money: (cents: number) => string;
  readonly length: (mm: number) => string;
  readonly distance: (km: number) => string;
  readonly torque: (newtonMetres: number) => string;
  readonly count: (n: number) => string;
}

export function useFormat(): Format {
  const { garage } = useRecord();
  const { torque } = useSettings();
  const { units, currency } = garage;
  return useMemo(() => formatFor(units, currency, torque), [units, currency, torque]);
}

export function formatFor(units: 'metric' | 'inch', currency: string, torque: 'Nm' | 'lb-ft'): Format {
  return {
    units,
    mass: (grams) => bound(massText(grams, units)),
    load: (kg) => bound(loadText(kg, units)),
    chance: (p) => bound(aboutOneIn(p)),
    oneIn: (p) => bound(aboutOneIn(p).replace(/^about /, '')),
    percent: (p) => bound(percent(p)),
    money: (cents) => bound(moneyText(cents, currency)),
    length: (mm) => bound(units === 'inch' ? `${tidy(mm / MM_PER_INCH)} in` : `${tidy(mm)} mm`),
    distance: (km) =>
      bound(
        units === 'inch' ? `${grouped(Math.round(km / KM_PER_MILE))} miles` : `${grouped(Math.round(km))} km`,
      ),
    torque: (nm) =>
      bound(torque === 'lb-ft' ? `${Math.round(nm / NM_PER_POUND_FOOT)} lb-ft` : `${Math.round(nm)} N m`),
    count: grouped,
  };
}

function tidy(value: number): string {
  return grouped(Math.round(value * 100) / 100);
}
