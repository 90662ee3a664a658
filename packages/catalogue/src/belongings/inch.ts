import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { CatalogueBelonging } from '../shape/belonging.ts';
import type { SquareDrive } from '../shape/words.ts';
import type { Measures } from './row.ts';
import { combinationWrench, socket, tool } from './row.ts';

const BETWEEN_NEIGHBOURS: Basis = estimate(
  'In proportion between the metric ones just smaller and just larger of the same drive and depth, themselves worked out from geometry; within 20 % until weighed',
);

function inchSocket(
  id: string,
  size: string,
  drive: SquareDrive,
  depth: 'shallow' | 'deep',
  measures: Measures,
): CatalogueBelonging {
  return socket(id, size, drive, depth, measures, BETWEEN_NEIGHBOURS);
}

function inchKey(id: string, size: string, measures: Measures): CatalogueBelonging {
  return tool(
    id,
    'hex key, long arm',
    size,
    measures,
    [{ kind: 'key', head: 'hex-key', sizes: [size], armMm: measures.mm }],
    { basis: BETWEEN_NEIGHBOURS },
  );
}

/** Inch sockets, wrenches and keys that people own, mostly out of mixed sets. Few vehicles here take many of them. */
export const INCH: readonly CatalogueBelonging[] = [
  inchSocket('SKI4-1/4', '1/4 in', '1/4 in', 'shallow', { g: 13, mm: 25, ml: 4, price: 'P1' }),
  inchSocket('SKI4-9/32', '9/32 in', '1/4 in', 'shallow', { g: 14, mm: 25, ml: 4, price: 'P1' }),
  inchSocket('SKI4-5/16', '5/16 in', '1/4 in', 'shallow', { g: 15, mm: 25, ml: 4, price: 'P1' }),
  inchSocket('SKI4-11/32', '11/32 in', '1/4 in', 'shallow', { g: 16, mm: 25, ml: 4, price: 'P1' }),
  inchSocket('SKI4-3/8', '3/8 in', '1/4 in', 'shallow', { g: 18, mm: 25, ml: 5, price: 'P1' }),
  inchSocket('SKI4-7/16', '7/16 in', '1/4 in', 'shallow', { g: 23, mm: 25, ml: 6, price: 'P1' }),
  inchSocket('SKI4-1/2', '1/2 in', '1/4 in', 'shallow', { g: 30, mm: 25, ml: 8, price: 'P1' }),
  inchSocket('SDI4-5/16', '5/16 in', '1/4 in', 'deep', { g: 29, mm: 50, ml: 9, price: 'P1' }),
  inchSocket('SDI4-3/8', '3/8 in', '1/4 in', 'deep', { g: 34, mm: 50, ml: 11, price: 'P1' }),
  inchSocket('SKI3-3/8', '3/8 in', '3/8 in', 'shallow', { g: 27, mm: 28, ml: 9, price: 'P1' }),
  inchSocket('SKI3-7/16', '7/16 in', '3/8 in', 'shallow', { g: 28, mm: 28, ml: 9, price: 'P1' }),
  inchSocket('SKI3-1/2', '1/2 in', '3/8 in', 'shallow', { g: 33, mm: 28, ml: 10, price: 'P1' }),
  inchSocket('SKI3-9/16', '9/16 in', '3/8 in', 'shallow', { g: 41, mm: 28, ml: 12, price: 'P1' }),
  inchSocket('SKI3-5/8', '5/8 in', '3/8 in', 'shallow', { g: 50, mm: 28, ml: 15, price: 'P1' }),
  inchSocket('SKI3-11/16', '11/16 in', '3/8 in', 'shallow', { g: 61, mm: 28, ml: 17, price: 'P1' }),
  inchSocket('SKI3-3/4', '3/4 in', '3/8 in', 'shallow', { g: 83, mm: 32, ml: 23, price: 'P1' }),
  inchSocket('SKI3-13/16', '13/16 in', '3/8 in', 'shallow', { g: 97, mm: 32, ml: 26, price: 'P1' }),
  inchSocket('SKI3-7/8', '7/8 in', '3/8 in', 'shallow', { g: 110, mm: 32, ml: 31, price: 'P1' }),
  inchSocket('SDI3-3/8', '3/8 in', '3/8 in', 'deep', { g: 63, mm: 64, ml: 21, price: 'P1' }),
  inchSocket('SDI3-7/16', '7/16 in', '3/8 in', 'deep', { g: 66, mm: 64, ml: 21, price: 'P1' }),
  inchSocket('SDI3-1/2', '1/2 in', '3/8 in', 'deep', { g: 73, mm: 64, ml: 22, price: 'P1' }),
  inchSocket('SDI3-9/16', '9/16 in', '3/8 in', 'deep', { g: 89, mm: 64, ml: 27, price: 'P1' }),
  inchSocket('SDI3-5/8', '5/8 in', '3/8 in', 'deep', { g: 110, mm: 64, ml: 33, price: 'P1' }),
  inchSocket('SDI3-11/16', '11/16 in', '3/8 in', 'deep', { g: 130, mm: 64, ml: 39, price: 'P1' }),
  inchSocket('SDI3-3/4', '3/4 in', '3/8 in', 'deep', { g: 150, mm: 64, ml: 46, price: 'P1' }),
  inchSocket('SKI2-7/16', '7/16 in', '1/2 in', 'shallow', { g: 51, mm: 38, ml: 19, price: 'P1' }),
  inchSocket('SKI2-1/2', '1/2 in', '1/2 in', 'shallow', { g: 54, mm: 38, ml: 19, price: 'P1' }),
  inchSocket('SKI2-9/16', '9/16 in', '1/2 in', 'shallow', { g: 58, mm: 38, ml: 19, price: 'P1' }),
  inchSocket('SKI2-5/8', '5/8 in', '1/2 in', 'shallow', { g: 63, mm: 38, ml: 20, price: 'P1' }),
  inchSocket('SKI2-11/16', '11/16 in', '1/2 in', 'shallow', { g: 76, mm: 38, ml: 23, price: 'P1' }),
  inchSocket('SKI2-3/4', '3/4 in', '1/2 in', 'shallow', { g: 90, mm: 38, ml: 27, price: 'P1' }),
  inchSocket('SKI2-13/16', '13/16 in', '1/2 in', 'shallow', { g: 110, mm: 38, ml: 32, price: 'P1' }),
  inchSocket('SKI2-7/8', '7/8 in', '1/2 in', 'shallow', { g: 140, mm: 42, ml: 40, price: 'P1' }),
  inchSocket('SKI2-15/16', '15/16 in', '1/2 in', 'shallow', { g: 160, mm: 42, ml: 45, price: 'P1' }),
  inchSocket('SKI2-1', '1 in', '1/2 in', 'shallow', { g: 200, mm: 42, ml: 55, price: 'P1' }),
  inchSocket('SKI2-1-1/16', '1-1/16 in', '1/2 in', 'shallow', { g: 240, mm: 48, ml: 66, price: 'P2' }),
  inchSocket('SKI2-1-1/8', '1-1/8 in', '1/2 in', 'shallow', { g: 270, mm: 48, ml: 73, price: 'P2' }),
  inchSocket('SKI2-1-1/4', '1-1/4 in', '1/2 in', 'shallow', { g: 350, mm: 52, ml: 96, price: 'P2' }),
  inchSocket('SKI2-1-5/16', '1-5/16 in', '1/2 in', 'shallow', { g: 390, mm: 52, ml: 110, price: 'P2' }),
  inchSocket('SKI2-1-3/8', '1-3/8 in', '1/2 in', 'shallow', { g: 430, mm: 52, ml: 120, price: 'P2' }),
  inchSocket('SKI2-1-7/16', '1-7/16 in', '1/2 in', 'shallow', { g: 470, mm: 52, ml: 130, price: 'P2' }),
  inchSocket('SKI2-1-1/2', '1-1/2 in', '1/2 in', 'shallow', { g: 540, mm: 56, ml: 150, price: 'P2' }),
  inchSocket('SDI2-1/2', '1/2 in', '1/2 in', 'deep', { g: 120, mm: 78, ml: 39, price: 'P1' }),
  inchSocket('SDI2-9/16', '9/16 in', '1/2 in', 'deep', { g: 120, mm: 78, ml: 40, price: 'P1' }),
  inchSocket('SDI2-5/8', '5/8 in', '1/2 in', 'deep', { g: 130, mm: 78, ml: 43, price: 'P1' }),
  inchSocket('SDI2-11/16', '11/16 in', '1/2 in', 'deep', { g: 150, mm: 78, ml: 48, price: 'P1' }),
  inchSocket('SDI2-3/4', '3/4 in', '1/2 in', 'deep', { g: 180, mm: 78, ml: 56, price: 'P1' }),
  inchSocket('SDI2-13/16', '13/16 in', '1/2 in', 'deep', { g: 200, mm: 78, ml: 65, price: 'P1' }),
  inchSocket('SDI2-7/8', '7/8 in', '1/2 in', 'deep', { g: 230, mm: 78, ml: 74, price: 'P1' }),
  inchSocket('SDI2-15/16', '15/16 in', '1/2 in', 'deep', { g: 270, mm: 78, ml: 85, price: 'P1' }),
  inchSocket('SDI2-1', '1 in', '1/2 in', 'deep', { g: 300, mm: 78, ml: 97, price: 'P1' }),
  inchSocket('SDI2-1-1/16', '1-1/16 in', '1/2 in', 'deep', { g: 340, mm: 78, ml: 110, price: 'P2' }),
  inchSocket('SDI2-1-1/8', '1-1/8 in', '1/2 in', 'deep', { g: 380, mm: 78, ml: 120, price: 'P2' }),
  inchSocket('SDI2-1-1/4', '1-1/4 in', '1/2 in', 'deep', { g: 460, mm: 78, ml: 150, price: 'P2' }),
  // combination wrenches, from the same curve as the metric ones
  combinationWrench('CWI-1/4', '1/4 in', { g: 14, mm: 108, ml: 4, price: 'P1' }),
  combinationWrench('CWI-5/16', '5/16 in', { g: 24, mm: 123, ml: 8, price: 'P1' }),
  combinationWrench('CWI-11/32', '11/32 in', { g: 29, mm: 130, ml: 10, price: 'P1' }),
  combinationWrench('CWI-3/8', '3/8 in', { g: 36, mm: 138, ml: 13, price: 'P1' }),
  combinationWrench('CWI-7/16', '7/16 in', { g: 51, mm: 153, ml: 20, price: 'P1' }),
  combinationWrench('CWI-1/2', '1/2 in', { g: 68, mm: 168, ml: 28, price: 'P1' }),
  combinationWrench('CWI-9/16', '9/16 in', { g: 89, mm: 183, ml: 39, price: 'P1' }),
  combinationWrench('CWI-5/8', '5/8 in', { g: 110, mm: 199, ml: 52, price: 'P1' }),
  combinationWrench('CWI-11/16', '11/16 in', { g: 140, mm: 214, ml: 68, price: 'P2' }),
  combinationWrench('CWI-3/4', '3/4 in', { g: 170, mm: 230, ml: 87, price: 'P2' }),
  combinationWrench('CWI-13/16', '13/16 in', { g: 200, mm: 247, ml: 110, price: 'P2' }),
  combinationWrench('CWI-7/8', '7/8 in', { g: 240, mm: 263, ml: 130, price: 'P2' }),
  combinationWrench('CWI-15/16', '15/16 in', { g: 280, mm: 279, ml: 170, price: 'P2' }),
  combinationWrench('CWI-1', '1 in', { g: 320, mm: 296, ml: 200, price: 'P2' }),
  combinationWrench('CWI-1-1/16', '1-1/16 in', { g: 370, mm: 313, ml: 240, price: 'P2' }),
  combinationWrench('CWI-1-1/8', '1-1/8 in', { g: 420, mm: 330, ml: 280, price: 'P2' }),
  combinationWrench('CWI-1-1/4', '1-1/4 in', { g: 530, mm: 365, ml: 380, price: 'P2' }),
  // hex keys, long arm
  inchKey('HKI-1/8', '1/8 in', { g: 10, mm: 127, ml: 6, price: 'P1' }),
  inchKey('HKI-5/32', '5/32 in', { g: 18, mm: 140, ml: 11, price: 'P1' }),
  inchKey('HKI-3/16', '3/16 in', { g: 29, mm: 155, ml: 17, price: 'P1' }),
  inchKey('HKI-7/32', '7/32 in', { g: 43, mm: 171, ml: 26, price: 'P1' }),
  inchKey('HKI-1/4', '1/4 in', { g: 60, mm: 184, ml: 36, price: 'P1' }),
  inchKey('HKI-5/16', '5/16 in', { g: 99, mm: 200, ml: 59, price: 'P1' }),
  inchKey('HKI-3/8', '3/8 in', { g: 160, mm: 219, ml: 98, price: 'P1' }),
  inchKey('HKI-1/2', '1/2 in', { g: 340, mm: 261, ml: 200, price: 'P1' }),
];
