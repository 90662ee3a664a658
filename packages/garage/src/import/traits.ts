import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { Offer } from '@waymend/catalogue/shape/offer';
import { parseSize } from '@waymend/core/fastening/size';
import { inMillimetres } from '@waymend/core/quantity/units';
import type { ListUnit } from './tokens.ts';
import { tokensOf } from './tokens.ts';
import { formsOfText } from './words.ts';

/** Things of one class come in sizes; which one is meant is decided by the size alone. */
export type SizedClass =
  | 'socket'
  | 'plug-socket'
  | 'combination'
  | 'ratcheting'
  | 'flare'
  | 'hex-key'
  | 'hex-bit'
  | 'lobe-bit'
  | 'external-lobe'
  | 'cross-driver'
  | 'slot-driver';

/** A size a thing is sold by: mm for widths, the number for lobes and crosses, two widths for flare-nut wrenches. */
export interface SizeMark {
  readonly value: number;
  readonly second?: number;
  readonly inch: boolean;
}

export interface Measure {
  readonly value: number;
  readonly unit: ListUnit | null;
  readonly inch: boolean;
}

/** What of a catalogue entry can be recognised in a typed line. */
export interface Traits {
  readonly entry: CatalogueBelonging;
  readonly class: SizedClass | null;
  readonly mark: SizeMark | null;
  /** Square drives it has, as marked ('1/2'). */
  readonly drives: readonly string[];
  readonly depth: 'shallow' | 'deep' | null;
  /** Every number of its name and size. */
  readonly measures: readonly Measure[];
  /** Words of its name and size. */
  readonly words: ReadonlySet<string>;
  /** Its length, where owners go by it (extensions, bars, adjustables, pliers). */
  readonly lengthMm: number | null;
  /** Pieces in one: a pair is 2, a box of 12 is 12. */
  readonly pack: number;
}

export function traitsOf(entry: CatalogueBelonging): Traits {
  const [offer] = entry.offers;
  const sized =
    offer === undefined
      ? null
      : sizedBy(offer, entry.offers.filter(({ kind }) => kind === offer.kind).length);
  const text = `${entry.name}, ${entry.size ?? ''}`;
  const measures = tokensOf(text).flatMap((token): Measure[] =>
    token.kind === 'number' ? [{ value: token.value, unit: token.unit, inch: token.inch }] : [],
  );
  return {
    entry,
    class: sized?.class ?? null,
    mark: sized?.mark ?? null,
    drives: [...new Set(entry.offers.flatMap(drivesOf))],
    depth: offer?.kind === 'socket' ? offer.depth : null,
    measures,
    words: new Set(formsOfText(text)),
    lengthMm: offer === undefined ? null : lengthOf(offer),
    pack: packOf(entry),
  };
}

function sizedBy(
  offer: Offer,
  ofKind: number,
): { readonly class: SizedClass; readonly mark: SizeMark } | null {
  const is = (what: SizedClass, size: string | undefined): ReturnType<typeof sizedBy> => {
    const mark = size === undefined ? null : markOf(size);
    return mark === null ? null : { class: what, mark };
  };
  switch (offer.kind) {
    case 'socket':
      if (offer.slotted === true) return null;
      return is(offer.retains === true || offer.thin === true ? 'plug-socket' : 'socket', offer.size);
    case 'wrench': {
      const [one, other] = offer.ends;
      if (one?.form === 'flare' && other?.form === 'flare') {
        const mark = markOf(one.size);
        const second = markOf(other.size);
        return mark === null || second === null
          ? null
          : { class: 'flare', mark: { ...mark, second: second.value } };
      }
      return is(
        offer.ends.some(({ form }) => form === 'ratchet-ring') ? 'ratcheting' : 'combination',
        one?.size,
      );
    }
    case 'key':
      return offer.head === 'hex-key' && offer.sizes.length === 1 ? is('hex-key', offer.sizes[0]) : null;
    case 'bit-socket': {
      if (offer.sizes.length !== 1) return null;
      if (offer.head === 'hex-key') return is('hex-bit', offer.sizes[0]);
      if (offer.head === 'lobe') return is('lobe-bit', offer.sizes[0]);
      return offer.head === 'lobe-external' ? is('external-lobe', offer.sizes[0]) : null;
    }
    case 'driver':
      if (offer.sizes.length !== 1 || ofKind > 1) return null;
      if (offer.head === 'cross') return is('cross-driver', offer.sizes[0]);
      return offer.head === 'slot' ? is('slot-driver', offer.sizes[0]) : null;
    case 'crow-foot':
    case 'adjustable':
    case 'pliers':
    case 'handle':
    case 'extension':
    case 'joint':
    case 'adapter':
    case 'lever-tube':
    case 'brace':
    case 'locknut-socket':
    case 'does':
      return null;
  }
}

function markOf(text: string): SizeMark | null {
  const read = parseSize(text);
  if (!read.ok) return null;
  const size = read.value;
  switch (size.kind) {
    case 'across-flats':
      return { value: inMillimetres(size.width), inch: size.system === 'inch' };
    case 'slot':
      return { value: inMillimetres(size.width), inch: false };
    case 'lobe':
    case 'cross':
      return { value: size.number, inch: false };
    case 'spline':
      return { value: size.thread, inch: false };
  }
}

function drivesOf(offer: Offer): readonly string[] {
  const plain = (drive: string): string => drive.replace(/ in$/, '');
  if ('drive' in offer) return [plain(offer.drive)];
  return offer.kind === 'adapter' ? [plain(offer.handle), plain(offer.socket)] : [];
}

function lengthOf(offer: Offer): number | null {
  switch (offer.kind) {
    case 'extension':
    case 'adjustable':
    case 'pliers':
      return offer.lengthMm;
    case 'handle':
      return offer.form === 'bar' ? offer.lengthMm : null;
    case 'lever-tube':
      return offer.lengthMm;
    case 'socket':
    case 'bit-socket':
    case 'key':
    case 'wrench':
    case 'crow-foot':
    case 'joint':
    case 'adapter':
    case 'brace':
    case 'driver':
    case 'locknut-socket':
    case 'does':
      return null;
  }
}

function packOf(entry: CatalogueBelonging): number {
  const together = Math.max(
    1,
    ...entry.offers.map((offer) => (offer.kind === 'does' ? (offer.pieces ?? 1) : 1)),
  );
  if (together > 1) return together;
  const text = `${entry.name}, ${entry.size ?? ''}`;
  if (/\b(?:pair|two)\b/.test(text)) return 2;
  if (/\bfour\b/.test(text)) return 4;
  const counted = /(?:^|, )(\d{1,3})(?: of [^,]*)?(?:$|,)/.exec(text);
  return counted === null ? 1 : Number(counted[1]);
}
