import type { JobCard, NeedCard, PieceRef } from '@waymend/planner/answer/card-answer';
import type { Grade } from '@waymend/core/repairing/scene';

/** One piece of the best ways, and what it is for. */
export interface PieceRow {
  readonly piece: PieceRef;
  /** The worst grade it is used at. */
  readonly grade: Grade;
  readonly for: readonly string[];
}

const WORST: readonly Grade[] = ['proper', 'with-care', 'last-resort'];

/** Each piece once, in the order the needs ask for it. */
export function pieceRows(needs: readonly NeedCard[]): readonly PieceRow[] {
  const rows = new Map<string, { piece: PieceRef; grade: Grade; for: string[] }>();
  for (const { what, best } of needs) {
    if (best === null) continue;
    for (const piece of best.pieces) {
      const key = `${piece.id} ${piece.name}`;
      const row = rows.get(key);
      if (row === undefined) rows.set(key, { piece, grade: best.grade, for: [what] });
      else {
        row.for.push(what);
        if (WORST.indexOf(best.grade) > WORST.indexOf(row.grade)) row.grade = best.grade;
      }
    }
  }
  return [...rows.values()];
}

/** What must not be used, each once and without the word that the heading says. */
export function neverLines(card: Pick<JobCard, 'doNot' | 'needs'>): readonly string[] {
  const all = [...card.doNot, ...card.needs.flatMap(({ doNot }) => doNot)];
  const plain = all.map((line) => {
    const rest = line.replace(/^Never: ?/, '');
    return `${rest.charAt(0).toUpperCase()}${rest.slice(1)}`;
  });
  return [...new Set(plain)];
}
