import { wholeMillimetres } from '../quantity/units.ts';
import type { PieceSize } from './stow-problem.ts';

/** What a piece is like across its length. */
export type PieceForm = 'long' | 'flat' | 'round';

/** Width over thickness of a thing across its length (estimate): bars and wrenches, sheets and papers, sockets and bottles. */
const BROAD: Readonly<Record<PieceForm, number>> = { long: 2, flat: 6, round: 1 };

/**
 * Length, width and thickness of a thing of which only its length and the room it takes among others are known: the room
 * over the length is its cross-section, and its form says how broad that is. Longest first, whole millimetres, rounded
 * up. An estimate; a measured thing brings its own.
 *
 * @param lengthMm Greatest length, mm.
 * @param bulkMl Room it takes in a roll or box, ml.
 */
export function measuresFrom(lengthMm: number, bulkMl: number, form: PieceForm): PieceSize {
  const length = Math.max(1, lengthMm);
  const section = Math.max(1, (bulkMl * 1000) / length);
  const thickness = Math.sqrt(section / BROAD[form]);
  // Tape, tyres and bottles: what is broader than it is long lies on its broad side.
  const [a = 1, b = 1, c = 1] = [length, thickness * BROAD[form], thickness].sort((m, n) => n - m);
  const up = (mm: number) => wholeMillimetres(Math.max(1, Math.ceil(mm - 1e-9)));
  return { length: up(a), width: up(b), thickness: up(c) };
}
