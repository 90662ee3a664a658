import { atLeast, GRADES, worstOf } from './grade.ts';
import type { Bench } from './bench.ts';
import type { GradedNeed, GradedWay, NeedPool } from './need-pool.ts';
import { IMPOSSIBLE } from './need-pool.ts';
import type { FunctionNeed, Grade, Together } from '../repairing/scene.ts';

interface Giver {
  readonly piece: number;
  readonly grade: Grade;
  readonly atOnce: number;
  readonly amount: number;
}

/** Functions that keep people from harm: never met by a last resort (M4). */
function guards(need: FunctionNeed): boolean {
  return need.safety === true || need.fn === 'support' || need.fn === 'eyes';
}

/** Everything that is not turning (M2 "Other functions"): belongings whose list says so, and the rows marked together. */
export function functionNeed(
  pool: NeedPool,
  bench: Bench,
  need: FunctionNeed,
  together: readonly Together[],
): GradedNeed {
  const words = wordsOf(need);
  const count = need.count ?? 1;
  if (count > 1 || need.fn === 'fluid') return countedNeed(pool, bench, need, count, words);
  const ways: GradedWay[] = directWays(bench, need);
  for (const row of together) {
    if (!serves(row, need)) continue;
    ways.push(...togetherWays(pool, bench, row));
  }
  const allowed = guards(need) ? ways.filter((w) => w.grade !== 'last-resort') : ways;
  return pool.graded(allowed, words);
}

function directWays(bench: Bench, need: FunctionNeed): GradedWay[] {
  return givers(bench, need)
    .filter((g) => g.amount >= (need.amount ?? 0))
    .map((g) => ({ pieces: [g.piece], needs: [], grade: g.grade }));
}

/** Distinct pieces at the same moment, or litres that run together; each piece counts once, by the best of its lines. */
function countedNeed(
  pool: NeedPool,
  bench: Bench,
  need: FunctionNeed,
  count: number,
  words: string,
): GradedNeed {
  const fluid = need.fn === 'fluid';
  const out: { [G in Grade]: number | null } = { ...IMPOSSIBLE };
  for (const grade of GRADES) {
    if (guards(need) && grade === 'last-resort') {
      out[grade] = out['with-care'];
      continue;
    }
    const most = new Map<number, number>();
    for (const g of givers(bench, need)) {
      if (!atLeast(g.grade, grade) || (!fluid && g.amount < (need.amount ?? 0))) continue;
      most.set(g.piece, Math.max(most.get(g.piece) ?? 0, fluid ? Math.floor(g.amount) : g.atOnce));
    }
    const from = [...most].map(([piece, units]) => ({ piece, units }));
    out[grade] = pool.enough(fluid ? Math.max(1, Math.ceil(need.amount ?? 1)) : count, from, words);
  }
  return out;
}

/** Each function of the row by a direct offer, at a grade no better than the row's own. */
function togetherWays(pool: NeedPool, bench: Bench, row: Together): readonly GradedWay[] {
  const parts = row.needs.map((part) => {
    const count = part.count ?? 1;
    return count > 1 || part.fn === 'fluid'
      ? countedNeed(pool, bench, part, count, wordsOf(part))
      : partNeed(pool, bench, part);
  });
  const out: GradedWay[] = [];
  let last: string | null = null;
  for (const grade of GRADES) {
    const needs = parts.map((part) => part[grade]);
    const key = needs.join(',');
    const whole = worstOf(row.grade, grade);
    if (whole === null || key === last || needs.some((n) => n === null)) continue;
    last = key;
    out.push({ pieces: [], needs: needs.flatMap((n) => (n === null ? [] : [n])), grade: whole });
  }
  return out;
}

function partNeed(pool: NeedPool, bench: Bench, part: FunctionNeed): GradedNeed {
  const ways = directWays(bench, part);
  return pool.graded(guards(part) ? ways.filter((w) => w.grade !== 'last-resort') : ways, wordsOf(part));
}

/** Every line that gives the function; a jack never supports, whatever its entry says (M4). */
function givers(bench: Bench, need: FunctionNeed): readonly Giver[] {
  const jacks = need.fn === 'support' ? new Set(bench.doing('lift').map((h) => h.piece)) : null;
  return bench.doing(need.fn).flatMap(({ piece, offer }): Giver[] => {
    if (need.of !== undefined && offer.of !== need.of) return [];
    if (jacks?.has(piece) === true) return [];
    return [{ piece, grade: offer.grade, atOnce: offer.pieces, amount: offer.amount ?? 0 }];
  });
}

function serves(row: Together, need: FunctionNeed): boolean {
  if (row.wanted.fn !== need.fn) return false;
  if (need.of !== undefined && row.wanted.of !== need.of) return false;
  return need.fn !== 'support' || !row.needs.some((part) => part.fn === 'lift');
}

function wordsOf(need: FunctionNeed): string {
  const of = need.of === undefined ? '' : ` (${need.of})`;
  return `${need.fn}${of}${need.amount === undefined ? '' : `, ${need.amount}`}${(need.count ?? 1) > 1 ? `, ${need.count ?? 1} at once` : ''}`;
}
