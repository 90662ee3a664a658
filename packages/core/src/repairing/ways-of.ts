import type { NeedIndex, PieceIndex } from '../choosing/problem.ts';
import type { OpeningList } from '../fastening/opening.ts';
import { RECALLED_OPENINGS } from '../fastening/opening.ts';
import { GRADES } from './grade.ts';
import type { NeedGraph } from './need-graph.ts';
import { NeedWriter } from './need-writer.ts';
import type { Grade, Scene, SceneNeed } from './scene.ts';

/** One way to meet a need, in the scene's own names. */
export interface ReadableWay {
  /** Ids of ScenePiece, in the order of the scene. */
  readonly pieces: readonly string[];
  readonly grade: Grade;
  readonly grams: number;
  /** Whole cents to buy what is not owned; null where a piece is not sold singly. */
  readonly cents: number | null;
}

interface PieceSet {
  readonly pieces: readonly PieceIndex[];
  readonly cost: number;
}

/** Sets kept at every step of the listing beyond those asked for: the cheapest of a part need not be part of the cheapest. */
const SLACK = 4;
const LEAST_KEPT = 24;
/** Money first, then grams: no way is heavy enough to be worth a cent. */
const CENT = 1e7;
/** A piece that is neither owned nor sold singly comes after everything with a price. */
const NOT_SOLD = 1e12;

/**
 * Minimal ways to meet one need with the pieces on the scene's table, cheapest first: by money, then by grams; owned pieces
 * cost nothing. Each is listed at the best grade it gives. `limit` is how many at most. The listing keeps the cheapest few
 * dozen sets at every step, which for needs of tools is all there are or more than anybody reads.
 */
export function waysOf(
  scene: Scene,
  need: SceneNeed,
  limit: number,
  openings: OpeningList = RECALLED_OPENINGS,
): readonly ReadableWay[] {
  const [found = []] = listed(scene, [need], limit, openings);
  return [...found]
    .sort((a, b) => cheaperFirst(a.set, b.set))
    .slice(0, limit)
    .map(({ set, grade }) => readable(scene, set.pieces, grade));
}

/**
 * The same for several needs at once, best grade first: what to take in the hand rather than what to buy. Within a grade the
 * fewest pieces, then the lightest. `limit` is how many at most for each need.
 */
export function waysByGrade(
  scene: Scene,
  needs: readonly SceneNeed[],
  limit: number,
  openings: OpeningList = RECALLED_OPENINGS,
): readonly (readonly ReadableWay[])[] {
  return listed(scene, needs, limit, openings).map((found) =>
    [...found]
      .sort(
        (a, b) =>
          GRADES.indexOf(a.grade) - GRADES.indexOf(b.grade) ||
          a.set.pieces.length - b.set.pieces.length ||
          cheaperFirst(a.set, b.set),
      )
      .slice(0, limit)
      .map(({ set, grade }) => readable(scene, set.pieces, grade)),
  );
}

interface GradedSet {
  readonly set: PieceSet;
  readonly grade: Grade;
}

/** Minimal sets for each need, at the best grade each gives. */
function listed(
  scene: Scene,
  needs: readonly SceneNeed[],
  limit: number,
  openings: OpeningList,
): readonly (readonly GradedSet[])[] {
  const writer = new NeedWriter(scene, openings);
  const cost = scene.pieces.map(
    (piece) => piece.grams + (piece.owned ? 0 : piece.cents === null ? NOT_SOLD : piece.cents * CENT),
  );
  const lister = new Lister(writer.graph, cost, Math.max(LEAST_KEPT, limit * SLACK));
  return needs.map((need) => {
    const found: GradedSet[] = [];
    for (const grade of GRADES) {
      const index = writer.need(need, grade);
      if (index === null) continue;
      for (const set of lister.of(index))
        if (!found.some((known) => holdsAll(set.pieces, known.set.pieces))) found.push({ set, grade });
    }
    return found;
  });
}

