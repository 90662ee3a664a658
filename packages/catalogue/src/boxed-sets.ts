import type { Basis } from './shape/basis.ts';
import { COMMON_PRACTICE, estimate } from './shape/basis.ts';

/** One kind of piece in a box. */
export interface BoxedPiece {
  /** Catalogue id. */
  readonly is: string;
  readonly copies: number;
  /** Pieces as the box counts them, where one catalogue entry is a row of bits. */
  readonly pieces?: number;
}

/** A set as shops sell it: bought whole, carried as its owner likes. */
export interface BoxedSet {
  readonly id: string;
  readonly title: string;
  /** Price of the whole set, whole euro cents. */
  readonly cents: number;
  readonly caseGrams: number;
  readonly caseMl: number;
  readonly contents: readonly BoxedPiece[];
  /** What the box does not hold although its owner may think so. */
  readonly note: string;
  /** Basis of the contents: no box in particular. */
  readonly contentsBasis: Basis;
  /** Basis of price and case. */
  readonly basis: Basis;
}

const GUESSED: Basis = estimate(
  'Typical price and blow-moulded case of such a set, from memory; within 40 %',
);

function one(...ids: readonly string[]): readonly BoxedPiece[] {
  return ids.map((is) => ({ is, copies: 1 }));
}

function rowOf(is: string, pieces: number): BoxedPiece {
  return { is, copies: 1, pieces };
}

/**
 * Boxed sets as they are commonly put together; no box in particular (common practice, no source). They are bulked with
 * sizes a given vehicle never shows, and hardly ever hold large hub sizes such as 39 mm.
 */
