import type { PieceIndex } from '../choosing/problem.ts';
import { sortedDistinct } from '../choosing/sorted.ts';
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
    const good: PieceIndex[] = [];
    for (const [piece, own] of this.best) if (isAtLeast(own, grade)) good.push(piece);
    return sortedDistinct(good);
  }
}
