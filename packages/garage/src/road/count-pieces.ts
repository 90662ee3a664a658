import type { Garage } from '../record/schema.ts';

/** Jobs' worth or litres in a new piece of a catalogue thing; null when it is not stock. Passed in: pages load no catalogue. */
export type StockOf = (is: string) => number | null;

export type Count = Garage['counts'][string];

/** What one full piece of a belonging holds; null when it is not used up by jobs. */
export function stockInPiece(belonging: Garage['belongings'][string], stockOf: StockOf): number | null {
  const asNew = belonging.is === undefined ? null : stockOf(belonging.is);
  return asNew === null ? null : (belonging.stock ?? asNew);
}

/**
 * Pieces that went out and of which nobody has said what became of them. Of a stock, `used` counts jobs' worth or litres, and
 * pieces that this empties need not come back.
 */
export function unaccounted(count: Count, perPiece: number | null): number {
  const { out, back, lost, damaged, used } = count;
  const gone = perPiece === null ? used : emptied(used, perPiece, out - back - lost - damaged);
  return out - back - lost - damaged - gone;
}

function emptied(used: number, perPiece: number, missing: number): number {
  return perPiece > 0 ? Math.min(Math.max(0, missing), Math.floor(used / perPiece + 1e-9)) : 0;
}

/** Pieces of a belonging that open musters have out. */
export function piecesOut(garage: Garage, belonging: string): number {
  return Object.values(garage.counts).reduce((sum, count) => {
    const open = garage.musters[count.muster]?.closedOn === undefined;
    return open && count.belonging === belonging ? sum + count.out : sum;
  }, 0);
}

/** The counts of a muster, in the order they were made. */
export function countsOf(garage: Garage, muster: string): readonly (readonly [string, Count])[] {
  return Object.entries(garage.counts).filter(([, count]) => count.muster === muster);
}

/** The name of a belonging as its owner wrote it, else its id. */
export function calledBy(garage: Garage, belonging: string): string {
  const thing = garage.belongings[belonging];
  return thing?.name ?? thing?.line ?? belonging;
}

/** What rides in a bag: what is in it, and what is inside the boxes that are. Things for sale are not there yet. */
export function insideBag(garage: Garage, bag: string): readonly string[] {
  return Object.entries(garage.belongings).flatMap(([id, thing]) => {
    const box = thing.inside === undefined ? undefined : garage.belongings[thing.inside];
    return (thing.bag ?? box?.bag) === bag && !thing.forSale && thing.copies > 0 ? [id] : [];
  });
}