export const BOXED_SETS: readonly BoxedSet[] = [
  {
    id: 'box-94',
    title: 'socket set, 94 pieces, 1/4 and 1/2 in drive, metric',
    cents: 9000,
    caseGrams: 1500,
    caseMl: 11000,
    contents: [
      ...one(
        'SK4-4',
        'SK4-4.5',
        'SK4-5',
        'SK4-5.5',
        'SK4-6',
        'SK4-7',
        'SK4-8',
        'SK4-9',
        'SK4-10',
        'SK4-11',
        'SK4-12',
        'SK4-13',
        'SK4-14',
      ),
      ...one('SD4-6', 'SD4-7', 'SD4-8', 'SD4-9', 'SD4-10', 'SD4-11', 'SD4-12', 'SD4-13'),
      ...one('RT-4', 'SPH-4', 'EX4-50', 'EX4-100', 'SB-4', 'UJ-4'),
      rowOf('BS4-CROSS', 3),
      rowOf('BS4-SLOT', 3),
      rowOf('BS4-HEX', 5),
      rowOf('BS4-LOBE', 7),
      ...one(
        'SK2-10',
        'SK2-11',
        'SK2-12',
        'SK2-13',
        'SK2-14',
        'SK2-15',
        'SK2-16',
        'SK2-17',
        'SK2-18',
        'SK2-19',
        'SK2-20',
        'SK2-21',
        'SK2-22',
        'SK2-24',
        'SK2-27',
        'SK2-30',
        'SK2-32',
      ),
      ...one('SD2-14', 'SD2-15', 'SD2-17', 'SD2-19', 'SD2-22'),
      ...one('RT-2', 'EX2-75', 'EX2-125', 'EX2-250', 'UJ-2', 'AD-23', 'SP2-16', 'SP2-21'),
      // the cross bits come in both geometries; the holder is the box's own piece
      rowOf('BL2-HEX', 6),
      rowOf('BL2-LOBE', 6),
      rowOf('BL2-CROSS', 4),
      rowOf('BL2-SLOT', 3),
    ],
    note: 'No wrench to hold the other end, nothing over 32 mm, no deep 21 mm for wheel nuts.',
    contentsBasis: COMMON_PRACTICE,
    basis: GUESSED,
  },
  {
    id: 'box-108',
    title: 'tool set, 108 pieces, metric and inch, three drives, with wrenches and keys',
    cents: 14000,
    caseGrams: 2200,
    caseMl: 17000,
    contents: [
      ...one(
        'SK4-4',
        'SK4-5',
        'SK4-5.5',
        'SK4-6',
        'SK4-7',
        'SK4-8',
        'SK4-9',
        'SK4-10',
        'SK4-11',
        'SK4-12',
        'SK4-13',
      ),
      ...one('SKI4-1/4', 'SKI4-9/32', 'SKI4-5/16', 'SKI4-11/32', 'SKI4-3/8', 'SKI4-7/16', 'SKI4-1/2'),
      ...one('SD4-6', 'SD4-7', 'SD4-8', 'SD4-9', 'SD4-10', 'SDI4-5/16', 'SDI4-3/8'),
      ...one('RT-4', 'SPH-4', 'EX4-50', 'EX4-100', 'UJ-4'),
      rowOf('BS4-CROSS', 3),
      rowOf('BS4-SLOT', 3),
      rowOf('BS4-HEX', 5),
      rowOf('BS4-LOBE', 7),
      ...one(
        'SK3-10',
        'SK3-11',
        'SK3-12',
        'SK3-13',
        'SK3-14',
        'SK3-15',
        'SK3-16',
        'SK3-17',
        'SK3-18',
        'SK3-19',
      ),
      ...one('SKI3-3/8', 'SKI3-7/16', 'SKI3-1/2', 'SKI3-9/16', 'SKI3-5/8', 'SKI3-11/16', 'SKI3-3/4'),
      ...one('RT-3', 'EX3-75', 'EX3-125', 'SP-16', 'SP-21', 'UJ-3'),
      ...one('SK2-20', 'SK2-21', 'SK2-22', 'SK2-24', 'SK2-27', 'SK2-30', 'SK2-32'),
      ...one('SKI2-13/16', 'SKI2-7/8', 'SKI2-15/16', 'SKI2-1', 'SKI2-1-1/16', 'SKI2-1-1/8', 'SKI2-1-1/4'),
      ...one('RT-2', 'EX2-125', 'UJ-2'),
      ...one('CW-8', 'CW-10', 'CW-12', 'CW-13', 'CW-14', 'CW-17', 'CW-19'),
      ...one('CWI-3/8', 'CWI-7/16', 'CWI-1/2', 'CWI-9/16', 'CWI-5/8', 'CWI-3/4'),
      ...one('HK-3', 'HK-4', 'HK-5', 'HK-6', 'HKI-5/32', 'HKI-3/16', 'HKI-1/4'),
    ],
    note: 'A third of it is inch sizes that a metric vehicle may never show; one wrench of a size, so no two to turn and hold.',
    contentsBasis: COMMON_PRACTICE,
    basis: GUESSED,
  },
  {
    id: 'wrenches-12',
    title: 'combination wrench set, 12 pieces, 6-22 mm with gaps, in a roll',
    cents: 4500,
    caseGrams: 250,
    caseMl: 400,
    contents: one(
      'CW-6',
      'CW-7',
      'CW-8',
      'CW-9',
      'CW-10',
      'CW-11',
      'CW-12',
      'CW-13',
      'CW-14',
      'CW-17',
      'CW-19',
      'CW-22',
    ),
    note: 'Leaves out 15, 16, 18, 20 and 21 mm: 16, 18 and 21 are the heads of newer M10, M12 and M14 bolts.',
    contentsBasis: COMMON_PRACTICE,
    basis: GUESSED,
  },
  {
    id: 'tyre-box',
    title: 'tyre repair box',
    cents: 4200,
    caseGrams: 700,
    caseMl: 3500,
    contents: one('TK-P', 'VT-C', 'VT-4', 'VS-4', 'GA-1', 'DF-2', 'PR-CO', 'GL-N'),
    note: 'No compressor and nothing for a cut in the sidewall.',
    contentsBasis: COMMON_PRACTICE,
    basis: GUESSED,
  },
];

export const BOXED_SET_BY_ID: ReadonlyMap<string, BoxedSet> = new Map(BOXED_SETS.map((set) => [set.id, set]));
