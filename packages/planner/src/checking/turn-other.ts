import type { Crew, Joint } from '@waymend/core/repairing/scene';
import { bitReach } from './access.ts';
import type { Bench } from './bench.ts';
import { held } from './bench.ts';
import { drivesFor } from './chains.ts';
import { functionPieces } from './functions.ts';
import { leverMark, SPINNER, torqueToUndo, WRENCH_LEVER } from './levers.ts';
import type { Mark } from './marks.ts';
import { worst } from './marks.ts';
import type { Size } from './sizes.ts';
import { flatsWidth, openingOnHead, plugDrive, sameSize, screwFit } from './sizes.ts';
import type { Found } from './ways.ts';
import { onDrives, single } from './ways.ts';

type Fit = (tool: Size, head: Size) => Mark;
const exact: Fit = (tool, head) => (sameSize(tool, head) ? 'proper' : null);

/** Keys, lobes, splines, square bits, cross and slot: bits on a drive, keys and screwdrivers (M2 "Inside drives"). */
export function* insideWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const torque = torqueToUndo(joint);
  const fit = joint.drive === 'cross' || joint.drive === 'slot' ? screwFit : exact;
  const { mark, reach } = bitReach(joint.access);
  for (const { piece, offer } of held(bench, 'bit-socket')) {
    if (offer.head !== joint.drive) continue;
    const here = worst(mark, bestOf(offer.sizes, joint.size, fit));
    if (here === null) continue;
    yield* onDrives(
      piece,
      here,
      drivesFor(bench, offer.drive, reach, { torque, stance: joint.stance, crew }),
    );
  }
  for (const { piece, offer } of held(bench, 'key')) {
    if (offer.head !== joint.drive) continue;
    const lever = leverMark(offer.arm, torque, joint.stance, crew);
    yield* single(piece, worst(bestOf(offer.sizes, joint.size, fit), lever));
  }
  for (const { piece, offer } of held(bench, 'driver')) {
    // A screwdriver is twirled like a spinner; the page gives it no lever.
    if (offer.head !== joint.drive || torque > SPINNER) continue;
    yield* single(piece, bestOf(offer.sizes, joint.size, fit));
  }
  if (joint.drive === 'square') yield* bareEnds(bench, joint, crew);
}

/** A square plug takes the bare end of a handle or of an extension of its drive, with care. */
function* bareEnds(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const drive = plugDrive(joint.size);
  if (drive === null) return;
  const pull = { torque: torqueToUndo(joint), stance: joint.stance, crew };
  const { mark, reach } = bitReach(joint.access);
  const handles = held(bench, 'handle').filter((h) => h.offer.drive === drive);
  for (const way of drivesFor(bench, drive, reach, pull)) {
    if (!handles.some((h) => h.piece === way.pieces[0])) continue;
    const whole = worst('with-care', mark, way.mark);
    if (whole !== null) yield { ...way, mark: whole };
  }
  for (const extension of held(bench, 'extension')) {
    if (extension.offer.drive !== drive) continue;
    const reached = reach === 'extended' && extension.offer.length >= 0.1 - 1e-9 ? 'straight' : reach;
    yield* onDrives(extension.piece, worst('with-care', mark), drivesFor(bench, drive, reached, pull));
  }
}

/** Flare nuts of pipes: their own wrenches, or an open end off the brakes (M2). */
export function* flareWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const torque = torqueToUndo(joint);
  const grip = (form: 'flare' | 'open'): Mark =>
    form === 'flare' ? 'proper' : joint.critical === 'brake' ? null : 'last-resort';
  for (const { piece, offer } of held(bench, 'wrench')) {
    const lever = leverMark(WRENCH_LEVER * offer.length, torque, joint.stance, crew);
    for (const end of offer.ends) {
      if (end.form !== 'flare' && end.form !== 'open') continue;
      yield* single(piece, worst(grip(end.form), openingOnHead(end.size, joint.size, torque), lever));
    }
  }
  for (const { piece, offer } of held(bench, 'crow-foot')) {
    const fit = worst(grip(offer.form), openingOnHead(offer.size, joint.size, torque));
    if (fit === null) continue;
    yield* onDrives(
      piece,
      fit,
      drivesFor(bench, offer.drive, 'straight', { torque, stance: joint.stance, crew }),
    );
  }
}

/** Ring nuts of hubs: a thin-walled socket whose range covers them, or a drift and a hammer as a last resort (M2). */
export function* ringNutWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const width = flatsWidth(joint.size);
  const torque = torqueToUndo(joint);
  const form = joint.drive === 'locknut-hex' ? 'hex' : 'peg';
  for (const { piece, offer } of held(bench, 'locknut-socket')) {
    if (width === null || offer.form !== form || width < offer.from || width > offer.to) continue;
    yield* onDrives(
      piece,
      'proper',
      drivesFor(bench, offer.drive, 'straight', { torque, stance: joint.stance, crew }),
    );
  }
  for (const drift of functionPieces(bench, { fn: 'drive-drift' })) {
    for (const hammer of functionPieces(bench, { fn: 'strike-hard' })) {
      if (drift.piece === hammer.piece) continue;
      yield { mark: 'last-resort', pieces: [drift.piece, hammer.piece], handle: false };
    }
  }
}

function bestOf(sizes: readonly Size[], head: Size, fit: Fit): Mark {
  const marks = sizes.map((size) => fit(size, head));
  return marks.includes('proper') ? 'proper' : marks.includes('with-care') ? 'with-care' : null;
}
