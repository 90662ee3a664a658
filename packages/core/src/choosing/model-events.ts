import type { LinearBuilder } from './linear-builder.ts';
import type { Option, Problem } from './problem.ts';
import type { Implications } from './reduce/implied.ts';

/**
 * Events as levels (plain form). With distinct gains g1 < g2 < ..., level l is reached when some option of gain >= g_l is
 * complete; reaching it is worth g_l - g_(l-1). The levels reached add up to the best complete gain.
 */
export function addLevels(
  problem: Problem,
  builder: LinearBuilder,
  needColumn: Int32Array,
  gains: [number, number][],
  names: string[],
): void {
  problem.events.forEach((event, e) => {
    const options = event.options
      .map(({ needs, gain }, o) => ({ needs: [...new Set(needs)], gain, o }))
      .filter(({ gain }) => gain > 0);
    const column = options.map(({ needs, o }) => {
      names.push(`y_${e}_${o}`);
      const y = builder.column(0, 1, false);
      for (const n of needs) {
        builder.row(-Infinity, 0, [
          [y, 1],
          [needColumn[n] ?? 0, -1],
        ]);
      }
      return y;
    });
    let reached = 0;
    for (const level of [...new Set(options.map(({ gain }) => gain))].sort((a, b) => a - b)) {
      names.push(`v_${e}_${level}`);
      const v = builder.column(0, 1, false);
      const enough = column.filter((_, i) => (options[i]?.gain ?? 0) >= level);
      builder.row(-Infinity, 0, [[v, 1], ...enough.map((y) => [y, -1] as const)]);
      gains.push([v, level - reached]);
      reached = level;
    }
  });
}

/**
 * Events as a selection (tight form). An option variable says that this option is the one *used*: they add up to at most 1,
 * each is worth its whole gain, and for each need the options that ask for it, or for something that implies it, add up
 * to at most the need. Any point of this form gives a point of the levels form of the same value (level l = sum of the
 * options used with gain >= g_l), so its relaxation is at least as good; at whole pieces both give the best complete gain.
 * An event of one option on one need is a gain on that need. Returns the column of each option by event; -1 where it has none.
 */
export function addEvents(
  problem: Problem,
  builder: LinearBuilder,
  needColumn: Int32Array,
  gains: [number, number][],
  names: string[],
  implications: Implications,
): number[][] {
  return problem.events.map((event, e) => {
    const columnOf = event.options.map(() => -1);
    const options = event.options.filter(({ gain }) => gain > 0);
    const [only] = options;
    const columnsOf = ({ needs }: Option): Set<number> => new Set(needs.map((n) => needColumn[n] ?? 0));
    if (options.length === 1 && only) {
      const columns = [...columnsOf(only)];
      if (columns.length === 1) {
        gains.push([columns[0] ?? 0, only.gain]);
        return columnOf;
      }
    }
    const used = options.map((option, o) => {
      names.push(`y_${e}_${o}`);
      const y = builder.column(0, 1, false);
      gains.push([y, option.gain]);
      columnOf[event.options.indexOf(option)] = y;
      return y;
    });
    const atoms = options.map(({ needs }) => needs.map((n) => problem.pieces.length + n));
    const asking = new Map<number, number[]>();
    const all = new Set(options.flatMap(({ needs }) => needs));
    for (const n of all) {
      const at = needColumn[n] ?? 0;
      options.forEach((_, o) => {
        const y = used[o] ?? 0;
        const asks = implications.allImply(atoms[o] ?? [], problem.pieces.length + n);
        const list = asking.get(at) ?? [];
        if (asks && !list.includes(y)) asking.set(at, [...list, y]);
      });
    }
    let capped = false;
    for (const [at, ys] of asking) {
      builder.row(-Infinity, 0, [...ys.map((y) => [y, 1] as const), [at, -1]]);
      if (ys.length === used.length) capped = true;
    }
    // A row that holds all options already caps their sum.
    if (!capped && used.length > 1)
      builder.row(
        -Infinity,
        1,
        used.map((y) => [y, 1] as const),
      );
    return columnOf;
  });
}
