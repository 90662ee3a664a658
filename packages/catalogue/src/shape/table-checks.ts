import type { Cell, Check, Column, Columns, Table } from './define-table.ts';
import { measures, readNumber, toSi } from './table-units.ts';

/** The small helpers that tables build their own checks from. Gaps are skipped: they are counted elsewhere. */

type Has<K extends string> = Readonly<Record<K, Cell>>;

/** Names the columns a row rule reads: `everyRow<Numbers<'min' | 'max'>>(...)`. */
export type Numbers<K extends string> = Readonly<Record<K, number>>;

function value(cell: Cell): number | null {
  return cell === null ? null : readNumber(cell);
}

function say(row: Readonly<Record<string, Cell | undefined>>): string {
  return String(Object.values(row)[0]);
}

function columnOf(columns: Columns, key: string): Column {
  const column = columns[key];
  if (column === undefined) throw new Error(`no column ${key}`);
  return column;
}

/** A rule of one row in its own words: `breach` returns what is wrong, or null. */
export function everyRow<R>(name: string, breach: (row: R) => string | null): Check<R> {
  return {
    name,
    run: (rows) =>
      rows.flatMap((row) => {
        const wrong = breach(row);
        return wrong === null ? [] : [wrong];
      }),
  };
}

/** Each value is above the one before it (`or-equal`: never below), separately inside each value of `within`. */
export function rising<K extends string, W extends string = never>(
  key: K,
  options: { readonly orEqual?: true; readonly falling?: true; readonly within?: W } = {},
): Check<Has<K | W>> {
  const direction = options.falling === true ? 'falls' : 'rises';
  const group = options.within === undefined ? '' : ` within each ${options.within}`;
  return {
    name: `${key} ${direction}${group}`,
    run(rows) {
      const last = new Map<Cell, number>();
      return rows.flatMap((row) => {
        const now = value(row[key]);
        if (now === null) return [];
        const of = options.within === undefined ? '' : row[options.within];
        const before = last.get(of);
        last.set(of, now);
        if (before === undefined) return [];
        const step = options.falling === true ? before - now : now - before;
        const kept = options.orEqual === true ? step >= 0 : step > 0;
        return kept ? [] : [`${say(row)}: ${key} ${now} follows ${before}`];
      });
    },
  };
}

/** From left to right the columns never fall: the more heat an insulation bears, the more current it carries. */
export function risingAcross<K extends string>(...keys: readonly K[]): Check<Has<K>> {
  return everyRow(`${keys[0]} to ${keys[keys.length - 1]} rise across`, (row) => {
    const values = keys.flatMap((key) => value(row[key]) ?? []);
    const drop = values.findIndex((v, i) => i > 0 && v < (values[i - 1] ?? v));
    return drop === -1 ? null : `${say(row)}: ${values[drop]} follows ${values[drop - 1]}`;
  });
}

/** min <= nominal <= max in one unit; the outer two may be absent. */
export function minNominalMax<K extends string>(keys: {
  readonly min?: K;
  readonly nominal: K;
  readonly max?: K;
}): Check<Has<K>> {
  return {
    name: 'min <= nominal <= max',
    run(rows, columns) {
      return rows.flatMap((row) => {
        const in_si = (key: K | undefined) => {
          const v = key === undefined ? null : value(row[key]);
          return v === null || key === undefined ? null : toSi(v, columnOf(columns, key).unit);
        };
        const nominal = in_si(keys.nominal);
        if (nominal === null) return [];
        const min = in_si(keys.min) ?? nominal;
        const max = in_si(keys.max) ?? nominal;
        return min <= nominal && nominal <= max
          ? []
          : [`${say(row)}: ${min} <= ${nominal} <= ${max} does not hold`];
      });
    },
  };
}

/** Every printed value lies in [from, to]: what catches a column typed in another unit. */
export function between<K extends string>(key: K, from: number, to: number): Check<Has<K>> {
  return everyRow(`${key} between ${from} and ${to}`, (row) => {
    const v = value(row[key]);
    return v === null || (v >= from && v <= to) ? null : `${say(row)}: ${key} is ${v}`;
  });
}

