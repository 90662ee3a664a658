import type { Flats, Size } from '../../src/fastening/size.ts';
import { parseSize } from '../../src/fastening/size.ts';

/** A size that must be readable. */
export function sizeOf(text: string): Size {
  const size = parseSize(text);
  if (!size.ok) throw new Error(size.error.message);
  return size.value;
}

export function flatsOf(text: string): Flats {
  const size = sizeOf(text);
  if (size.kind !== 'across-flats') throw new Error(`${text} is no width across flats`);
  return size;
}
