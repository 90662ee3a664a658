import type { Problem } from '../problem.ts';
import type { Atom, DraftNeed } from './draft.ts';

const UNKNOWN = 0;
const HOLDS = 1;
const NOT_SEEN = 2;

/**
 * Answers "whenever these hold, that holds" for atoms, where it can be read off the ways: a need is implied when some way of
 * it is, atom by atom; what a need implies is what each of its ways implies; a count is implied by pieces that reach it,
 * and by another count of no fewer units over no other pieces. `false` means "not seen to", which is always safe.
 *
 * Answers about two needs are remembered, so the needs must not change while this is in use.
 */
export class Implications {
  private readonly pieceCount: number;
  private readonly needs: readonly DraftNeed[];
  /** Row per need: what is known of it implying each need, see UNKNOWN. */
  private readonly known: (Uint8Array | undefined)[] = [];
  private readonly alone: (ReadonlySet<Atom> | undefined)[] = [];

  constructor(pieceCount: number, needs: readonly DraftNeed[]) {
    this.pieceCount = pieceCount;
    this.needs = needs;
  }

  /** Whenever `a` holds, `b` holds. */
  implies(a: Atom, b: Atom): boolean {
    if (a === b) return true;
    if (b < this.pieceCount) return false;
    if (a < this.pieceCount) return this.aloneFor(b).has(a);
    const at = b - this.pieceCount;
    let row = this.known[a - this.pieceCount];
    if (row === undefined || at >= row.length) row = this.widen(a - this.pieceCount, at);
    const before = row[at];
    if (before !== UNKNOWN) return before === HOLDS;
    const answer = this.compute(a, b);
    row[at] = answer ? HOLDS : NOT_SEEN;
    return answer;
  }

  /** Needs may be added while this is in use. */
  private widen(need: number, least: number): Uint8Array {
    const wider = new Uint8Array(Math.max(least + 1, this.needs.length));
    wider.set(this.known[need] ?? []);
    this.known[need] = wider;
    return wider;
  }

  /** Whenever all of `all` hold, `b` holds. */
  allImply(all: readonly Atom[], b: Atom): boolean {
    for (const a of all) if (this.implies(a, b)) return true;
    return all.length > 1 && b >= this.pieceCount && this.built(all, b);
  }

  /** Whenever all of `all` hold, all of `those` hold. */
  allImplyAll(all: readonly Atom[], those: readonly Atom[]): boolean {
    for (const b of those) if (!this.allImply(all, b)) return false;
    return true;
  }

  /** `b` is put together from `all`: by one of its ways, or by the units of the pieces. */
  private built(all: readonly Atom[], b: Atom): boolean {
    const need = this.needs[b - this.pieceCount];
    if (need?.kind === 'any') {
      // A way of one atom was asked for already, atom by atom.
      for (const way of need.ways) if (way.length > 1 && this.allImplyAll(all, way)) return true;
      for (const way of need.ways) {
        const [only] = way;
        if (way.length === 1 && only !== undefined && only >= this.pieceCount && this.built(all, only))
          return true;
      }
      return need.ways.some((way) => way.length === 0);
    }
    if (!need) return false;
    let units = 0;
    for (const part of need.from) if (all.includes(part.piece)) units += part.units;
    return units >= need.units;
  }

  /** Pieces that by themselves meet the need. */
  private aloneFor(b: Atom): ReadonlySet<Atom> {
    const at = b - this.pieceCount;
    const before = this.alone[at];
    if (before) return before;
    const found = new Set<Atom>();
    this.alone[at] = found;
    const need = this.needs[at];
    if (need?.kind === 'enough') {
      for (const { piece, units } of need.from) if (units >= need.units) found.add(piece);
    }
    for (const way of need?.kind === 'any' ? need.ways : []) {
      const [first, ...others] = way;
      if (first === undefined) continue;
      const candidates = first < this.pieceCount ? [first] : this.aloneFor(first);
      for (const piece of candidates) if (others.every((atom) => this.implies(piece, atom))) found.add(piece);
    }
    return found;
  }

  private compute(a: Atom, b: Atom): boolean {
    const former = this.needs[a - this.pieceCount];
    const later = this.needs[b - this.pieceCount];
    if (!former || !later) return false;
    if (former.kind === 'any') {
      if (later.kind === 'any' && later.ways.some((way) => way.length === 1 && way[0] === a)) return true;
      return former.ways.length > 0 && former.ways.every((way) => this.allImply(way, b));
    }
    if (later.kind === 'any')
      return former.units > 0 && former.from.every(({ piece }) => this.implies(piece, b));
    // Units are capped at what is asked: with each piece's cap, the carried ones still reach the lesser number.
    return (
      former.units >= later.units &&
      former.from.every(({ piece, units }) =>
        later.from.some((other) => other.piece === piece && other.units >= Math.min(units, later.units)),
      )
    );
  }
}

/** Needs of a problem with pieces and needs as one kind of number: piece p is p, need n is pieceCount + n. */
export function needsAsAtoms({ pieces, needs }: Problem): DraftNeed[] {
  return needs.map((need): DraftNeed => {
    if (need.kind === 'enough') {
      // A piece listed twice gives the sum.
      const given = new Map<number, number>();
      for (const { piece, units } of need.from) given.set(piece, (given.get(piece) ?? 0) + units);
      return {
        kind: 'enough',
        units: need.units,
        from: [...given].map(([piece, units]) => ({ piece, units })),
      };
    }
    return {
      kind: 'any',
      ways: need.ways.map((way) => [...way.pieces, ...way.needs.map((n) => pieces.length + n)]),
    };
  });
}

/**
 * Row domination. Within a list of atoms that must all hold (an option, `must`), an atom implied by another says nothing
 * new and goes. Taken one at a time, so that two equivalent atoms do not remove each other.
 */
export function dropImplied(implications: Implications, atoms: readonly Atom[]): Atom[] {
  const kept = [...atoms];
  if (kept.length < 2) return kept;
  for (let i = kept.length - 1; i >= 0; i--) {
    const b = kept[i] ?? 0;
    const others = kept.filter((_, at) => at !== i);
    if (implications.allImply(others, b)) kept.splice(i, 1);
  }
  return kept;
}
