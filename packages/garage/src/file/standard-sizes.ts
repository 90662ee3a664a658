import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import type { Offer } from '@waymend/catalogue/shape/offer';
import { CROSS_HEADS } from '@waymend/catalogue/standards/cross-heads';
import { HEX_HEADS_DIN } from '@waymend/catalogue/standards/hex-heads-din';
import { HEX_HEADS_ISO } from '@waymend/catalogue/standards/hex-heads-iso';
import { HEX_HEADS_JIS_SMALL } from '@waymend/catalogue/standards/hex-heads-jis-small';
import { LOBES } from '@waymend/catalogue/standards/lobes';
import { LOBES_EXTERNAL } from '@waymend/catalogue/standards/lobes-external';
import { SET_SCREWS_ISO4026 } from '@waymend/catalogue/standards/set-screws-iso4026';
import { SOCKET_CAPS_ISO4762 } from '@waymend/catalogue/standards/socket-caps-iso4762';
import { WHEEL_NUT_HEXES } from '@waymend/catalogue/standards/wheel-nut-hexes';
import type { Size } from '@waymend/core/fastening/size';
import { parseSize } from '@waymend/core/fastening/size';
import { inMillimetres, MM_PER_INCH } from '@waymend/core/quantity/units';

/** Widths across flats that a standard or a tool of the catalogue has, mm. */
const METRIC: ReadonlySet<number> = new Set([
  ...[
    HEX_HEADS_ISO,
    HEX_HEADS_DIN,
    HEX_HEADS_JIS_SMALL,
    WHEEL_NUT_HEXES,
    SOCKET_CAPS_ISO4762,
    SET_SCREWS_ISO4026,
  ].flatMap(({ rows }) => rows.map(({ size }) => size)),
  ...BELONGINGS.flatMap(({ offers }) => offers.flatMap(sizesOf)).flatMap((text) => {
    const size = parseSize(text);
    return size.ok && size.value.kind === 'across-flats' && size.value.system === 'metric'
      ? [thousandths(inMillimetres(size.value.width))]
      : [];
  }),
]);
const LOBE_NAMES: ReadonlySet<string> = new Set(
  [...LOBES.rows, ...LOBES_EXTERNAL.rows].map(({ size }) => size),
);
const CROSSES: ReadonlySet<number> = new Set(CROSS_HEADS.rows.map(({ number }) => number));

/** The sizes an offer turns, as marked. */
export function sizesOf(offer: Offer): readonly string[] {
  if ('size' in offer) return [offer.size];
  if ('sizes' in offer) return offer.sizes;
  return 'ends' in offer ? offer.ends.map(({ size }) => size) : [];
}

/**
 * Whether something in a standard or the catalogue has this size; an off size is asked about, not refused. Heads are made to
 * standards; wrenches and sockets are sold in every whole millimetre (common practice).
 */
export function isOfAStandard(size: Size, of: 'head' | 'tool'): boolean {
  switch (size.kind) {
    case 'across-flats': {
      const mm = inMillimetres(size.width);
      if (size.system === 'metric') {
        const whole = of === 'tool' && Math.abs(mm - Math.round(mm)) < 1e-6 && mm >= 3 && mm <= 85;
        return whole || METRIC.has(thousandths(mm));
      }
      // ASME B18.2.1 widths go by 1/16 in from 7/16 up; keys and small heads by 1/32 and 1/64 (recalled).
      const sixtyFourths = (mm / MM_PER_INCH) * 64;
      const step = sixtyFourths > 64 ? 4 : sixtyFourths > 16 ? 2 : 1;
      return Math.abs(sixtyFourths / step - Math.round(sixtyFourths / step)) < 1e-6 && sixtyFourths <= 320;
    }
    case 'lobe':
      return LOBE_NAMES.has(`${size.family}${size.number}`);
    case 'cross':
      return CROSSES.has(size.number);
    case 'slot': {
      const mm = inMillimetres(size.width);
      return mm >= 2 && mm <= 16;
    }
    case 'spline':
      return size.thread >= 4 && size.thread <= 18;
  }
}

/** The nearest metric width of a standard, mm. */
export function nearestMetric(mm: number): number {
  return [...METRIC].reduce((best, width) => (Math.abs(width - mm) < Math.abs(best - mm) ? width : best), 10);
}

function thousandths(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
