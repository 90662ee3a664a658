import type { PieceIndex } from '../choosing/problem.ts';
import { betterOf, isAtLeast } from './grade.ts';
import type { Grade } from './scene.ts';

/** Pieces that do something alone, each at the best grade any of its lines gives. */
export class GradedPieces {
  private readonly best = new Map<PieceIndex, Grade>();

  put(piece: PieceIndex, grade: Grade | null): void {
    const best = betterOf(this.best.get(piece) ?? null, grade);
    if (best !== null) this.best.set(piece, best);
  }

  /** Pieces of this grade or better, in the order of the table. */
  atLeast(grade: Grade): readonly PieceIndex[] {
    return [...this.best]
      .flatMap(([piece, own]) => (isAtLeast(own, grade) ? [piece] : []))
      .sort((a, b) => a - b);
  }
}