function readable(scene: Scene, indices: readonly PieceIndex[], grade: Grade): ReadableWay {
  const pieces = indices.flatMap((index) => scene.pieces[index] ?? []);
  const priced = pieces.every((piece) => piece.owned || piece.cents !== null);
  return {
    pieces: pieces.map((piece) => piece.id),
    grade,
    grams: pieces.reduce((sum, piece) => sum + piece.grams, 0),
    cents: priced ? pieces.reduce((sum, piece) => sum + (piece.owned ? 0 : (piece.cents ?? 0)), 0) : null,
  };
}

/** Cheapest minimal sets of pieces for needs, built up from the smaller needs. */
class Lister {
  private readonly graph: NeedGraph;
  private readonly cost: readonly number[];
  private readonly kept: number;
  private readonly known = new Map<NeedIndex, readonly PieceSet[]>();

  constructor(graph: NeedGraph, cost: readonly number[], kept: number) {
    this.graph = graph;
    this.cost = cost;
    this.kept = kept;
  }

  of(index: NeedIndex): readonly PieceSet[] {
    const known = this.known.get(index);
    if (known !== undefined) return known;
    const need = this.graph.at(index);
    const sets =
      need.kind === 'enough'
        ? this.adding(need.units, need.from)
        : need.ways.flatMap((way) =>
            way.needs.reduce<readonly PieceSet[]>(
              (joined, smaller) =>
                this.best(
                  joined.flatMap((set) => this.of(smaller).map((more) => this.join(set, more.pieces))),
                ),
              [this.join({ pieces: [], cost: 0 }, way.pieces)],
            ),
          );
    const best = this.best(sets);
    this.known.set(index, best);
    return best;
  }

  /** Sets whose units add up, none of whose pieces could be left out. */
  private adding(
    units: number,
    from: readonly { readonly piece: PieceIndex; readonly units: number }[],
  ): readonly PieceSet[] {
    const order = [...from].sort((a, b) => b.units - a.units);
    let open: { readonly set: PieceSet; readonly missing: number }[] = [
      { set: { pieces: [], cost: 0 }, missing: units },
    ];
    const done: PieceSet[] = [];
    for (const { piece, units: each } of order) {
      const next = open.flatMap(({ set, missing }) => {
        const taken = { set: this.join(set, [piece]), missing: missing - each };
        if (taken.missing > 0) return [{ set, missing }, taken];
        done.push(taken.set);
        return [{ set, missing }];
      });
      open = next
        .sort((a, b) => a.set.cost - b.set.cost || b.missing - a.missing)
        .slice(0, this.kept * SLACK);
    }
    return done;
  }

  private join(set: PieceSet, more: readonly PieceIndex[]): PieceSet {
    const pieces = [...new Set([...set.pieces, ...more])].sort((a, b) => a - b);
    return { pieces, cost: pieces.reduce((sum, piece) => sum + (this.cost[piece] ?? 0), 0) };
  }

  /** The cheapest, without those that hold another. */
  private best(sets: readonly PieceSet[]): readonly PieceSet[] {
    const out: PieceSet[] = [];
    const byCost = [...sets].sort(cheaperFirst);
    for (const set of byCost) {
      if (out.length >= this.kept) break;
      if (!out.some((known) => holdsAll(set.pieces, known.pieces))) out.push(set);
    }
    return out;
  }
}

/** Then the fewer, then those that come first on the table. */
function cheaperFirst(a: PieceSet, b: PieceSet): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  if (a.pieces.length !== b.pieces.length) return a.pieces.length - b.pieces.length;
  const differs = a.pieces.findIndex((piece, n) => piece !== b.pieces[n]);
  return (a.pieces[differs] ?? 0) - (b.pieces[differs] ?? 0);
}

function holdsAll(pieces: readonly PieceIndex[], wanted: readonly PieceIndex[]): boolean {
  return wanted.every((piece) => pieces.includes(piece));
}
