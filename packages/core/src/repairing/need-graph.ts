import type { Need, NeedIndex, PieceIndex, Way } from '../choosing/problem.ts';
import { sortedDistinct } from '../choosing/sorted.ts';

/** A need at each grade or better; null where nothing on the table meets it. */
export type Met = NeedIndex | null;

/**
 * The needs of a problem while it is being built. A need that says the same as an earlier one is that one, so whatever many
 * joints and jobs share is written once. Needs refer to earlier needs only, as the problem asks.
 */
export class NeedGraph {
  private readonly list: Need[] = [];
  private readonly known = new Map<string, NeedIndex>();
  private readonly supports = new Map<NeedIndex, ReadonlySet<PieceIndex>>();
  private readonly lessened = new Map<string, Met>();
  private readonly named = new Map<NeedIndex, string[]>();

  get needs(): readonly Need[] {
    return this.list;
  }

  at(index: NeedIndex): Need {
    const need = this.list[index];
    if (need === undefined) throw new Error(`need ${index} does not exist`);
    return need;
  }

  /** Met by any one of the ways; null when there is none. */
  any(ways: readonly Way[]): Met {
    const distinct = new Map<string, Way>();
    for (const way of ways) {
      const tidy = this.tidied(way);
      distinct.set(keyOf(tidy), tidy);
    }
    const always = distinct.get(NOTHING);
    if (always !== undefined) return this.anyOf([NOTHING], [always]);
    dropLonger(distinct);
    const kept = [...distinct.values()];
    const [first] = kept;
    if (first === undefined) return null;
    const [only] = first.needs;
    if (kept.length === 1 && first.pieces.length === 0 && first.needs.length === 1 && only !== undefined)
      return only;
    return this.anyOf([...distinct.keys()], kept);
  }

  anyPiece(pieces: readonly PieceIndex[]): Met {
    const distinct = [...new Set(pieces)];
    if (distinct.length === 0) return null;
    // Single pieces are tidy as they are.
    const keys = distinct.map((piece) => `${piece};`);
    const known = this.known.get(keyOfAny(keys));
    return (
      known ??
      this.anyOf(
        keys,
        distinct.map((piece) => ({ pieces: [piece], needs: [] })),
      )
    );
  }

  /** Met when all are; null when one cannot be. No needs: always met. */
  all(needs: readonly Met[]): Met {
    const met = needs.filter((need) => need !== null);
    return met.length < needs.length ? null : this.any([{ pieces: [], needs: met }]);
  }

  /** Met when the units of the carried pieces add up; null when all together do not. Whole numbers. */
  enough(units: number, from: readonly { readonly piece: PieceIndex; readonly units: number }[]): Met {
    if (units <= 0) return this.all([]);
    const useful = from
      .filter((f) => f.units > 0)
      .map(({ piece, units: each }) => ({ piece, units: Math.min(each, units) }))
      .sort((a, b) => a.piece - b.piece);
    if (useful.reduce((sum, f) => sum + f.units, 0) < units) return null;
    if (useful.every((f) => f.units === units)) return this.anyPiece(useful.map((f) => f.piece));
    const shared = useful.reduce((divisor, f) => commonDivisor(divisor, f.units), units);
    const parts = useful.map(({ piece, units: each }) => ({ piece, units: each / shared }));
    const key = `enough ${units / shared} ${parts.map((f) => `${f.piece}x${f.units}`).join(',')}`;
    return this.add(key, { kind: 'enough', units: units / shared, from: parts });
  }

  /** A need that nothing on the table meets, for those that must be met all the same: the plan then names it. */
  never(words: string): NeedIndex {
    const index = this.add(`never ${words}`, { kind: 'any', ways: [] });
    this.name(index, words);
    return index;
  }

  /** Gives a need its words; a named need stays whole instead of being written into what asks for it. */
  name(need: NeedIndex, words: string): void {
    const said = this.named.get(need) ?? [];
    if (!said.includes(words)) this.named.set(need, [...said, words]);
  }

  wordsOf(need: NeedIndex): readonly string[] {
    return this.named.get(need) ?? [];
  }

