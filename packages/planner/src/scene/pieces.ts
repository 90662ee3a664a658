import type { BoxedSet } from '@waymend/catalogue/boxed-sets';
import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import { cents, grams, millilitres } from '@waymend/core/quantity/units';
import type { SceneBundle, ScenePiece, ToolOffer } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Belonging, Garage } from '@waymend/garage/record/schema';
import type { OfferChange } from './to-offer.ts';
import { toToolOffer } from './to-offer.ts';

/** Everything on the table: what is owned, what the owner listed for sale, and what the catalogue could supply. */
export interface Table {
  readonly pieces: readonly ScenePiece[];
  readonly bundles: readonly SceneBundle[];
}

export interface Shop {
  readonly belongings: readonly CatalogueBelonging[];
  readonly sets: readonly BoxedSet[];
  /** Whole cents for one, indicative. */
  readonly priceOf: (item: CatalogueBelonging) => number;
}

/** Things nobody carries to a repair by choice: bags and cases sort, they do not mend. */
const COUNTS_FOR_NOTHING: ReadonlySet<Belonging['state']> = new Set(['flat', 'expired', 'damaged', 'lent']);

export function ownedPieces(
  garage: Garage,
  catalogue: ReadonlyMap<string, CatalogueBelonging>,
): Result<Table> {
  const pieces: ScenePiece[] = [];
  const bundles: SceneBundle[] = [];
  for (const [id, belonging] of inOrder(garage)) {
    if (belonging.set !== undefined) {
      bundles.push({
        id,
        cents: cents(belonging.forSale ? Math.round((belonging.price ?? 0) * 100) : 0),
        caseGrams: grams(Math.round(belonging.set.caseGrams)),
        caseMillilitres: millilitres(Math.round(belonging.bulkMl ?? 0)),
        carry: belonging.set.carry,
        owned: !belonging.forSale,
      });
      continue;
    }
    const copies = copiesOf(garage, id, belonging, catalogue);
    if (!copies.ok) return copies;
    pieces.push(...copies.value);
  }
  return ok({ pieces, bundles });
}

/** By id: the order in which a file happens to list things changes no answer, not even between equals. */
function inOrder(garage: Garage): readonly (readonly [string, Belonging])[] {
  return Object.entries(garage.belongings).sort(([a], [b]) => (a < b ? -1 : 1));
}

/** The berth a belonging rides in: its own, its bag's or its box's; null where the record names none, or no such thing. */
export function berthOf(garage: Garage, id: string): string | null {
  const belonging = Object.hasOwn(garage.belongings, id) ? garage.belongings[id] : undefined;
  if (belonging === undefined) return null;
  const { bag, inside } = belonging;
  return (
    belonging.berth ??
    (bag === undefined ? undefined : garage.bags[bag]?.berth) ??
    (inside === undefined ? undefined : garage.belongings[inside]?.berth) ??
    null
  );
}

function copiesOf(
  garage: Garage,
  id: string,
  belonging: Belonging,
  catalogue: ReadonlyMap<string, CatalogueBelonging>,
): Result<readonly ScenePiece[]> {
  const entry = belonging.is === undefined ? undefined : catalogue.get(belonging.is);
  if (belonging.is !== undefined && entry === undefined) {
    return refuse(
      'belonging-unknown',
      `"${belonging.is}" is not in the catalogue; run waymend tables to see what is`,
      {
        path: `belongings.${id}.is`,
      },
    );
  }
  const useless = COUNTS_FOR_NOTHING.has(belonging.state) || belonging.doesNotFit;
  const offers = entry === undefined || useless ? ok([]) : offersOf(entry, changeOf(belonging));
  if (!offers.ok) return { ok: false, error: { ...offers.error, path: `belongings.${id}` } };
  const stock = entry === undefined || useless ? [] : stockOf(entry, belonging);
  const setId = belonging.inside;
  const set = setId === undefined ? undefined : garage.belongings[setId];
  // A set that is opened up and owned is only a box: its pieces are chosen one by one.
  const bundled = setId !== undefined && set?.set !== undefined && (set.set.carry === 'whole' || set.forSale);
  const forSale = belonging.forSale || (set?.forSale ?? false);
  const price = belonging.price === undefined ? null : cents(Math.round(belonging.price * 100));
  const berth = berthOf(garage, id);
  const piece = {
    belonging: id,
    name: belonging.name ?? nameOf(entry, belonging) ?? id,
    grams: grams(Math.round(belonging.grams ?? entry?.grams ?? 0)),
    millilitres: millilitres(Math.round(belonging.bulkMl ?? entry?.bulkMl ?? 0)),
    cents: forSale ? price : cents(0),
    owned: !forSale,
    ...(belonging.pin === undefined ? {} : { pin: belonging.pin }),
    offers: offers.value,
    stock,
    bundles: bundled ? [setId] : [],
    berth,
  };
  return ok(
    Array.from({ length: belonging.copies }, (_, n) => ({ ...piece, id: n === 0 ? id : `${id}#${n + 1}` })),
  );
}

