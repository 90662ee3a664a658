import type { Basis } from '../shape/basis.ts';
import { COMMON_PRACTICE, estimate, recalled } from '../shape/basis.ts';
import type { CareRule } from './rule.ts';

const SHELF: Basis = estimate(
  'Years that rubber and sealed parts keep in a cool, dry, dark bag, from memory',
);

function shelf(id: string, title: string, years: readonly [number, number]): CareRule {
  return {
    id,
    title,
    applies: 'belonging',
    shelfYears: { sealed: years },
    storage: { dry: true, dark: true },
    text: `Keeps ${years[0] === years[1] ? years[0] : `${years[0]} to ${years[1]}`} years in a cool, dry, dark bag with its date on it.`,
    minutes: 1,
    basis: SHELF,
  };
}

function kept(id: string, title: string, text: string, storage: CareRule['storage'] = {}): CareRule {
  return {
    id,
    title,
    applies: 'belonging',
    everyMonths: 12,
    storage,
    text,
    minutes: 2,
    basis: COMMON_PRACTICE,
  };
}

export const SPARE_PART_CARE: readonly CareRule[] = [
  {
    id: 'rubber-goods',
    title: 'Rubber hoses, belts and seals',
    applies: 'belonging',
    everyMonths: 12,
    shelfYears: { sealed: [3, 10] },
    storage: { dry: true, dark: true },
    text: 'How long it keeps depends on the rubber: natural rubber short, nitrile long, silicone and EPDM very long. Bend it and look for cracks.',
    minutes: 3,
    basis: recalled('MIL-HDBK-695, which lists shelf life by type of rubber'),
  },
  shelf('shelf-2-years', 'Parts that keep two years', [2, 2]),
  shelf('shelf-5-years', 'Parts that keep five years', [5, 5]),
  shelf('shelf-6-years', 'Parts that keep six years', [6, 6]),
  shelf('shelf-8-years', 'Parts that keep eight years', [8, 8]),
  shelf('dark-rubber', 'Belts', [6, 8]),
  kept('flat-gaskets', 'Gaskets and other flat parts', 'Flat in a stiff envelope, never folded.'),
  kept('wrapped-parts', 'Bearings', 'Greased, wrapped and closed until the moment they go in.', {
    dry: true,
  }),
  kept('oiled-parts', 'Bare steel parts', 'A coat of oil and a sleeve over the splines.', { dry: true }),
  kept('bagged-parts', 'Filters', 'In a closed bag: dust before use is dust in the engine.', { dry: true }),
  kept('dry-parts', 'Contactors', 'Dry, with the terminals greased.', { dry: true }),
  kept('upright', 'Shock absorbers', 'Stored upright and pumped a few strokes by hand before fitting.', {
    upright: true,
  }),
];
