import type { Garage } from '@waymend/garage/record/schema';
import type { Count } from '@waymend/garage/road/count-pieces';
import { countsOf, stockInPiece, unaccounted } from '@waymend/garage/road/count-pieces';
import type { Things } from '../use-things.ts';
import { nameIn, stockOfThings } from '../use-things.ts';

/** One belonging of a muster as its row shows it. */
export interface MusterRow extends Count {
  readonly id: string;
  readonly name: string;
  /** Pieces that nobody has spoken of. */
  readonly missing: number;
  readonly perPiece: number | null;
  /** Parts that are asked for one by one. */
  readonly parts: readonly string[];
}

export interface MusterPocket {
  /** Null: the room of the bag, or no bag. */
  readonly pocket: string | null;
  readonly name: string | null;
  readonly rows: readonly MusterRow[];
}

export interface MusterBag {
  /** Null: what is in no bag. */
  readonly bag: string | null;
  readonly name: string | null;
  readonly berth: string | null;
  readonly pockets: readonly MusterPocket[];
  readonly out: number;
  readonly missing: number;
}

/** The counts of a muster by bag and pocket: first-grab bags first, then by name; pockets in their order; loose things last. */
export function musterBags(garage: Garage, muster: string, things: Things): readonly MusterBag[] {
  const byBag = new Map<string | null, MusterRow[]>();
  for (const row of musterRows(garage, muster, things)) {
    const bag = bagOf(garage, row.belonging);
    byBag.set(bag, [...(byBag.get(bag) ?? []), row]);
  }
  return [...byBag]
    .map(([bag, rows]): MusterBag => {
      const record = bag === null ? undefined : garage.bags[bag];
      return {
        bag,
        name: record?.name ?? null,
        berth: record?.berth === undefined ? null : (garage.berths[record.berth]?.name ?? null),
        pockets: pocketsOf(garage, rows),
        out: rows.reduce((sum, row) => sum + row.out, 0),
        missing: rows.reduce((sum, row) => sum + row.missing, 0),
      };
    })
    .sort((a, b) => rank(garage, a) - rank(garage, b) || ((a.name ?? '') < (b.name ?? '') ? -1 : 1));
}

export function musterRows(garage: Garage, muster: string, things: Things): readonly MusterRow[] {
  const stockOf = stockOfThings(garage, things);
  return countsOf(garage, muster)
    .map(([id, count]): MusterRow => {
      const thing = garage.belongings[count.belonging];
      const perPiece = thing === undefined ? null : stockInPiece(thing, stockOf);
      return {
        ...count,
        id,
        name: nameIn(garage, things, count.belonging),
        missing: unaccounted(count, perPiece),
        perPiece,
        parts: thing?.parts ?? [],
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
}

function pocketsOf(garage: Garage, rows: readonly MusterRow[]): readonly MusterPocket[] {
  const byPocket = new Map<string | null, MusterRow[]>();
  for (const row of rows) {
    const pocket = garage.belongings[row.belonging]?.pocket ?? null;
    byPocket.set(pocket, [...(byPocket.get(pocket) ?? []), row]);
  }
  const order = (pocket: string | null) =>
    pocket === null ? Number.MAX_SAFE_INTEGER : (garage.pockets[pocket]?.order ?? 0);
  return [...byPocket]
    .sort(([a], [b]) => order(a) - order(b))
    .map(([pocket, inIt]) => ({
      pocket,
      name: pocket === null ? null : (garage.pockets[pocket]?.name ?? null),
      rows: inIt,
    }));
}

/** The bag a belonging rides in: its own, else that of the box it is inside. */
function bagOf(garage: Garage, belonging: string): string | null {
  const thing = garage.belongings[belonging];
  const box = thing?.inside === undefined ? undefined : garage.belongings[thing.inside];
  const bag = thing?.bag ?? box?.bag;
  return bag !== undefined && garage.bags[bag] !== undefined ? bag : null;
}

function rank(garage: Garage, { bag }: MusterBag): number {
  if (bag === null) return 2;
  return garage.bags[bag]?.firstGrab === true ? 0 : 1;
}