  /** Every piece that has a part in some way of meeting the need. */
  supportOf(index: NeedIndex): ReadonlySet<PieceIndex> {
    const known = this.supports.get(index);
    if (known !== undefined) return known;
    const support = new Set<PieceIndex>();
    const need = this.at(index);
    if (need.kind === 'enough') for (const { piece } of need.from) support.add(piece);
    else
      for (const way of need.ways) {
        for (const piece of way.pieces) support.add(piece);
        for (const smaller of way.needs) for (const piece of this.supportOf(smaller)) support.add(piece);
      }
    this.supports.set(index, support);
    return support;
  }

  /** The same need for those who must do without a piece, because it is in use elsewhere at the same moment. */
  without(index: NeedIndex, piece: PieceIndex): Met {
    if (!this.supportOf(index).has(piece)) return index;
    const key = `${index}-${piece}`;
    const known = this.lessened.get(key);
    if (known !== undefined) return known;
    const need = this.at(index);
    const less =
      need.kind === 'enough'
        ? this.enough(
            need.units,
            need.from.filter((f) => f.piece !== piece),
          )
        : this.any(
            need.ways.flatMap((way): Way[] => {
              if (way.pieces.includes(piece)) return [];
              const needs = way.needs.map((smaller) => this.without(smaller, piece));
              const left = needs.filter((n) => n !== null);
              return left.length < needs.length ? [] : [{ pieces: way.pieces, needs: left }];
            }),
          );
    this.lessened.set(key, less);
    return less;
  }

  /** Which needs a set of pieces meets, by need. */
  metBy(has: (piece: PieceIndex) => boolean): readonly boolean[] {
    const met: boolean[] = [];
    for (const need of this.list) {
      met.push(
        need.kind === 'enough'
          ? need.from.reduce((sum, f) => sum + (has(f.piece) ? f.units : 0), 0) >= need.units
          : need.ways.some((way) => way.pieces.every(has) && way.needs.every((n) => met[n] === true)),
      );
    }
    return met;
  }

  /** A way with its doubles gone and needs of a single way written out. */
  private tidied(way: Way): Way {
    const pieces = [...way.pieces];
    const needs: NeedIndex[] = [];
    for (const index of way.needs) {
      const need = this.at(index);
      const only = need.kind === 'any' && need.ways.length === 1 ? need.ways[0] : undefined;
      if (only === undefined || this.named.has(index)) needs.push(index);
      else {
        pieces.push(...only.pieces);
        needs.push(...only.needs);
      }
    }
    return { pieces: sortedDistinct(pieces), needs: sortedDistinct(needs) };
  }

  private anyOf(keys: readonly string[], ways: readonly Way[]): NeedIndex {
    return this.add(keyOfAny(keys), { kind: 'any', ways });
  }

  private add(key: string, need: Need): NeedIndex {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    this.list.push(need);
    this.known.set(key, this.list.length - 1);
    return this.list.length - 1;
  }
}

/** Key of a way with nothing in it. */
const NOTHING = ';';

/** Drops ways that hold a piece or a need which alone is a way already. */
function dropLonger(ways: Map<string, Way>): void {
  const pieces = new Set<PieceIndex>();
  const needs = new Set<NeedIndex>();
  for (const way of ways.values()) {
    if (way.pieces.length + way.needs.length !== 1) continue;
    for (const piece of way.pieces) pieces.add(piece);
    for (const need of way.needs) needs.add(need);
  }
  if (pieces.size + needs.size === 0) return;
  for (const [key, way] of ways) {
    if (way.pieces.length + way.needs.length === 1) continue;
    if (way.pieces.some((piece) => pieces.has(piece)) || way.needs.some((need) => needs.has(need)))
      ways.delete(key);
  }
}

function keyOf(way: Way): string {
  return `${way.pieces.join(',')};${way.needs.join(',')}`;
}

/** The same for the same ways in any order. */
function keyOfAny(keys: readonly string[]): string {
  return `any ${[...keys].sort().join('|')}`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