/**
 * What unready belongings would be if somebody charged, renewed or fetched them: never chosen (they are not there yet),
 * but offered as a cure that costs no money.
 */
export function readyPieces(
  garage: Garage,
  catalogue: ReadonlyMap<string, CatalogueBelonging>,
): Result<readonly ScenePiece[]> {
  const out: ScenePiece[] = [];
  for (const [id, belonging] of inOrder(garage)) {
    if (!COUNTS_FOR_NOTHING.has(belonging.state) || belonging.doesNotFit || belonging.set !== undefined)
      continue;
    if (belonging.pin === 'never') continue;
    const copies = copiesOf(garage, id, { ...belonging, state: 'ready', copies: 1 }, catalogue);
    if (!copies.ok) return copies;
    for (const piece of copies.value) {
      out.push({ ...piece, id: `ready:${id}`, owned: false, cents: null, bundles: [], pin: 'never' });
    }
  }
  return ok(out);
}

/** A catalogue entry's name and size in one phrase, as lists show it. */
export function nameOf(entry: CatalogueBelonging | undefined, belonging?: Belonging): string | undefined {
  if (entry === undefined) return undefined;
  const size = belonging?.size ?? entry.size;
  return size === undefined ? entry.name : `${entry.name}, ${size}`;
}

function changeOf(belonging: Belonging): OfferChange {
  return {
    ...(belonging.handleMm === undefined ? {} : { handleMm: belonging.handleMm }),
    ...(belonging.size === undefined ? {} : { size: belonging.size }),
  };
}

function offersOf(entry: CatalogueBelonging, change: OfferChange): Result<readonly ToolOffer[]> {
  const offers: ToolOffer[] = [];
  for (const offer of entry.offers) {
    const tool = toToolOffer(offer, change);
    if (!tool.ok) return tool;
    offers.push(tool.value);
  }
  return ok(offers);
}

function stockOf(entry: CatalogueBelonging, belonging: Belonging): ScenePiece['stock'] {
  const left = belonging.stock;
  return (entry.stock ?? []).map(({ of, units }) => ({
    of,
    units: Math.floor(left ?? units),
  }));
}

/**
 * What could be bought: every catalogue entry singly, and the boxed sets that the budget could pay for. A trip that buys only
 * what the garage lists keeps the rest of the catalogue on the table as a cure to name, never to choose.
 */
export function shopPieces(shop: Shop, budgetCents: number, open: boolean): Result<Table> {
  const pieces: ScenePiece[] = [];
  const bundles: SceneBundle[] = [];
  const byId = new Map(shop.belongings.map((b) => [b.id, b]));
  for (const entry of shop.belongings) {
    const piece = shopPiece(entry, `buy:${entry.id}`, cents(shop.priceOf(entry)), []);
    if (!piece.ok) return piece;
    pieces.push(open ? piece.value : { ...piece.value, pin: 'never' });
  }
  for (const set of open ? shop.sets : []) {
    if (set.cents > budgetCents) continue;
    const id = `set:${set.id}`;
    bundles.push({
      id,
      cents: cents(set.cents),
      caseGrams: grams(set.caseGrams),
      caseMillilitres: millilitres(set.caseMl),
      carry: 'loose',
      owned: false,
    });
    for (const { is, copies } of set.contents) {
      const entry = byId.get(is);
      if (entry === undefined)
        throw new Error(`Boxed set ${set.id} holds ${is}, which is not in the catalogue`);
      for (let n = 1; n <= copies; n++) {
        const piece = shopPiece(entry, `${id}/${is}${n === 1 ? '' : `#${n}`}`, null, [id]);
        if (!piece.ok) return piece;
        pieces.push(piece.value);
      }
    }
  }
  return ok({ pieces, bundles });
}

function shopPiece(
  entry: CatalogueBelonging,
  id: string,
  price: ScenePiece['cents'],
  bundles: readonly string[],
): Result<ScenePiece> {
  const offers = offersOf(entry, {});
  if (!offers.ok) return offers;
  return ok({
    id,
    belonging: id,
    name: nameOf(entry) ?? id,
    grams: grams(entry.grams),
    millilitres: millilitres(entry.bulkMl),
    cents: price,
    owned: false,
    offers: offers.value,
    stock: (entry.stock ?? []).map(({ of, units }) => ({ of, units: Math.floor(units) })),
    bundles,
    berth: null,
  });
}
