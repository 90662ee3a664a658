import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { Condition, GroupId } from '../shape/words.ts';
import type { YearSteps } from './shape.ts';

/** Batteries fail late: few calls in the first years, most in the fifth to seventh. */
export const BATTERY_AGE: YearSteps = {
  groups: ['battery'],
  steps: [
    { fromYears: 0, factor: 0.3 },
    { fromYears: 4, factor: 0.6 },
    { fromYears: 5, factor: 1 },
    { fromYears: 6, factor: 2 },
    { fromYears: 7, factor: 3 },
  ],
  basis: estimate('motoring clubs report that battery calls cluster in years 5 to 7; the steps are ours'),
};

export interface StandingEvents {
  readonly group: GroupId;
  readonly perYear: number;
  readonly perCampNight: number;
  readonly campNightWhen: Condition;
  readonly basis: Basis;
}

/** A battery fails by the calendar as well as by the kilometre, and sooner with a fridge on it at night. */
export const BATTERY_DAYS: StandingEvents = {
  group: 'battery',
  perYear: 0.1,
  perCampNight: 0.0005,
  campNightWhen: { all: ['fridge'], none: ['solar'] },
  basis: estimate(
    'about one flat or failed battery in ten vehicle-years, and in two thousand nights with a fridge',
  ),
};
