import type { Row, Standing } from './rows.ts';
import type { Standings } from './standing.ts';

export const SHOWN = ['all', 'along', 'home', 'estimated', 'buy', 'unready'] as const;
export type Shown = (typeof SHOWN)[number];

export const ORDERS = ['name', 'mass', 'berth'] as const;
export type Order = (typeof ORDERS)[number];

/** A row of the list with what the plan says of it; `depth` 1 stands under its set. */
export interface Line {
  readonly row: Row;
  readonly standing: Standing;
  readonly depth: 0 | 1;
}

export interface Choice {
  readonly shown: Shown;
  /** As typed. */
  readonly search: string;
  /** Catalogue ids that the search means in other words; null until they are known. */
  readonly means: ReadonlySet<string> | null;
  /** Sets that are open. */
  readonly open: ReadonlySet<string>;
}

/** Rows in an order: done once, so that a letter of a search only sifts. */
export function orderRows(rows: readonly Row[], order: Order): readonly Row[] {
  return [...rows].sort(BY[order]);
}

/** The lines to show of rows that stand in order: what is asked for, open sets with their pieces under them. */
export function chooseRows(rows: readonly Row[], standings: Standings, choice: Choice): readonly Line[] {
  const { shown, open } = choice;
  const words = choice.search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const line = (row: Row, depth: 0 | 1): Line => ({
    row,
    standing: standings(row.id, row.belonging),
    depth,
  });
  // Searched or filtered, pieces stand by themselves and say which set they are in; else they stand under their set.
  if (shown !== 'all' || words.length > 0) {
    // One pass, for a letter of a search goes over all of 20,000.
    const lines: Line[] = [];
    for (const row of rows) {
      if (!found(row, words, choice.means)) continue;
      const one = line(row, 0);
      if (isShown(row, one.standing, shown)) lines.push(one);
    }
    return lines;
  }
  const under = new Map<string, Row[]>();
  const top: Row[] = [];
  const ids = open.size === 0 ? null : open;
  for (const row of rows) {
    const set = row.belonging.inside;
    if (set === undefined || row.inside === null) top.push(row);
    else if (ids?.has(set) === true) {
      const list = under.get(set);
      if (list === undefined) under.set(set, [row]);
      else list.push(row);
    }
  }
  return top.flatMap((row) => [line(row, 0), ...(under.get(row.id) ?? []).map((piece) => line(piece, 1))]);
}

function found(row: Row, words: readonly string[], means: ReadonlySet<string> | null): boolean {
  let has = true;
  for (const word of words) {
    if (row.hay.includes(word)) continue;
    has = false;
    break;
  }
  if (has) return true;
  const { is } = row.belonging;
  return is !== undefined && means !== null && means.has(is);
}

function isShown({ belonging, estimated, contents }: Row, standing: Standing, shown: Shown): boolean {
  switch (shown) {
    case 'all':
      return true;
    case 'along':
      return (
        standing.kind === 'along' || standing.kind === 'some' || (standing.kind === 'buy' && standing.chosen)
      );
    case 'home':
      return standing.kind === 'home' || standing.kind === 'some';
    case 'estimated':
      // A set is weighed piece by piece.
      return estimated && contents === null && !belonging.forSale;
    case 'buy':
      return belonging.forSale;
    case 'unready':
      return belonging.state !== 'ready';
  }
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const byName = (a: Row, b: Row): number => byText(a.nameKey, b.nameKey) || byText(a.id, b.id);

const BY: Readonly<Record<Order, (a: Row, b: Row) => number>> = {
  name: byName,
  mass: (a, b) => b.total - a.total || byName(a, b),
  // What has no berth of its own stands last.
  berth: (a, b) => byText(a.berth ?? '\uffff', b.berth ?? '\uffff') || byName(a, b),
};
