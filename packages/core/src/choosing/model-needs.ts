import type { LinearBuilder } from './linear-builder.ts';
import type { Need, Problem, Way } from './problem.ts';
import type { Implications } from './reduce/implied.ts';

/**
 * Columns that say how far each need is met.
 *
 * Plain: met <= sum of ways; way <= each of its pieces and smaller needs.
 *
 * Tight: a way variable says that this way is the one *used*. Some optimum uses one complete way per need, so for each
 * piece the ways of one need that hold it add up to at most the piece, and likewise for smaller needs. That is one row
 * per (need, piece) where the plain form has one per (way, piece), and it cuts off half a socket completing two half ways.
 * A way of one atom is that atom; a need of one way is that way.
 *
 * Variables of 'any' needs and ways are continuous: at whole pieces their greatest values are whole. Needs counted in
 * units are integer.
 */
export function addNeeds(
  problem: Problem,
  builder: LinearBuilder,
  pieceColumn: Int32Array,
  form: 'plain' | 'tight',
  names: string[],
  implications: Implications,
): NeedColumns {
  const needColumn = new Int32Array(problem.needs.length).fill(-1);
  const wayColumn: number[][] = problem.needs.map(() => []);
  const atomsOf = (way: Way): number[] => [
    ...new Set([
      ...way.pieces.map((p) => pieceColumn[p] ?? 0),
      ...way.needs.map((smaller) => needColumn[smaller] ?? 0),
    ]),
  ];
  const fresh = (name: string, upper: number, integer: boolean): number => {
    names.push(name);
    return builder.column(0, upper, integer);
  };
  problem.needs.forEach((need, n) => {
    if (need.kind === 'enough') needColumn[n] = addEnough(need, n, builder, pieceColumn, form, fresh);
    else if (form === 'plain') needColumn[n] = addPlain(need.ways.map(atomsOf), n, builder, fresh);
    else {
      const { length } = problem.pieces;
      const own = wayColumn[n] ?? [];
      needColumn[n] = addTight(need.ways, n, builder, needColumn, atomsOf, fresh, length, implications, own);
    }
  });
  return { needColumn, wayColumn };
}

/** Columns of needs, and (tight form) of the ways that have one of their own: -1, or nothing, for the others. */
export interface NeedColumns {
  readonly needColumn: Int32Array;
  readonly wayColumn: readonly (readonly number[])[];
}

type Fresh = (name: string, upper: number, integer: boolean) => number;

/**
 * Plain: units x met <= sum of units, `met` integer. Tight: units beyond what is asked are cut; and where two units are
 * asked, leaving out any one piece of one unit the rest must still give one: met <= sum of the others (each counted
 * once). With these rows `met` is whole at whole pieces by itself: with one single unit carried, the row that leaves
 * that piece out says 0. The sum of all is a column of its own, or every row would hold nearly every piece.
 */
function addEnough(
  need: Extract<Need, { kind: 'enough' }>,
  n: number,
  builder: LinearBuilder,
  pieceColumn: Int32Array,
  form: 'plain' | 'tight',
  fresh: Fresh,
): number {
  const given = new Map<number, number>();
  for (const { piece, units } of need.from) {
    const column = pieceColumn[piece] ?? 0;
    const sum = (given.get(column) ?? 0) + units;
    given.set(column, form === 'plain' ? sum : Math.min(need.units, sum));
  }
  const pair = form === 'tight' && need.units === 2;
  const met = fresh(`u_${n}`, 1, !pair);
  builder.row(-Infinity, 0, [
    [met, need.units],
    ...[...given].map(([column, units]) => [column, -units] as const),
  ]);
  if (!pair) return met;
  const carried = fresh(`t_${n}`, given.size, false);
  builder.row(0, 0, [[carried, 1], ...[...given.keys()].map((column) => [column, -1] as const)]);
  for (const [without, units] of given) {
    if (units !== 1) continue;
    builder.row(-Infinity, 0, [
      [met, 1],
      [carried, -1],
      [without, 1],
    ]);
  }
  return met;
}

function addPlain(ways: readonly number[][], n: number, builder: LinearBuilder, fresh: Fresh): number {
  const met = fresh(`u_${n}`, 1, false);
  const terms: [number, number][] = [[met, 1]];
  ways.forEach((atoms, w) => {
    const way = fresh(`w_${n}_${w}`, 1, false);
    terms.push([way, -1]);
    for (const atom of atoms) {
      builder.row(-Infinity, 0, [
        [way, 1],
        [atom, -1],
      ]);
    }
  });
  builder.row(-Infinity, 0, terms);
  return met;
}

function addTight(
  ways: readonly Way[],
  n: number,
  builder: LinearBuilder,
  needColumn: Int32Array,
  atomsOf: (way: Way) => number[],
  fresh: Fresh,
  pieceCount: number,
  implications: Implications,
  wayColumn: number[],
): number {
  const columns = ways.map(atomsOf);
  const [only] = columns;
  if (columns.length === 1 && only?.length === 1) return only[0] ?? 0;
  const met = fresh(`u_${n}`, columns.length === 0 ? 0 : 1, false);
  if (columns.some((atoms) => atoms.length === 0)) return met;
  if (columns.length === 1) {
    for (const atom of only ?? []) {
      builder.row(-Infinity, 0, [
        [met, 1],
        [atom, -1],
      ]);
    }
    return met;
  }
  const terms: [number, number][] = [[met, 1]];
  const using = new Map<number, number[]>();
  const named = [...new Set(ways.flatMap((way) => way.needs))];
  columns.forEach((atoms, w) => {
    const [one] = atoms;
    if (atoms.length === 1 && one !== undefined) {
      terms.push([one, -1]);
      wayColumn[w] = -1;
      return;
    }
    const way = fresh(`w_${n}_${w}`, 1, false);
    wayColumn[w] = way;
    terms.push([way, -1]);
    // What a smaller need of this way implies holds too when the way is used.
    const { pieces, needs } = ways[w] ?? { pieces: [], needs: [] };
    const all = [...pieces, ...needs.map((m) => pieceCount + m)];
    const implied = named.filter((m) => implications.allImply(all, pieceCount + m));
    for (const atom of new Set([...atoms, ...implied.map((m) => needColumn[m] ?? 0)])) {
      using.set(atom, [...(using.get(atom) ?? []), way]);
    }
  });
  builder.row(-Infinity, 0, terms);
  for (const [atom, itsWays] of using) {
    builder.row(-Infinity, 0, [...itsWays.map((way) => [way, 1] as const), [atom, -1]]);
  }
  return met;
}
