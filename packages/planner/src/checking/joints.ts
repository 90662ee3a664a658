import type { Crew, Joint } from '@waymend/core/repairing/scene';
import { isCritical } from './access.ts';
import type { Bench } from './bench.ts';
import { held } from './bench.ts';
import { standingDrives } from './chains.ts';
import { torqueToUndo } from './levers.ts';
import type { Mark } from './marks.ts';
import { rank, worst } from './marks.ts';
import type { Size } from './sizes.ts';
import { flatsWidth, openingOnHead, sameSize, screwFit } from './sizes.ts';
import { hexWays } from './turn-hex.ts';
import { flareWays, insideWays, ringNutWays } from './turn-other.ts';
import type { Found } from './ways.ts';
import { onDrives, single } from './ways.ts';

/** The best grade at which these pieces undo a joint: turning it, and holding its other end where it must be held. */
export function jointMark(bench: Bench, joint: Joint, crew: Crew): Mark {
  const holds = joint.hold === undefined ? null : [...holdWays(bench, joint, joint.hold)];
  let found: Mark = null;
  for (const turn of turnWays(bench, joint, crew)) {
    if (rank(turn.mark) <= rank(found)) continue;
    const mark = holds === null ? turn.mark : heldMark(turn, holds);
    if (rank(mark) > rank(found)) found = mark;
    if (found === 'proper') break;
  }
  return found;
}

/** Two sides at the same moment: no piece on both, and no more than one drive handle (M3). */
function heldMark(turn: Found, holds: readonly Found[]): Mark {
  let found: Mark = null;
  for (const hold of holds) {
    if (turn.handle && hold.handle) continue;
    if (hold.pieces.some((p) => turn.pieces.includes(p))) continue;
    const mark = worst(turn.mark, hold.mark);
    if (rank(mark) > rank(found)) found = mark;
  }
  return found;
}

function turnWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  switch (joint.drive) {
    case 'hex':
      return hexWays(bench, joint, crew);
    case 'flare':
      return flareWays(bench, joint, crew);
    case 'locknut-hex':
    case 'locknut-peg':
      return ringNutWays(bench, joint, crew);
    case 'hex-key':
    case 'lobe':
    case 'lobe-external':
    case 'spline':
    case 'square':
    case 'slot':
    case 'cross':
      return insideWays(bench, joint, crew);
  }
}

/** Ways to hold the other end (M3). Where it is and how it is reached the record does not say, so reach is not asked. */
function* holdWays(bench: Bench, joint: Joint, hold: NonNullable<Joint['hold']>): Generator<Found> {
  const torque = torqueToUndo(joint);
  if (hold.drive === 'hex' || hold.drive === 'flare') {
    yield* holdHex(bench, joint, hold.size, torque);
    return;
  }
  const fit = hold.drive === 'cross' || hold.drive === 'slot' ? screwFit : exact;
  for (const { piece, offer } of held(bench, 'key')) {
    if (offer.head === hold.drive) for (const size of offer.sizes) yield* single(piece, fit(size, hold.size));
  }
  for (const { piece, offer } of held(bench, 'driver')) {
    if (offer.head === hold.drive) for (const size of offer.sizes) yield* single(piece, fit(size, hold.size));
  }
  for (const { piece, offer } of held(bench, 'bit-socket')) {
    if (offer.head !== hold.drive) continue;
    for (const size of offer.sizes) {
      yield* onDrives(piece, fit(size, hold.size), standingDrives(bench, offer.drive, torque));
    }
  }
}

const exact = (tool: Size, head: Size): Mark => (sameSize(tool, head) ? 'proper' : null);

function* holdHex(bench: Bench, joint: Joint, head: Joint['size'], torque: number): Generator<Found> {
  for (const { piece, offer } of held(bench, 'wrench')) {
    for (const end of offer.ends) yield* single(piece, openingOnHead(end.size, head, torque));
  }
  for (const { piece, offer } of held(bench, 'socket')) {
    const fit = openingOnHead(offer.size, head, torque);
    if (fit !== null) yield* onDrives(piece, fit, standingDrives(bench, offer.drive, torque));
  }
  const width = flatsWidth(head);
  if (width === null || isCritical(joint)) return;
  for (const { piece, offer } of held(bench, 'adjustable')) {
    if (offer.jaw !== 'pipe' && width >= offer.from && width <= offer.to) yield* single(piece, 'with-care');
  }
  for (const { piece, offer } of held(bench, 'pliers')) {
    if (offer.form === 'locking' && width <= offer.to) yield* single(piece, 'last-resort');
  }
}
