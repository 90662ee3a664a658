import type { CatalogueBelonging } from '../shape/belonging.ts';
import type { Offer } from '../shape/offer.ts';
import type { SquareDrive } from '../shape/words.ts';
import type { Measures } from './row.ts';
import { lastResort, tool, upTo } from './row.ts';

/** A long-arm hex key; the arm is the lever. */
function hexKey(id: string, size: string, measures: Measures): CatalogueBelonging {
  const key: Offer = { kind: 'key', head: 'hex-key', sizes: [size], armMm: measures.mm };
  return tool(id, 'hex key, long arm', size, measures, [key]);
}

/** A bit, or an external-lobe socket, on a square drive. */
function bit(
  id: string,
  name: string,
  head: 'hex-key' | 'lobe' | 'lobe-external',
  size: string,
  drive: SquareDrive,
  measures: Measures,
): CatalogueBelonging {
  return tool(id, name, `${size}, ${drive} drive`, measures, [
    { kind: 'bit-socket', head, sizes: [size], drive },
  ]);
}

/** Inside drives: hex keys, bits, lobes, splines, screwdrivers. */
export const KEYS_BITS_DRIVERS: readonly CatalogueBelonging[] = [
  hexKey('HK-2.5', '2.5 mm', { g: 5, mm: 110, ml: 3, price: 'P1' }),
  hexKey('HK-3', '3 mm', { g: 8, mm: 124, ml: 5, price: 'P1' }),
  hexKey('HK-4', '4 mm', { g: 18, mm: 140, ml: 11, price: 'P1' }),
  hexKey('HK-5', '5 mm', { g: 32, mm: 160, ml: 19, price: 'P1' }),
  hexKey('HK-6', '6 mm', { g: 52, mm: 180, ml: 31, price: 'P1' }),
  hexKey('HK-8', '8 mm', { g: 100, mm: 201, ml: 60, price: 'P1' }),
  hexKey('HK-10', '10 mm', { g: 180, mm: 224, ml: 110, price: 'P1' }),
  hexKey('HK-12', '12 mm', { g: 290, mm: 251, ml: 170, price: 'P1' }),
  hexKey('HK-14', '14 mm', { g: 440, mm: 280, ml: 260, price: 'P1' }),
  bit('HB-5', 'hex bit socket', 'hex-key', '5 mm', '3/8 in', { g: 45, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-6', 'hex bit socket', 'hex-key', '6 mm', '3/8 in', { g: 48, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-8', 'hex bit socket', 'hex-key', '8 mm', '3/8 in', { g: 55, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-10', 'hex bit socket', 'hex-key', '10 mm', '3/8 in', { g: 62, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-12', 'hex bit socket', 'hex-key', '12 mm', '1/2 in', { g: 72, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-14', 'hex bit socket', 'hex-key', '14 mm', '1/2 in', { g: 85, mm: 55, ml: 25, price: 'P1' }),
  bit('HB-17', 'hex bit socket', 'hex-key', '17 mm', '1/2 in', { g: 120, mm: 55, ml: 25, price: 'P1' }),
  bit('TB-20', 'lobe bit socket', 'lobe', 'T20', '3/8 in', { g: 28, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-25', 'lobe bit socket', 'lobe', 'T25', '3/8 in', { g: 28, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-27', 'lobe bit socket', 'lobe', 'T27', '3/8 in', { g: 29, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-30', 'lobe bit socket', 'lobe', 'T30', '3/8 in', { g: 30, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-40', 'lobe bit socket', 'lobe', 'T40', '3/8 in', { g: 40, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-45', 'lobe bit socket', 'lobe', 'T45', '3/8 in', { g: 42, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-50', 'lobe bit socket', 'lobe', 'T50', '3/8 in', { g: 48, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-55', 'lobe bit socket', 'lobe', 'T55', '3/8 in', { g: 55, mm: 50, ml: 20, price: 'P1' }),
  bit('TB-60', 'lobe bit socket', 'lobe', 'T60', '1/2 in', { g: 95, mm: 50, ml: 20, price: 'P1' }),
  bit('EB-8', 'external-lobe socket', 'lobe-external', 'E8', '3/8 in', {
    g: 22,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  bit('EB-10', 'external-lobe socket', 'lobe-external', 'E10', '3/8 in', {
    g: 26,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  bit('EB-12', 'external-lobe socket', 'lobe-external', 'E12', '3/8 in', {
    g: 34,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  bit('EB-14', 'external-lobe socket', 'lobe-external', 'E14', '3/8 in', {
    g: 42,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  bit('EB-16', 'external-lobe socket', 'lobe-external', 'E16', '1/2 in', {
    g: 55,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  bit('EB-18', 'external-lobe socket', 'lobe-external', 'E18', '1/2 in', {
    g: 70,
    mm: 30,
    ml: 14,
    price: 'P1',
  }),
  tool('TL-SET', 'lobe L-keys, plain and security', 'T10-T50', { g: 320, mm: 200, ml: 220, price: 'P2' }, [
    {
      kind: 'key',
      head: 'lobe',
      sizes: ['T10', 'T15', 'T20', 'T25', 'T27', 'T30', 'T40', 'T45', 'T50'],
      armMm: 200,
    },
  ]),
  tool(
    'XZ-8',
    'spline bits, twelve teeth',
    'M8, M10 and M12, 1/2 in drive',
    { g: 180, mm: 100, ml: 90, price: 'P2' },
    [
      {
        kind: 'bit-socket',
        head: 'spline',
        sizes: ['M8 spline', 'M10 spline', 'M12 spline'],
        drive: '1/2 in',
      },
    ],
  ),
  tool('DS-1', 'cross-head screwdriver', 'cross 1', { g: 75, mm: 185, ml: 90, price: 'P1' }, [
    { kind: 'driver', head: 'cross', sizes: ['cross 1'], lengthMm: 185 },
  ]),
  tool('DS-2', 'cross-head screwdriver', 'cross 2', { g: 110, mm: 215, ml: 140, price: 'P1' }, [
    { kind: 'driver', head: 'cross', sizes: ['cross 2'], lengthMm: 215 },
  ]),
  tool('DS-3', 'cross-head screwdriver, through-tang', 'cross 3', { g: 190, mm: 270, ml: 220, price: 'P2' }, [
    { kind: 'driver', head: 'cross', sizes: ['cross 3'], lengthMm: 270 },
  ]),
  tool('DF-4', 'slotted screwdriver', '4 x 100 mm', { g: 65, mm: 185, ml: 85, price: 'P1' }, [
    { kind: 'driver', head: 'slot', sizes: ['slot 4 mm'], lengthMm: 185 },
  ]),
  tool(
    'DF-6',
    'slotted screwdriver, through-tang',
    '6.5 x 150 mm',
    { g: 120, mm: 260, ml: 160, price: 'P1' },
    [
      { kind: 'driver', head: 'slot', sizes: ['slot 6.5 mm'], lengthMm: 260 },
      upTo('pry', 260, { of: 'light' }),
      lastResort('chisel'),
    ],
  ),
  tool('DF-10', 'slotted screwdriver, heavy', '10 x 200 mm', { g: 230, mm: 330, ml: 260, price: 'P2' }, [
    { kind: 'driver', head: 'slot', sizes: ['slot 10 mm'], lengthMm: 330 },
    upTo('pry', 330, { of: 'light' }),
  ]),
  tool('DSB-1', 'stubby reversible driver', 'cross 2, slot 6 mm', { g: 65, mm: 90, ml: 70, price: 'P1' }, [
    { kind: 'driver', head: 'cross', sizes: ['cross 2'], lengthMm: 90 },
    { kind: 'driver', head: 'slot', sizes: ['slot 6 mm'], lengthMm: 90 },
  ]),
  tool(
    'BD-1',
    'bit handle with twelve bits',
    'cross, slot, hex, lobe',
    { g: 260, mm: 210, ml: 260, price: 'P2' },
    [
      { kind: 'driver', head: 'cross', sizes: ['cross 1', 'cross 2', 'cross 3'], lengthMm: 210 },
      { kind: 'driver', head: 'slot', sizes: ['slot 4 mm', 'slot 6.5 mm'], lengthMm: 210 },
      { kind: 'driver', head: 'hex-key', sizes: ['3 mm', '4 mm', '5 mm', '6 mm'], lengthMm: 210 },
      { kind: 'driver', head: 'lobe', sizes: ['T20', 'T25', 'T30'], lengthMm: 210 },
    ],
  ),
];
