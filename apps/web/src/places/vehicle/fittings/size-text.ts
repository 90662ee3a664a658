import type { FittingRow } from '@waymend/planner/views/fitting-list';

export type HeadDrive = FittingRow['drive'];

/** How a size is typed for a drive: a width in mm or inches, or a number with its own letters. */
export type Entry = 'width' | 'T' | 'E' | 'cross' | 'slot' | 'spline';

export function entryOf(drive: HeadDrive): Entry {
  switch (drive) {
    case 'lobe':
      return 'T';
    case 'lobe-external':
      return 'E';
    case 'cross':
    case 'slot':
    case 'spline':
      return drive;
    default:
      return 'width';
  }
}

const FINEST = 64;

/** The marking of what was typed, as the record writes it: '17 mm', '11/16 in', 'T30'; null while it is no size yet. */
export function sizeText(typed: string, entry: Entry, unit: 'mm' | 'in'): string | null {
  const text = typed.trim().replace(',', '.');
  if (entry === 'width') return unit === 'mm' ? metric(text) : inch(text);
  const number = /^\d+(\.\d+)?$/.test(text) ? Number(text) : null;
  if (number === null || number > 100) return null;
  switch (entry) {
    case 'T':
    case 'E':
      return Number.isInteger(number) ? `${entry}${number}` : null;
    case 'cross':
      return Number.isInteger(number) && number <= 5 ? `cross ${number}` : null;
    case 'slot':
      return number >= 1 && number <= 20 ? `slot ${number} mm` : null;
    case 'spline':
      return Number.isInteger(number) && number >= 3 && number <= 24 ? `M${number} spline` : null;
  }
}

function metric(text: string): string | null {
  if (!/^\d+(\.\d+)?$/.test(text)) return null;
  const mm = Number(text);
  return mm >= 0.7 && mm <= 120 ? `${mm} mm` : null;
}

/** Sixty-fourths of an inch under their shortest marking. */
function inch(text: string): string | null {
  const found = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text) ?? /^(\d+)$/.exec(text);
  if (found === null) return null;
  const [, whole = '0', above = '0', below = '1'] = found;
  const part = FINEST / Number(below);
  if (!Number.isInteger(part) || Number(below) === 0) return null;
  let parts = Number(whole) * FINEST + Number(above) * part;
  if (parts <= 1 || parts > 4 * FINEST) return null;
  const inches = Math.floor(parts / FINEST);
  parts %= FINEST;
  let divisor = FINEST;
  while (parts > 0 && parts % 2 === 0) {
    parts /= 2;
    divisor /= 2;
  }
  if (parts === 0) return `${inches} in`;
  return inches > 0 ? `${inches}-${parts}/${divisor} in` : `${parts}/${divisor} in`;
}

/** What stands in the field for a marking: '17' of '17 mm', '3/4' of '3/4 in', '30' of 'T30'. */
export function typedOf(marking: string): { readonly typed: string; readonly unit: 'mm' | 'in' } {
  const unit = marking.endsWith(' in') ? 'in' : 'mm';
  const typed = marking.replace(/^(T|E|M|cross |slot )/, '').replace(/ (mm|in|spline)$/, '');
  return { typed, unit };
}

/** The standard sizes nearest to an odd metric width, for the question. */
export function nearestOf(marking: string, known: readonly string[]): string | null {
  const mm = /^([\d.]+) mm$/.exec(marking)?.[1];
  if (mm === undefined) return null;
  const widths = known.flatMap((size) => {
    const found = /^([\d.]+) mm$/.exec(size)?.[1];
    return found === undefined ? [] : [Number(found)];
  });
  if (widths.length === 0) return null;
  const near = widths.reduce((best, w) =>
    Math.abs(w - Number(mm)) < Math.abs(best - Number(mm)) ? w : best,
  );
  return `${near} mm`;
}
