import type { NeedIndex } from '../choosing/problem.ts';
import type { Reach } from './fast.ts';
import { DRIVE_LIMIT } from '../fastening/drive-limit.ts';
import { handleLimit } from './fast.ts';
import { worstOf } from './grade.ts';
import { HANDLE_LEVER, leverFit, TUBE_OVERLAP } from './fast.ts';
import type { Pull } from './fast.ts';
import type { Bench, Held } from './bench.ts';
import type { GradedNeed, GradedWay, NeedPool } from './need-pool.ts';
import type { SquareDrive } from '../repairing/scene.ts';

/** The least extension that gets a socket down a hole, m; a printed 100 mm counts however it was rounded. */
const LEAST_EXTENSION = 0.1 - 1e-9;

/** What a socket asks of its drive train; `without` is a piece that must not be part of it (the socket itself). */
export interface TrainAsk {
  readonly drive: SquareDrive;
  readonly reach: Reach;
  readonly pull: Pull;
  readonly without?: number;
  /** Only handles of this very drive (a square plug takes a handle's bare end). */
  readonly bareEnd?: true;
}

/**
 * Handles, with adapter, extension or joint and tube where they take one, that turn a socket of a drive (M2, "Square drives"
 * and "Lever"). One need a grade, shared by every socket that asks the same.
 */
export function trainNeed(pool: NeedPool, bench: Bench, ask: TrainAsk): GradedNeed {
  const ways: GradedWay[] = [];
  for (const handle of bench.of('handle')) {
    if (handle.piece === ask.without || (ask.bareEnd && handle.offer.drive !== ask.drive)) continue;
    const limit = handleLimit(handle.offer);
    if (limit === null || ask.pull.torque > Math.min(limit, DRIVE_LIMIT[ask.drive])) continue;
    const links = linksOf(pool, bench, handle, ask);
    if (links === null) continue;
    for (const pulled of pulls(bench, handle, ask)) ways.push({ ...pulled, needs: links });
  }
  return pool.graded(ways, `turn a ${ask.drive} drive${ask.reach === 'straight' ? '' : `, ${ask.reach}`}`);
}

/** A train that only stands still while the other side turns (M3): drives must bear the torque, nobody pulls. */
export function standingTrain(
  pool: NeedPool,
  bench: Bench,
  drive: SquareDrive,
  torque: number,
  without?: number,
): NeedIndex | null {
  const ways = bench.of('handle').flatMap((handle): GradedWay[] => {
    const { form } = handle.offer;
    if (handle.piece === without || (form !== 'ratchet' && form !== 'bar' && form !== 't-bar')) return [];
    const limit = handleLimit(handle.offer);
    if (limit === null || torque > Math.min(limit, DRIVE_LIMIT[drive])) return [];
    const link = joining(pool, bench, handle, drive, without);
    return link === null ? [] : [{ pieces: [handle.piece], needs: link, grade: 'proper' }];
  });
  return pool.any(ways, `hold with a ${drive} drive`);
}

/** The needs between handle and socket: an adapter between unlike drives, a reaching piece where the place asks for one. */
function linksOf(
  pool: NeedPool,
  bench: Bench,
  handle: Held<'handle'>,
  ask: TrainAsk,
): readonly NeedIndex[] | null {
  const joined = joining(pool, bench, handle, ask.drive, ask.without);
  if (joined === null) return null;
  if (ask.reach === 'straight') return joined;
  const drives = [handle.offer.drive, ask.drive];
  const out = (piece: number) => piece === handle.piece || piece === ask.without;
  const single = (piece: number) => ({ pieces: [piece], needs: [] });
  const reaching = bench
    .of('extension')
    .filter(({ piece, offer }) => {
      if (out(piece) || !drives.includes(offer.drive)) return false;
      return ask.reach === 'extended' ? offer.length >= LEAST_EXTENSION : offer.wobble;
    })
    .map(({ piece }) => single(piece));
  if (ask.reach === 'bent') {
    for (const { piece, offer } of bench.of('joint'))
      if (!out(piece) && drives.includes(offer.drive)) reaching.push(single(piece));
  }
  const reach = pool.any(reaching, `reach, ${drives.join(' or ')}`);
  return reach === null ? null : [...joined, reach];
}

/** Nothing between equal drives, exactly one adapter between others; null when there is none. */
function joining(
  pool: NeedPool,
  bench: Bench,
  handle: Held<'handle'>,
  drive: SquareDrive,
  without: number | undefined,
): readonly NeedIndex[] | null {
  if (handle.offer.drive === drive) return [];
  const adapters = bench
    .of('adapter')
    .filter(
      ({ piece, offer }) =>
        piece !== handle.piece &&
        piece !== without &&
        offer.handle === handle.offer.drive &&
        offer.socket === drive,
    )
    .map(({ piece }) => ({ pieces: [piece], needs: [] }));
  const need = pool.any(adapters, `adapt ${handle.offer.drive} to ${drive}`);
  return need === null ? null : [need];
}

/** The handle alone, or a bar with a tube over it. */
function pulls(
  bench: Bench,
  handle: Held<'handle'>,
  ask: TrainAsk,
): readonly Pick<GradedWay, 'pieces' | 'grade'>[] {
  const { form, length } = handle.offer;
  // A spinner is twirled and an impact driver strikes: their own limit says it all.
  const bare = form === 'spinner' || form === 'impact' ? 'proper' : leverFit(HANDLE_LEVER * length, ask.pull);
  if (bare !== null) return [{ pieces: [handle.piece], grade: bare }];
  if (form !== 'bar') return [];
  return bench.of('lever-tube').flatMap(({ piece, offer }) => {
    if (piece === handle.piece || piece === ask.without) return [];
    const grade = worstOf('with-care', leverFit(length + offer.length - TUBE_OVERLAP, ask.pull));
    return grade === null ? [] : [{ pieces: [handle.piece, piece], grade }];
  });
}
