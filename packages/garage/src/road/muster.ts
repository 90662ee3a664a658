import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import { addEntry, entryOf } from './add-entry.ts';
import type { Count, StockOf } from './count-pieces.ts';
import { calledBy, countsOf, insideBag, piecesOut, stockInPiece, unaccounted } from './count-pieces.ts';

/** So many pieces of a belonging that go out, and the id of their count. */
export interface PiecesOut {
  readonly id: string;
  readonly belonging: string;
  readonly pieces: number;
}

export interface MusterStart {
  readonly id: string;
  readonly vehicle: string;
  /** The day it is opened. */
  readonly on: string;
  readonly trip?: string;
  /** Catalogue job it is for. */
  readonly job?: string;
  readonly note?: string;
  readonly out: readonly PiecesOut[];
}

/** What became of pieces. Pieces are whole; `used` of a stock is jobs' worth, or litres. */
export interface Tally {
  readonly back?: number;
  readonly lost?: number;
  readonly damaged?: number;
  readonly used?: number;
  /** Parts that did not come back with their piece. */
  readonly missingParts?: readonly string[];
}

/** Opens a muster and counts the first pieces out. Refuses what is not there, and more pieces than there are. */
export function openMuster(garage: Garage, start: MusterStart): Result<Garage> {
  const vehicle = entryOf(garage, 'vehicles', start.vehicle);
  if (!vehicle.ok) return vehicle;
  if (start.trip !== undefined) {
    const trip = entryOf(garage, 'trips', start.trip);
    if (!trip.ok) return trip;
  }
  const { id, on, out, vehicle: whose, trip, job, note } = start;
  const opened = addEntry(garage, 'musters', id, {
    vehicle: whose,
    ...(trip === undefined ? {} : { trip }),
    ...(job === undefined ? {} : { job }),
    openedOn: on,
    ...(note === undefined ? {} : { note }),
  });
  if (!opened.ok) return opened;
  let next = opened.value;
  for (const pieces of out) {
    const counted = countOut(next, id, pieces);
    if (!counted.ok) return counted;
    next = counted.value;
  }
  return ok(next);
}

/** Counts more pieces out; pieces of a belonging that is out already join its count. */
export function countOut(
  garage: Garage,
  muster: string,
  { id, belonging, pieces }: PiecesOut,
): Result<Garage> {
  const open = openOne(garage, muster);
  if (!open.ok) return open;
  const thing = entryOf(garage, 'belongings', belonging);
  if (!thing.ok) return thing;
  const whole = wholePieces(pieces);
  if (!whole.ok) return whole;
  const left = thing.value.copies - piecesOut(garage, belonging);
  if (pieces > left) {
    const name = calledBy(garage, belonging);
    return refuse(
      'count-too-many',
      `${left < 1 ? 'None' : `Only ${left}`} of ${name} can go out; ${pieces} were asked for`,
    );
  }
  const before = countsOf(garage, muster).find(([, count]) => count.belonging === belonging);
  if (before !== undefined)
    return ok(withCount(garage, before[0], { ...before[1], out: before[1].out + pieces }));
  const count: Count = {
    muster,
    belonging,
    out: pieces,
    back: 0,
    lost: 0,
    damaged: 0,
    used: 0,
    missingParts: [],
  };
  return addEntry(garage, 'counts', id, count);
}

/** Counts pieces in, one by one or several at once, on top of what is counted. Refuses more than went out. */
export function countIn(garage: Garage, countId: string, tally: Tally, stockOf: StockOf): Result<Garage> {
  const count = entryOf(garage, 'counts', countId);
  if (!count.ok) return count;
  const { back, lost, damaged, used, missingParts } = count.value;
  return recount(
    garage,
    countId,
    {
      back: back + nonNegative(tally.back, -back),
      lost: lost + nonNegative(tally.lost, -lost),
      damaged: damaged + nonNegative(tally.damaged, -damaged),
      used: used + nonNegative(tally.used, -used),
      missingParts: [...new Set([...missingParts, ...(tally.missingParts ?? [])])],
    },
    stockOf,
  );
}

/** Says anew what became of a belonging's pieces; what is left out stays as it was counted. */
export function recount(garage: Garage, countId: string, tally: Tally, stockOf: StockOf): Result<Garage> {
  const found = entryOf(garage, 'counts', countId);
  if (!found.ok) return found;
  const open = openOne(garage, found.value.muster);
  if (!open.ok) return open;
  const { missingParts = found.value.missingParts, ...numbers } = tally;
  const count: Count = { ...found.value, ...numbers, missingParts: [...missingParts] };
  const thing = garage.belongings[count.belonging];
  const perPiece = thing === undefined ? null : stockInPiece(thing, stockOf);
  const whole = [count.back, count.lost, count.damaged, ...(perPiece === null ? [count.used] : [])];
  for (const number of [...whole, count.used]) {
    if (!(number >= 0))
      return refuse('count-negative', 'A count cannot fall below nothing; say how many pieces there are');
  }
  if (whole.some((number) => !Number.isInteger(number)))
    return refuse(
      'count-not-whole',
      'Pieces are counted whole; only litres and jobs\u2019 worth of a stock have parts',
    );
  const pieces = whole.reduce((sum, number) => sum + number, 0);
  const name = calledBy(garage, count.belonging);
  if (pieces > count.out)
    return refuse(
      'count-over',
      `${count.out} of ${name} went out, so ${pieces} cannot be accounted for; count again`,
    );
  if (perPiece !== null && count.used > count.out * perPiece + 1e-9) {
    return refuse(
      'count-over',
      `What went out of ${name} holds ${count.out * perPiece}, so ${count.used} cannot be used up; count again`,
    );
  }
  return ok(withCount(garage, countId, count));
}