/** Neighbours differ by at most this factor: what catches a column that changes unit part-way down. */
export function sameScale<K extends string>(key: K, factor: number): Check<Has<K>> {
  return {
    name: `${key} keeps its scale`,
    run(rows) {
      return rows.flatMap((row, i) => {
        const above = rows[i - 1];
        const [a, b] = [above === undefined ? null : value(above[key]), value(row[key])];
        if (a === null || b === null || a === 0 || b === 0) return [];
        return Math.max(a / b, b / a) <= factor ? [] : [`${say(row)}: ${key} jumps from ${a} to ${b}`];
      });
    },
  };
}

/** Over/under lies in [from, to]; both in SI, so an inch column may stand over a millimetre one. */
export function ratio<K extends string>(over: K, under: K, from: number, to: number): Check<Has<K>> {
  return {
    name: `${over} / ${under} between ${from} and ${to}`,
    run(rows, columns) {
      const [top, bottom] = [columnOf(columns, over), columnOf(columns, under)];
      return rows.flatMap((row) => {
        const [a, b] = [value(row[over]), value(row[under])];
        if (a === null || b === null) return [];
        const found = toSi(a, top.unit) / toSi(b, bottom.unit);
        return found >= from && found <= to ? [] : [`${say(row)}: ${over} / ${under} is ${found.toFixed(4)}`];
      });
    },
  };
}

/** Two columns print the same quantity in two units, to within `relative`. */
export function sameQuantity<K extends string>(a: K, b: K, relative: number): Check<Has<K>> {
  const inner = ratio(a, b, 1 - relative, 1 + relative);
  return {
    name: `${a} and ${b} are one quantity`,
    run(rows, columns) {
      const [left, right] = [columnOf(columns, a).unit, columnOf(columns, b).unit];
      if (measures(left) !== measures(right)) return [`${a} and ${b} do not measure the same thing`];
      return inner.run(rows, columns);
    },
  };
}

export function oneOf<K extends string>(key: K, allowed: readonly Cell[]): Check<Has<K>> {
  return everyRow(`${key} is a listed value`, (row) =>
    row[key] === null || allowed.includes(row[key]) ? null : `${say(row)}: ${key} ${row[key]} is not listed`,
  );
}

/** No two rows share these cells. */
export function unique<K extends string>(...keys: readonly K[]): Check<Has<K>> {
  return {
    name: `${keys.join(' + ')} unique`,
    run(rows) {
      const seen = new Set<string>();
      return rows.flatMap((row) => {
        const id = keys.map((key) => String(row[key])).join(' | ');
        if (seen.has(id)) return [`${id} appears twice`];
        seen.add(id);
        return [];
      });
    },
  };
}

/** The column is what the formula gives, to `within` of the printed unit. */
export function recomputed<R extends object>(
  key: keyof R & string,
  formula: (row: R) => number | null,
  within: number,
): Check<R> {
  return everyRow(`${key} recomputed`, (row) => {
    const cell: unknown = row[key];
    const stated = typeof cell === 'number' || typeof cell === 'string' ? readNumber(cell) : null;
    const found = formula(row);
    if (stated === null || found === null) return null;
    return Math.abs(stated - found) <= within
      ? null
      : `${String(Object.values(row)[0])}: ${key} ${stated}, the formula gives ${found.toPrecision(6)}`;
  });
}

/**
 * Where another table has the same key, its column says the same; `except` lists keys known to differ. Two tables that
 * share no key at all are a fault too: such a check would hold for ever.
 */
export function agreesWith<K extends string, V extends string>(
  other: Table,
  on: K,
  column: V,
  except: readonly Cell[] = [],
): Check<Has<K | V>> {
  return {
    name: `${column} agrees with ${other.id}`,
    run(rows) {
      const theirs = new Map(other.rows.map((row) => [row[on], row[column]]));
      const shared = rows.filter((row) => theirs.has(row[on]));
      if (shared.length === 0) return [`no ${on} is in ${other.id}`];
      return shared.flatMap((row) => {
        const there = theirs.get(row[on]);
        const same = except.includes(row[on]) || row[column] === null || there === row[column];
        return same ? [] : [`${row[on]}: ${column} ${row[column]}, ${other.id} has ${there}`];
      });
    },
  };
}
