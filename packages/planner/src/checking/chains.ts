import type { Crew, Joint, SquareDrive } from '@waymend/core/repairing/scene';
import type { Reach } from './access.ts';
import type { Bench, Held } from './bench.ts';
import { held } from './bench.ts';
import { DRIVE_LIMIT, HANDLE_LEVER, leverMark, RATCHET, SPINNER, tubeLever } from './levers.ts';
import type { Mark } from './marks.ts';
import { worst } from './marks.ts';
import type { Found } from './ways.ts';

/** Who pulls, where, and how hard the thing sits. */
export interface Pull {
  readonly torque: number;
  readonly stance: Joint['stance'];
  readonly crew: Crew;
}

type Handle = Held<'handle'>;

/**
 * Every drive train from a handle to a socket of this drive, as M2 "Square drives" and "Lever" allow, without the socket.
 * The train's limit is the least of both drives and the handle's own, which also keeps a quarter inch under 30 N m behind
 * any adapter.
 */
export function* drivesFor(bench: Bench, drive: SquareDrive, reach: Reach, pull: Pull): Generator<Found> {
  for (const handle of held(bench, 'handle')) {
    if (handle.offer.form === 'torque') continue;
    const limit = Math.min(handleLimit(handle), DRIVE_LIMIT[handle.offer.drive], DRIVE_LIMIT[drive]);
    if (pull.torque > limit) continue;
    for (const joining of joinings(bench, handle.offer.drive, drive)) {
      for (const reaching of reachings(bench, reach, [handle.offer.drive, drive])) {
        const train = [handle.piece, ...joining, ...reaching];
        if (new Set(train).size < train.length) continue;
        yield* pulled(bench, handle, train, pull);
      }
    }
  }
}

/** A train that only has to stand still (M3): the drives must bear the torque, nobody pulls a lever. */
export function* standingDrives(bench: Bench, drive: SquareDrive, torque: number): Generator<Found> {
  for (const handle of held(bench, 'handle')) {
    const { form } = handle.offer;
    if (form !== 'ratchet' && form !== 'bar' && form !== 't-bar') continue;
    const limit = Math.min(handleLimit(handle), DRIVE_LIMIT[handle.offer.drive], DRIVE_LIMIT[drive]);
    if (torque > limit) continue;
    for (const joining of joinings(bench, handle.offer.drive, drive)) {
      const pieces = [handle.piece, ...joining];
      if (new Set(pieces).size === pieces.length) yield { mark: 'proper', pieces, handle: true };
    }
  }
}

function handleLimit({ offer }: Handle): number {
  const own = offer.max ?? Number.POSITIVE_INFINITY;
  if (offer.form === 'ratchet') return Math.min(own, RATCHET);
  if (offer.form === 'spinner') return Math.min(own, SPINNER);
  return own;
}

/** Nothing between equal drives, exactly one adapter between others. */
function* joinings(bench: Bench, from: SquareDrive, to: SquareDrive): Generator<readonly number[]> {
  if (from === to) {
    yield [];
    return;
  }
  for (const { piece, offer } of held(bench, 'adapter')) {
    if (offer.handle === from && offer.socket === to) yield [piece];
  }
}

function* reachings(
  bench: Bench,
  reach: Reach,
  drives: readonly SquareDrive[],
): Generator<readonly number[]> {
  if (reach === 'straight') yield [];
  if (reach === 'bent') {
    for (const { piece, offer } of held(bench, 'joint')) if (drives.includes(offer.drive)) yield [piece];
  }
  if (reach === 'straight') return;
  for (const { piece, offer } of held(bench, 'extension')) {
    if (!drives.includes(offer.drive)) continue;
    // A tenth of a metre as printed: rounding of millimetres must not shorten it.
    if (reach === 'extended' ? offer.length >= 0.1 - 1e-9 : offer.wobble) yield [piece];
  }
}

function* pulled(bench: Bench, handle: Handle, train: readonly number[], pull: Pull): Generator<Found> {
  const { form, length } = handle.offer;
  const { torque, stance, crew } = pull;
  // A spinner is twirled and an impact driver is struck: their own limit is all there is to say.
  const bare: Mark =
    form === 'spinner' || form === 'impact'
      ? 'proper'
      : leverMark(HANDLE_LEVER * length, torque, stance, crew);
  if (bare !== null) {
    yield { mark: bare, pieces: train, handle: true };
    return;
  }
  if (form !== 'bar') return;
  for (const tube of held(bench, 'lever-tube')) {
    if (train.includes(tube.piece)) continue;
    const mark = worst('with-care', leverMark(tubeLever(length, tube.offer.length), torque, stance, crew));
    if (mark !== null) yield { mark, pieces: [...train, tube.piece], handle: true };
  }
}
