import type { Grade } from '@waymend/core/repairing/scene';
import type { Mark } from './marks.ts';
import { worst } from './marks.ts';

/** One way found: the pieces it takes (positions on the bench), its grade, and whether it swings a drive handle. */
export interface Found {
  readonly mark: Grade;
  readonly pieces: readonly number[];
  readonly handle: boolean;
}

/** A way of one piece, if it is one. */
export function* single(piece: number, mark: Mark): Generator<Found> {
  if (mark !== null) yield { mark, pieces: [piece], handle: false };
}

/** A socket, bit or foot that sits so well, on every drive train that turns it. */
export function* onDrives(piece: number, fit: Mark, drives: Iterable<Found>): Generator<Found> {
  if (fit === null) return;
  for (const drive of drives) {
    const mark = worst(fit, drive.mark);
    // One piece cannot be the socket and its own handle.
    if (mark === null || drive.pieces.includes(piece)) continue;
    yield { mark, pieces: [piece, ...drive.pieces], handle: true };
  }
}
