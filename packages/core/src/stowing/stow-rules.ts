import type { BagKind, StowMark, StowPiece } from './stow-problem.ts';

/** Uses are counted in hundred-thousandths of a repair a trip, so that sums are whole. */
export const USES_UNIT = 1e-5;
/** What one person should lift at once, grams (common practice). */
export const ONE_PERSON_GRAMS = 25_000;
/** The heaviest single thing for a roll or a pouch, grams: cloth hangs and tears under more (common practice). */
export const SOFT_GRAMS = 2_000;
/** A tool may stand out of an open pocket by half the pocket's length, a third of its own (common practice). */
export const STANDS_OUT = 1.5;

/**
 * What a stowage is judged by, first things first; each a whole number to be made small, and no later one ever buys an
 * earlier one (M14).
 */
export const LEVELS = ['unplaced', 'danger', 'order', 'reach', 'behind', 'height', 'moved'] as const;
export type Level = (typeof LEVELS)[number];
export const LEVEL_COUNT = LEVELS.length;
/** So many of the levels, the first ones, count breaches and go to proof; those after them are settled to within a share. */
export const COUNTED = 3;

/** Soft rules by the class they count in. */
export const RULES = {
  'spill-open': 'danger',
  'wet-electrics': 'danger',
  'sharp-electrics': 'danger',
  'lithium-flammable': 'danger',
  'in-heat': 'danger',
  'bag-too-heavy': 'danger',
  'axle-over': 'danger',
  'not-at-hand': 'order',
  'in-the-way': 'order',
  'set-apart': 'order',
  loose: 'order',
} as const satisfies Readonly<Record<string, 'danger' | 'order'>>;
export type SoftRule = keyof typeof RULES;

/** Rules that only something put by hand may break. */
export const HAND_RULES = [
  'does-not-fit',
  'pocket-full',
  'pocket-over-limit',
  'bag-full',
  'bag-over-limit',
  'berth-over-limit',
  'berth-full',
  'wheel-room',
] as const;
export type HandRule = (typeof HAND_RULES)[number];

/** Seconds until a hand is on a thing: to the berth, into the bag, to the place in it. Estimates, for comparing places only. */
export const SECONDS = {
  berth: { atHand: 5, inside: 60, roof: 180 },
  bag: { firstGrab: 0, roll: 15, pouch: 10, bag: 20, box: 20, case: 20 },
  spot: { pocket: 3, room: 15, loose: 20 },
} as const;

/** From the berth to the opened bag. */
export function secondsToBag(
  bag: { readonly kind: BagKind; readonly firstGrab: boolean },
  berth: { readonly atHand: boolean; readonly roof: boolean },
): number {
  return bag.firstGrab
    ? SECONDS.berth.atHand + SECONDS.bag.firstGrab
    : secondsToBerth(berth) + SECONDS.bag[bag.kind];
}

export function secondsToBerth(berth: { readonly atHand: boolean; readonly roof: boolean }): number {
  if (berth.atHand) return SECONDS.berth.atHand;
  return berth.roof ? SECONDS.berth.roof : SECONDS.berth.inside;
}

const has = (piece: StowPiece, ...marks: readonly StowMark[]): boolean =>
  piece.marks.some((mark) => marks.includes(mark));

/** Runs out when it leaks: fuels too. An aerosol keeps what it holds until it is hot. */
export const isWet = (piece: StowPiece): boolean =>
  has(piece, 'fuel') || (has(piece, 'liquid') && !has(piece, 'aerosol'));
/** Spoiled by what runs out, and by a blade through a lead. */
export const isElectric = (piece: StowPiece): boolean =>
  has(piece, 'electric', 'battery', 'lithium') && !isWet(piece);
export const isSharp = (piece: StowPiece): boolean => has(piece, 'sharp') && !isElectric(piece);
export const isLithium = (piece: StowPiece): boolean => has(piece, 'lithium');
export const isFlammable = (piece: StowPiece): boolean => has(piece, 'fuel', 'aerosol') && !isLithium(piece);
export const dislikesHeat = (piece: StowPiece): boolean => has(piece, 'lithium', 'aerosol', 'fuel');

/** In the sun, or beside the engine: the roof, and whatever is ahead of the front axle (common practice). */
export function isHot(berth: { readonly roof: boolean; readonly x: number }): boolean {
  return berth.roof || berth.x < 0;
}
