import type { CatalogueBelonging } from '../shape/belonging.ts';
import type { Offer } from '../shape/offer.ts';
import type { Measures } from './row.ts';
import { FROM_WRENCH_CURVE, combinationWrench, lastResort, proper, tool, upTo, withCare } from './row.ts';

/** Ratcheting ring one end, open the other. */
function ratcheting(id: string, size: string, measures: Measures): CatalogueBelonging {
  const ends = [
    { form: 'ratchet-ring', size },
    { form: 'open', size },
  ] as const;
  const wrench: Offer = { kind: 'wrench', ends, lengthMm: measures.mm };
  return tool(id, 'ratcheting combination wrench', size, measures, [wrench], { basis: FROM_WRENCH_CURVE });
}

/** A flare-nut wrench: each end grips five or six corners of a soft union. */
function flare(id: string, one: string, other: string, measures: Measures): CatalogueBelonging {
  const ends = [
    { form: 'flare', size: one },
    { form: 'flare', size: other },
  ] as const;
  const sizes = `${one} and ${other}`;
  return tool(id, 'flare-nut wrench', sizes, measures, [{ kind: 'wrench', ends, lengthMm: measures.mm }]);
}

/** Wrenches: combination, ratcheting, flare-nut, adjustable, strap and chain. */
export const WRENCHES: readonly CatalogueBelonging[] = [
  combinationWrench('CW-6', '6 mm', { g: 13, mm: 105, ml: 3, price: 'P1' }),
  combinationWrench('CW-7', '7 mm', { g: 18, mm: 114, ml: 5, price: 'P1' }),
  combinationWrench('CW-8', '8 mm', { g: 24, mm: 123, ml: 8, price: 'P1' }),
  combinationWrench('CW-9', '9 mm', { g: 32, mm: 133, ml: 11, price: 'P1' }),
  combinationWrench('CW-10', '10 mm', { g: 40, mm: 142, ml: 15, price: 'P1' }),
  combinationWrench('CW-11', '11 mm', { g: 49, mm: 151, ml: 19, price: 'P1' }),
  combinationWrench('CW-12', '12 mm', { g: 60, mm: 161, ml: 24, price: 'P1' }),
  combinationWrench('CW-13', '13 mm', { g: 72, mm: 171, ml: 30, price: 'P1' }),
  combinationWrench('CW-14', '14 mm', { g: 85, mm: 180, ml: 37, price: 'P1' }),
  combinationWrench('CW-15', '15 mm', { g: 99, mm: 190, ml: 44, price: 'P1' }),
  combinationWrench('CW-16', '16 mm', { g: 110, mm: 200, ml: 53, price: 'P1' }),
  combinationWrench('CW-17', '17 mm', { g: 130, mm: 210, ml: 63, price: 'P2' }),
  combinationWrench('CW-18', '18 mm', { g: 150, mm: 220, ml: 74, price: 'P2' }),
  combinationWrench('CW-19', '19 mm', { g: 170, mm: 230, ml: 86, price: 'P2' }),
  combinationWrench('CW-20', '20 mm', { g: 190, mm: 240, ml: 99, price: 'P2' }),
  combinationWrench('CW-21', '21 mm', { g: 210, mm: 250, ml: 110, price: 'P2' }),
  combinationWrench('CW-22', '22 mm', { g: 230, mm: 261, ml: 130, price: 'P2' }),
  combinationWrench('CW-23', '23 mm', { g: 260, mm: 271, ml: 150, price: 'P2' }),
  combinationWrench('CW-24', '24 mm', { g: 280, mm: 281, ml: 170, price: 'P2' }),
  combinationWrench('CW-27', '27 mm', { g: 370, mm: 313, ml: 240, price: 'P2' }),
  combinationWrench('CW-30', '30 mm', { g: 470, mm: 346, ml: 320, price: 'P2' }),
  combinationWrench('CW-32', '32 mm', { g: 540, mm: 368, ml: 390, price: 'P2' }),
  ratcheting('RW-8', '8 mm', { g: 30, mm: 123, ml: 9, price: 'P2' }),
  ratcheting('RW-10', '10 mm', { g: 50, mm: 142, ml: 17, price: 'P2' }),
  ratcheting('RW-12', '12 mm', { g: 75, mm: 161, ml: 28, price: 'P2' }),
  ratcheting('RW-13', '13 mm', { g: 90, mm: 171, ml: 35, price: 'P2' }),
  ratcheting('RW-14', '14 mm', { g: 110, mm: 180, ml: 42, price: 'P2' }),
  ratcheting('RW-17', '17 mm', { g: 160, mm: 210, ml: 73, price: 'P2' }),
  ratcheting('RW-19', '19 mm', { g: 210, mm: 230, ml: 100, price: 'P2' }),
  flare('FN-8x10', '8 mm', '10 mm', { g: 60, mm: 140, ml: 28, price: 'P2' }),
  flare('FN-10x11', '10 mm', '11 mm', { g: 78, mm: 150, ml: 33, price: 'P2' }),
  flare('FN-10x12', '10 mm', '12 mm', { g: 85, mm: 155, ml: 37, price: 'P2' }),
  flare('FN-13x14', '13 mm', '14 mm', { g: 120, mm: 175, ml: 49, price: 'P2' }),
  flare('FN-17x19', '17 mm', '19 mm', { g: 230, mm: 210, ml: 80, price: 'P2' }),
  tool('CF-17', 'crow-foot flare wrench', '17 mm, 3/8 in drive', { g: 60, mm: 40, ml: 25, price: 'P2' }, [
    { kind: 'crow-foot', form: 'flare', size: '17 mm', drive: '3/8 in' },
  ]),
  // Adjustables open from nothing; 5 mm is the least hex they hold well. The greatest is the lower figure they are sold with.
  tool('AW-150', 'adjustable wrench', '150 mm, to 19 mm', { g: 130, mm: 155, ml: 110, price: 'P2' }, [
    { kind: 'adjustable', jaw: 'adjustable', fromMm: 5, toMm: 19, lengthMm: 155 },
  ]),
  tool('AW-200', 'adjustable wrench', '200 mm, to 24 mm', { g: 240, mm: 205, ml: 190, price: 'P2' }, [
    { kind: 'adjustable', jaw: 'adjustable', fromMm: 5, toMm: 24, lengthMm: 205 },
  ]),
  tool('AW-250', 'adjustable wrench', '250 mm, to 29 mm', { g: 420, mm: 255, ml: 320, price: 'P3' }, [
    { kind: 'adjustable', jaw: 'adjustable', fromMm: 5, toMm: 29, lengthMm: 255 },
    withCare('bend'),
  ]),
  tool(
    'AW-300',
    'adjustable wrench, wide jaw',
    '300 mm, to 34 mm',
    { g: 680, mm: 305, ml: 500, price: 'P3' },
    [{ kind: 'adjustable', jaw: 'adjustable', fromMm: 5, toMm: 34, lengthMm: 305 }, withCare('bend')],
  ),
  tool('PW-300', 'pipe wrench', '300 mm, to 42 mm', { g: 1000, mm: 300, ml: 700, price: 'P3' }, [
    { kind: 'adjustable', jaw: 'pipe', fromMm: 10, toMm: 42, lengthMm: 300 },
    proper('turn-round', 'rough'),
    lastResort('turn-round', 'filter'),
    lastResort('extract', 'nut', 'stud', 'hex'),
    withCare('bend'),
  ]),
  tool(
    'SW-1',
    'strap wrench',
    '20-150 mm',
    { g: 220, mm: 250, ml: 180, price: 'P2' },
    [proper('turn-round', 'soft', 'filter')],
    { care: ['rubber-goods'] },
  ),
  tool('CHW-1', 'locking chain wrench', 'to 100 mm', { g: 620, mm: 260, ml: 450, price: 'P3' }, [
    proper('turn-round', 'rough'),
    withCare('turn-round', 'filter'),
    upTo('clamp-c', 100, { of: 'chain' }),
    withCare('lock-grip'),
  ]),
];
