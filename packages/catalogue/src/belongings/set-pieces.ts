import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { CatalogueBelonging } from '../shape/belonging.ts';
import type { Offer } from '../shape/offer.ts';
import type { Measures } from './row.ts';
import { socket, tool } from './row.ts';

const LIKE_NEIGHBOURS: Basis = estimate(
  'In line with the listed sockets of the same drive and depth, themselves worked out from geometry; within 20 % until weighed',
);

type Head = Extract<Offer, { kind: 'bit-socket' }>['head'];

/** Bits that come as a row of one head; the row is one belonging, since nobody weighs a single bit. */
function bits(
  id: string,
  name: string,
  drive: '1/4 in' | '1/2 in',
  head: Head,
  sizes: readonly string[],
  measures: Measures,
): CatalogueBelonging {
  return tool(id, name, `${sizes.join(', ')}, ${drive} drive`, measures, [
    { kind: 'bit-socket', head, sizes, drive },
  ]);
}

/** A retaining plug socket on the big drive: thicker than the thin-wall ones. */
function plugSocket(id: string, size: string, measures: Measures): CatalogueBelonging {
  return tool(id, 'spark-plug socket, retaining', `${size}, 1/2 in drive`, measures, [
    { kind: 'socket', size, depth: 'deep', points: 6, drive: '1/2 in', retains: true },
  ]);
}

/**
 * Pieces that people own because boxed sets hold them, beyond the main list: the smallest sockets, sizes between, rows of
 * bits. The bits on 1/2 in are counted with the holder they need.
 */
export const SET_PIECES: readonly CatalogueBelonging[] = [
  socket('SK4-4', '4 mm', '1/4 in', 'shallow', { g: 12, mm: 25, ml: 4, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK4-4.5', '4.5 mm', '1/4 in', 'shallow', { g: 12, mm: 25, ml: 4, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK4-5', '5 mm', '1/4 in', 'shallow', { g: 13, mm: 25, ml: 4, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK4-9', '9 mm', '1/4 in', 'shallow', { g: 17, mm: 25, ml: 5, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK4-11', '11 mm', '1/4 in', 'shallow', { g: 23, mm: 25, ml: 6, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK4-14', '14 mm', '1/4 in', 'shallow', { g: 37, mm: 25, ml: 9, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-6', '6 mm', '1/4 in', 'deep', { g: 27, mm: 50, ml: 9, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-7', '7 mm', '1/4 in', 'deep', { g: 28, mm: 50, ml: 9, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-9', '9 mm', '1/4 in', 'deep', { g: 32, mm: 50, ml: 10, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-11', '11 mm', '1/4 in', 'deep', { g: 44, mm: 50, ml: 13, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-12', '12 mm', '1/4 in', 'deep', { g: 51, mm: 50, ml: 15, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD4-13', '13 mm', '1/4 in', 'deep', { g: 61, mm: 50, ml: 18, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SK2-11', '11 mm', '1/2 in', 'shallow', { g: 51, mm: 38, ml: 19, price: 'P1' }, LIKE_NEIGHBOURS),
  socket('SD2-15', '15 mm', '1/2 in', 'deep', { g: 130, mm: 78, ml: 41, price: 'P1' }, LIKE_NEIGHBOURS),
  tool('SB-4', 'sliding T-bar', '1/4 in drive, 115 mm', { g: 70, mm: 115, ml: 30, price: 'P1' }, [
    { kind: 'handle', form: 't-bar', drive: '1/4 in', lengthMm: 115 },
  ]),
  bits('BS4-CROSS', 'cross bit sockets', '1/4 in', 'cross', ['cross 1', 'cross 2', 'cross 3'], {
    g: 45,
    mm: 37,
    ml: 20,
    price: 'P1',
  }),
  bits('BS4-SLOT', 'slot bit sockets', '1/4 in', 'slot', ['slot 4 mm', 'slot 5.5 mm', 'slot 6.5 mm'], {
    g: 45,
    mm: 37,
    ml: 20,
    price: 'P1',
  }),
  bits('BS4-HEX', 'hex bit sockets', '1/4 in', 'hex-key', ['3 mm', '4 mm', '5 mm', '6 mm', '7 mm'], {
    g: 75,
    mm: 37,
    ml: 35,
    price: 'P1',
  }),
  bits('BS4-LOBE', 'lobe bit sockets', '1/4 in', 'lobe', ['T8', 'T10', 'T15', 'T20', 'T25', 'T27', 'T30'], {
    g: 100,
    mm: 37,
    ml: 50,
    price: 'P2',
  }),
  bits('BL2-HEX', 'hex bits with holder', '1/2 in', 'hex-key', ['7 mm', '8 mm', '10 mm', '12 mm', '14 mm'], {
    g: 180,
    mm: 38,
    ml: 60,
    price: 'P2',
  }),
  bits('BL2-LOBE', 'lobe bits with holder', '1/2 in', 'lobe', ['T40', 'T45', 'T50', 'T55', 'T60', 'T70'], {
    g: 190,
    mm: 38,
    ml: 65,
    price: 'P2',
  }),
  bits('BL2-CROSS', 'cross bits with holder', '1/2 in', 'cross', ['cross 3', 'cross 4'], {
    g: 140,
    mm: 38,
    ml: 50,
    price: 'P1',
  }),
  bits('BL2-SLOT', 'slot bits with holder', '1/2 in', 'slot', ['slot 8 mm', 'slot 10 mm', 'slot 12 mm'], {
    g: 130,
    mm: 38,
    ml: 45,
    price: 'P1',
  }),
  plugSocket('SP2-16', '16 mm', { g: 110, mm: 65, ml: 40, price: 'P1' }),
  plugSocket('SP2-21', '21 mm', { g: 150, mm: 65, ml: 55, price: 'P1' }),
];
