import { within } from './draft.ts';
import type { Atom, Draft } from './draft.ts';

/**
 * Answers "whenever a holds, b holds" for two atoms, where it can be read off their ways: every way of a holds all of some
 * way of b; a is a piece that is by itself a way of b; or a asks for at least as many units from the same pieces.
 * `false` means "not seen to", which is always safe.
 */
export class Implications {
  private readonly draft: Draft;
  private readonly known = new Map<number, boolean>();

  constructor(draft: Draft) {
    this.draft = draft;
  }

  implies(a: Atom, b: Atom): boolean {
    if (a === b) return true;
    if (b < this.draft.pieceCount) return false;
    const key = a * this.draft.state.length + b;
    let answer = this.known.get(key);
    if (answer === undefined) {
      answer = this.compute(a, b);
      this.known.set(key, answer);
    }
    return answer;
  }

  /** Whenever all of `all` hold, `b` holds. */
  allImply(all: readonly Atom[], b: Atom): boolean {
    if (all.some((a) => this.implies(a, b))) return true;
    const need = this.draft.needs[b - this.draft.pieceCount];
    return need?.kind === 'any' && need.ways.some((way) => within(way, all));
  }

  private compute(a: Atom, b: Atom): boolean {
    const { pieceCount, needs } = this.draft;
    const later = needs[b - pieceCount];
    if (later?.kind === 'any') {
      if (later.ways.some((way) => way.length === 1 && way[0] === a)) return true;
      const former = a < pieceCount ? undefined : needs[a - pieceCount];
      if (former?.kind !== 'any') return false;
      return former.ways.every((way) => later.ways.some((smaller) => within(smaller, way)));
    }
    const former = a < pieceCount ? undefined : needs[a - pieceCount];
    if (later?.kind !== 'enough' || former?.kind !== 'enough') return false;
    // Units are capped at what is asked, so what the smaller need sees of a piece is the lesser of the two.
    return (
      former.units >= later.units &&
      former.from.length === later.from.length &&
      former.from.every(({ piece, units }, i) => {
        const other = later.from[i];
        return other?.piece === piece && other.units === Math.min(units, later.units);
      })
    );
  }
}

/**
 * Row domination. Within a list of atoms that must all hold (an option, `must`), an atom implied by another says nothing
 * new and goes. Taken one at a time, so that two equivalent atoms do not remove each other.
 */
export function dropImplied(implications: Implications, atoms: readonly Atom[]): Atom[] {
  const kept = [...atoms];
  for (let i = kept.length - 1; i >= 0; i--) {
    const b = kept[i] ?? 0;
    const others = kept.filter((_, at) => at !== i);
    if (implications.allImply(others, b)) kept.splice(i, 1);
  }
  return kept;
}
