import { estimate } from '../shape/basis.ts';
import type { AddedEvents } from './shape.ts';

/** A battery fails by the calendar as well as by the kilometre. Both terms take the battery-age factor. */
export const BATTERY_PER_DAY: AddedEvents = {
  id: 'battery-per-day',
  title: 'days away',
  each: 0.1 / 365,
  counts: 'day',
  group: 'battery',
  basis: estimate('about one flat or failed battery in ten vehicle-years'),
};

export const BATTERY_PER_FRIDGE_NIGHT: AddedEvents = {
  id: 'battery-per-fridge-night',
  title: 'nights camped with a fridge and no solar',
  when: { all: ['fridge'], none: ['solar'] },
  each: 0.0005,
  counts: 'camp night',
  group: 'battery',
  basis: estimate('a fridge left on the starting battery flattens it about once in two thousand nights'),
};
