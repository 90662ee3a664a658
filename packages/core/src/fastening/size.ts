import type { Metres } from '../quantity/units.ts';
import { inches, inMillimetres, millimetres } from '../quantity/units.ts';
import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';

/** The marking on a head or a tool, and its nominal width. */
export type Size =
  | {
      readonly kind: 'across-flats';
      readonly label: string;
      readonly width: Metres;
      readonly system: 'metric' | 'inch';
    }
  /** T (inside) and E (outside) lobes. */
  | { readonly kind: 'lobe'; readonly label: string; readonly family: 'T' | 'E'; readonly number: number }
  /** 'cross 2', 'slot 6.5 mm'. */
  | { readonly kind: 'cross'; readonly label: string; readonly number: number }
  | { readonly kind: 'slot'; readonly label: string; readonly width: Metres }
  | { readonly kind: 'spline'; readonly label: string; readonly thread: number };

/** A width across flats: what openings are compared with. */
export type Flats = Extract<Size, { kind: 'across-flats' }>;

/**
 * What any hand tool for vehicles is made in: beyond it somebody has slipped a digit or a unit. Widths in mm. Ring nuts of
 * hubs reach 60 mm or so, the smallest hexagon keys 0.7 mm.
 */
const FLATS_MM: Range = [0.7, 120];
const SLOT_MM: Range = [1, 20];
const LOBE_T: Range = [1, 100];
const LOBE_E: Range = [4, 44];
const CROSS: Range = [0, 5];
const SPLINE: Range = [3, 24];
/** Inch tools are marked down to the sixty-fourth. */
const FINEST = 64;

type Range = readonly [least: number, most: number];

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const INCH = String.raw`(?:in|inch|inches|")`;
const PATTERNS = {
  lobe: /^([te]) ?(\d{1,3})$/i,
  spline: /^(?:m ?(\d{1,2}) spline|spline m ?(\d{1,2}))$/i,
  cross: /^cross ?(\d)$/i,
  slot: new RegExp(`^slot ?${NUMBER} ?(?:mm)?$`, 'i'),
  metric: new RegExp(`^${NUMBER} ?(?:mm)?$`, 'i'),
  fraction: new RegExp(String.raw`^(?:(\d+)(?: |-| - ))?(\d+)\/(\d+) ?${INCH}?$`, 'i'),
  inch: new RegExp(`^${NUMBER} ?${INCH}$`, 'i'),
  thread: /^m ?\d+(?:[.,]\d+)?(?: ?x ?\d+(?:[.,]\d+)?)?$/i,
} as const;

/**
 * Reads a size as tools are marked and people write it: '17 mm', '17', '5.5', '11/16 in', '11/16"', '1-1/2 in', '1 1/2',
 * 'T30', 'E12', 'cross 2', 'slot 6.5 mm', 'M10 spline'. A bare number is millimetres, a bare fraction inches.
 *
 * Refuses with `size-unknown`, `size-is-a-thread` ('M10' says nothing of its head: 13, 14, 15, 16 and 17 mm are all made)
 * or `size-out-of-range`.
 */
export function parseSize(text: string): Result<Size> {
  const word = text
    .trim()
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/[\u201D\u2033]/g, '"');
  const marked = readMarked(word, text) ?? readFlats(word, text);
  if (marked !== null) return marked;
  if (PATTERNS.thread.test(word))
    return refuse(
      'size-is-a-thread',
      `"${text}" is a thread, and one thread is made with heads of several sizes; write the size of the head, like 17 mm`,
    );
  return refuse(
    'size-unknown',
    `"${text}" is not a size; write 17 mm, 11/16 in, T30, E12, cross 2, slot 6.5 mm or M10 spline`,
  );
}

/** Sizes that a word or a letter marks; null when it is none of them. */
function readMarked(word: string, text: string): Result<Size> | null {
  const lobe = PATTERNS.lobe.exec(word);
  if (lobe !== null) {
    const family = lobe[1]?.toUpperCase() === 'T' ? 'T' : 'E';
    const number = Number(lobe[2]);
    const label = `${family}${number}`;
    return within(number, family === 'T' ? LOBE_T : LOBE_E, text, { kind: 'lobe', label, family, number });
  }
  const spline = PATTERNS.spline.exec(word);
  if (spline !== null) {
    const thread = Number(spline[1] ?? spline[2]);
    return within(thread, SPLINE, text, { kind: 'spline', label: `M${thread} spline`, thread });
  }
  const cross = PATTERNS.cross.exec(word);
  if (cross !== null) {
    const number = Number(cross[1]);
    return within(number, CROSS, text, { kind: 'cross', label: `cross ${number}`, number });
  }
  const slot = PATTERNS.slot.exec(word);
  if (slot !== null) {
    const mm = decimal(slot[1]);
    return within(mm, SLOT_MM, text, { kind: 'slot', label: `slot ${mm} mm`, width: millimetres(mm) });
  }
  return null;
}

/** Widths across flats, metric or inch; null when it is neither. */
function readFlats(word: string, text: string): Result<Size> | null {
  const metric = PATTERNS.metric.exec(word);
  if (metric !== null) {
    const mm = decimal(metric[1]);
    const width = millimetres(mm);
    return within(mm, FLATS_MM, text, { kind: 'across-flats', label: `${mm} mm`, width, system: 'metric' });
  }
  const fraction = PATTERNS.fraction.exec(word);
  if (fraction !== null) {
    const below = Number(fraction[3]);
    if (below < 2 || FINEST % below !== 0) return null;
    return inchSize(Number(fraction[1] ?? 0) * FINEST + Number(fraction[2]) * (FINEST / below), text);
  }
  const inch = PATTERNS.inch.exec(word);
  if (inch === null) return null;
  const parts = decimal(inch[1]) * FINEST;
  return Number.isInteger(parts) ? inchSize(parts, text) : null;
}

/** An inch size from sixty-fourths, under its shortest marking: '11/16 in', '1-1/2 in'. */
function inchSize(parts: number, text: string): Result<Size> {
  let above = parts % FINEST;
  let below = FINEST;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const whole = Math.floor(parts / FINEST);
  const marking = above === 0 ? `${whole}` : `${whole > 0 ? `${whole}-` : ''}${above}/${below}`;
  const width = inches(parts / FINEST);
  return within(inMillimetres(width), FLATS_MM, text, {
    kind: 'across-flats',
    label: `${marking} in`,
    width,
    system: 'inch',
  });
}

function decimal(digits: string | undefined): number {
  return Number((digits ?? '').replace(',', '.'));
}

function within(value: number, [least, most]: Range, text: string, size: Size): Result<Size> {
  if (value >= least && value <= most) return ok(size);
  return refuse(
    'size-out-of-range',
    `"${text}" is outside anything made for vehicles; check the number and its unit`,
  );
}
