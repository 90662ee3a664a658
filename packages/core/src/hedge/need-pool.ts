import type { Need, NeedIndex, Way } from '../choosing/problem.ts';
import type { Grade } from '../repairing/scene.ts';
import { GRADES } from './grade.ts';

/** A way with the grade its parts allow. */
export interface GradedWay extends Way {
  readonly grade: Grade;
}

/** Needs by grade, cumulative: `with-care` is met by proper ways too. Null where nothing on the table does it. */
export type GradedNeed = Readonly<Record<Grade, NeedIndex | null>>;

export const IMPOSSIBLE: GradedNeed = { proper: null, 'with-care': null, 'last-resort': null };

/** Collects needs, each distinct one once, so that what many jobs share is modelled once. */
export class NeedPool {
  readonly needs: Need[] = [];
  /** What each need is, in words, by the first that asked for it. */
  readonly words: string[] = [];
  private readonly known = new Map<string, NeedIndex>();

  /** Met by any one of the ways; null when there are none. A need that is only one smaller need is that need. */
  any(ways: readonly Way[], words: string): NeedIndex | null {
    const distinct = new Map<string, Way>();
    for (const way of ways) {
      const pieces = [...new Set(way.pieces)].sort((a, b) => a - b);
      const needs = [...new Set(way.needs)].sort((a, b) => a - b);
      distinct.set(`${pieces.join(',')};${needs.join(',')}`, { pieces, needs });
    }
    const [first] = distinct.values();
    if (first === undefined) return null;
    if (distinct.size === 1 && first.pieces.length === 0 && first.needs.length === 1)
      return first.needs[0] ?? null;
    return this.add(
      [...distinct.keys()].sort().join('|'),
      { kind: 'any', ways: [...distinct.values()] },
      words,
    );
  }

  /** Met when the units add up. */
  enough(
    units: number,
    from: readonly { readonly piece: number; readonly units: number }[],
    words: string,
  ): NeedIndex | null {
    const useful = from.filter((f) => f.units > 0);
    if (useful.reduce((sum, f) => sum + f.units, 0) < units) return null;
    const key = `>=${units}:${useful.map((f) => `${f.piece}x${f.units}`).join(',')}`;
    return this.add(key, { kind: 'enough', units, from: useful }, words);
  }

  /** One need a grade, each adding the ways of its own grade to the better need before it. */
  graded(ways: readonly GradedWay[], words: string): GradedNeed {
    const out: Record<Grade, NeedIndex | null> = { proper: null, 'with-care': null, 'last-resort': null };
    let better: NeedIndex | null = null;
    for (const grade of GRADES) {
      const here: Way[] = ways.filter((w) => w.grade === grade);
      if (here.length > 0) {
        if (better !== null) here.push({ pieces: [], needs: [better] });
        better = this.any(here, words);
      }
      out[grade] = better;
    }
    return out;
  }

  private add(key: string, need: Need, words: string): NeedIndex {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const index = this.needs.length;
    this.needs.push(need);
    this.words.push(words);
    this.known.set(key, index);
    return index;
  }
}