/** "All but ...": every piece that nobody has spoken of is back, except those of the belongings named. */
export function countInAllBut(
  garage: Garage,
  muster: string,
  except: readonly string[],
  stockOf: StockOf,
): Result<Garage> {
  const open = openOne(garage, muster);
  if (!open.ok) return open;
  const counts = countsOf(garage, muster);
  const stranger = except.find((belonging) => !counts.some(([, count]) => count.belonging === belonging));
  if (stranger !== undefined)
    return refuse(
      'count-unknown',
      `${calledBy(garage, stranger)} did not go out in this muster; look at its list`,
    );
  let next = garage;
  for (const [id, count] of counts) {
    if (except.includes(count.belonging)) continue;
    const thing = garage.belongings[count.belonging];
    const missing = unaccounted(count, thing === undefined ? null : stockInPiece(thing, stockOf));
    next = withCount(next, id, { ...count, back: count.back + missing });
  }
  return ok(next);
}

/**
 * A bag whose seal is whole: everything in it is counted out and in by one look. Refused unless the last closed count of each
 * piece found it whole, because a seal only says that nothing has changed since. `idOf` gives the id of each new count.
 */
export function countSealedBag(
  garage: Garage,
  muster: string,
  bag: string,
  idOf: (belonging: string) => string,
): Result<Garage> {
  const open = openOne(garage, muster);
  if (!open.ok) return open;
  const known = entryOf(garage, 'bags', bag);
  if (!known.ok) return known;
  const inside = insideBag(garage, bag);
  const doubtful = inside.filter((belonging) => !lastCountWhole(garage, belonging));
  if (doubtful.length > 0 || inside.length === 0) {
    const names = doubtful
      .map((belonging) => calledBy(garage, belonging))
      .slice(0, 5)
      .join(', ');
    return refuse(
      'bag-not-counted',
      inside.length === 0
        ? `Nothing is recorded in ${known.value.name}; say first what is in it`
        : `A seal stands for an earlier count, and no closed one found these whole in ${known.value.name}: ${names}; count them piece by piece`,
    );
  }
  let next = garage;
  for (const belonging of inside) {
    const pieces = (garage.belongings[belonging]?.copies ?? 0) - piecesOut(garage, belonging);
    if (pieces < 1) continue;
    const id = idOf(belonging);
    const out = countOut(next, muster, { id, belonging, pieces });
    if (!out.ok) return out;
    next = out.value;
    const count = next.counts[id];
    if (count !== undefined) next = withCount(next, id, { ...count, back: pieces });
  }
  return ok(next);
}

function lastCountWhole(garage: Garage, belonging: string): boolean {
  const closed = Object.values(garage.counts)
    .flatMap((count) => {
      const on = garage.musters[count.muster]?.closedOn;
      return count.belonging === belonging && on !== undefined ? [{ count, on }] : [];
    })
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const last = closed.at(-1)?.count;
  const copies = garage.belongings[belonging]?.copies ?? 0;
  return (
    last !== undefined && last.back === last.out && last.back >= copies && last.missingParts.length === 0
  );
}

/** The muster of an id, if it is open. */
export function openOne(garage: Garage, id: string): Result<Garage['musters'][string]> {
  const muster = entryOf(garage, 'musters', id);
  if (!muster.ok) return muster;
  const { closedOn } = muster.value;
  return closedOn === undefined
    ? muster
    : refuse('muster-closed', `This muster was closed on ${closedOn}; open a new one`);
}

function wholePieces(pieces: number): Result<number> {
  if (!(pieces >= 0))
    return refuse('count-negative', 'A count cannot fall below nothing; say how many pieces there are');
  return Number.isInteger(pieces) ? ok(pieces) : refuse('count-not-whole', 'Pieces are counted whole');
}

/** A step of a count; a negative one makes the sum negative, so that it is refused however much was counted before. */
function nonNegative(step: number | undefined, refused: number): number {
  if (step === undefined) return 0;
  return step >= 0 ? step : refused - 1;
}

function withCount(garage: Garage, id: string, count: Count): Garage {
  return { ...garage, counts: { ...garage.counts, [id]: count } };
}
