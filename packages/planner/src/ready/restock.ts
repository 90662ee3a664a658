import type { Garage } from '@waymend/garage/record/schema';
import { stockInPiece } from '@waymend/garage/road/count-pieces';
import { nameOf } from '../scene/pieces.ts';
import type { Trade } from '../trade.ts';

/** Something to put back into the kit. */
export interface RestockLine {
  readonly why: 'lost' | 'used' | 'damaged' | 'begun' | 'wished-for';
  /** Belonging it is about; null for a thing that was wished for. */
  readonly belonging: string | null;
  /** Catalogue thing; null for something of the owner's own. */
  readonly is: string | null;
  readonly name: string;
  /** Pieces; of a stock that is begun, jobs' worth or litres that are missing. */
  readonly amount: number;
  /** Guide price of what is to be bought, whole cents; null where none is known or nothing has to be bought. */
  readonly cents: number | null;
}

/** Jobs' worth or litres in a new piece of a catalogue thing, as the garage's counting asks for it. */
export function stockOf(trade: Trade): (is: string) => number | null {
  const asNew = new Map(
    trade.belongings.flatMap((b) =>
      b.stock === undefined ? [] : [[b.id, Math.max(...b.stock.map((s) => s.units))] as const],
    ),
  );
  return (is) => asNew.get(is) ?? null;
}

/**
 * What to restock after a trip: what its musters found lost, used up or damaged, stock that is begun (whenever), and what was wished for.
 * Without a trip: all closed musters and every wish.
 */
export function restockList(garage: Garage, tripId: string | null, trade: Trade): readonly RestockLine[] {
  const asNew = stockOf(trade);
  const entries = new Map(trade.belongings.map((b) => [b.id, b]));
  const line = (
    why: RestockLine['why'],
    belonging: string | null,
    of: string | undefined,
    amount: number,
    buy: number,
  ): RestockLine => {
    const thing = belonging === null ? undefined : garage.belongings[belonging];
    const is = thing?.is ?? of;
    const entry = is === undefined ? undefined : entries.get(is);
    const name = thing?.name ?? nameOf(entry, thing) ?? belonging ?? is ?? '';
    const cents = entry === undefined || buy === 0 ? null : trade.priceOf(entry) * buy;
    return { why, belonging, is: is ?? null, name, amount, cents };
  };
  const out: RestockLine[] = [];
  for (const count of Object.values(garage.counts)) {
    const muster = garage.musters[count.muster];
    if (muster?.closedOn === undefined || (tripId !== null && muster.trip !== tripId)) continue;
    const thing = garage.belongings[count.belonging];
    const stock = thing === undefined ? null : stockInPiece(thing, asNew);
    const emptied = count.out - count.back - count.lost - count.damaged;
    const gone = stock === null ? count.used : Math.max(0, emptied);
    if (count.lost > 0) out.push(line('lost', count.belonging, undefined, count.lost, count.lost));
    if (gone > 0) out.push(line('used', count.belonging, undefined, gone, gone));
    if (count.damaged > 0) out.push(line('damaged', count.belonging, undefined, count.damaged, 0));
  }
  for (const [id, thing] of Object.entries(garage.belongings)) {
    const full = thing.is === undefined ? null : asNew(thing.is);
    if (full === null || thing.stock === undefined || thing.forSale || thing.copies === 0) continue;
    if (thing.stock < full) out.push(line('begun', id, undefined, full - thing.stock, 1));
  }
  for (const use of Object.values(garage.uses)) {
    if (use.said !== 'wished-for' || (tripId !== null && use.trip !== tripId)) continue;
    out.push(
      line(
        'wished-for',
        use.belonging ?? null,
        use.thing,
        use.times > 0 ? 1 : 0,
        use.thing === undefined ? 0 : 1,
      ),
    );
  }
  return out;
}
