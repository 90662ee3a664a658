import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { CareRule } from './rule.ts';

export const KIT_CARE: readonly CareRule[] = [
  {
    id: 'after-mud',
    title: 'Tools after mud, salt or sand',
    applies: 'kit',
    everyTrip: 'after',
    text: 'Rinse with fresh water, dry, oil lightly, leave pliers open; wipe ratchets and give them one drop.',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'after-job',
    title: 'After each repair',
    applies: 'kit',
    afterEveryJob: true,
    text: 'Count every tool back, take used parts off the list, write down what was only mended for now and when to look at it again.',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'after-trip',
    title: 'After each trip',
    applies: 'kit',
    everyTrip: 'after',
    text: 'Restock within a week, wash, charge, and note what was never touched.',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'yearly-layout',
    title: 'Once a year',
    applies: 'kit',
    everyMonths: 12,
    text: 'Lay everything out, photograph and weigh it, try each socket on the vehicle, and rehearse five jobs.',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'seals-and-tags',
    title: 'Closed pouches',
    applies: 'kit',
    everyTrip: 'before',
    text: 'A numbered tie on a counted pouch means complete as long as it is whole.',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'loans',
    title: 'Lent tools',
    applies: 'kit',
    everyTrip: 'before',
    text: 'Who has it, since when, back when; until then the kit is not complete.',
    basis: COMMON_PRACTICE,
  },
];
