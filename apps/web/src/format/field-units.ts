import { GRAMS_PER_POUND, MM_PER_INCH } from '@waymend/core/quantity/units';

/** 5,280 feet of 12 inches. */
export const KM_PER_MILE = (5280 * 12 * MM_PER_INCH) / 1e6;
const M_PER_FOOT = (12 * MM_PER_INCH) / 1000;

/** Quantities that people type on the forms of a trip. */
export type Typed = 'distance' | 'load' | 'temperature' | 'height';

export interface FieldUnit {
  /** Key of the unit's name among the words. */
  readonly name: `units.${'km' | 'miles' | 'kg' | 'lb' | 'celsius' | 'fahrenheit' | 'metres' | 'feet'}`;
  /** What the field shows for a recorded value (km, kg, degrees Celsius, m); null for none. */
  readonly show: (recorded: number | null) => number | null;
  /** What is recorded for what was typed. */
  readonly read: (typed: number | null) => number | null;
}

/** Numbers as this owner types them; what is recorded stays metric. Shown whole, recorded to a thousandth. */
export function fieldUnit(of: Typed, units: 'metric' | 'inch'): FieldUnit {
  if (units === 'metric') return METRIC[of];
  switch (of) {
    case 'distance':
      return scaled('units.miles', KM_PER_MILE);
    case 'load':
      return scaled('units.lb', GRAMS_PER_POUND / 1000);
    case 'height':
      return scaled('units.feet', M_PER_FOOT);
    case 'temperature':
      return {
        name: 'units.fahrenheit',
        show: (c) => (c === null ? null : Math.round(c * 1.8 + 32)),
        read: (f) => (f === null ? null : thousandths((f - 32) / 1.8)),
      };
  }
}

const METRIC: Readonly<Record<Typed, FieldUnit>> = {
  distance: same('units.km'),
  load: same('units.kg'),
  temperature: same('units.celsius'),
  height: same('units.metres'),
};

function same(name: FieldUnit['name']): FieldUnit {
  return { name, show: (value) => value, read: (value) => value };
}

function scaled(name: FieldUnit['name'], factor: number): FieldUnit {
  return {
    name,
    show: (value) => (value === null ? null : Math.round(value / factor)),
    read: (typed) => (typed === null ? null : thousandths(typed * factor)),
  };
}

function thousandths(value: number): number {
  return Math.round(value * 1000) / 1000;
}
