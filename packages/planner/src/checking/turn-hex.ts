import type { Crew, Joint, ToolOffer } from '@waymend/core/repairing/scene';
import { adjustableReach, braceReach, openEndReach, pliersReach, ringReach, socketReach } from './access.ts';
import type { Bench } from './bench.ts';
import { held } from './bench.ts';
import { drivesFor } from './chains.ts';
import { functionPieces } from './functions.ts';
import { leverMark, STRUCK_RING, torqueToUndo, WRENCH_LEVER } from './levers.ts';
import type { Mark } from './marks.ts';
import { oneWorse, worst } from './marks.ts';
import { flatsWidth, openingOnHead } from './sizes.ts';
import type { Found } from './ways.ts';
import { onDrives, single } from './ways.ts';

/** Every way to turn a hexagon (M2). */
export function* hexWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const torque = torqueToUndo(joint);
  const pull = { torque, stance: joint.stance, crew };
  for (const socket of held(bench, 'socket')) {
    const { mark, reach } = socketReach(joint.access, socket.offer);
    const fit = worst(mark, socketFit(socket.offer, joint, torque));
    yield* onDrives(socket.piece, fit, drivesFor(bench, socket.offer.drive, reach, pull));
  }
  for (const { piece, offer } of held(bench, 'brace')) {
    const fit = offer.sizes.map((size) => openingOnHead(size, joint.size, torque));
    for (const size of fit) {
      const lever = leverMark(offer.lever, torque, joint.stance, crew);
      yield* single(piece, worst(size, braceReach(joint.access, offer.depth), lever));
    }
  }
  for (const { piece, offer } of held(bench, 'wrench')) {
    const lever = leverMark(WRENCH_LEVER * offer.length, torque, joint.stance, crew);
    for (const end of offer.ends) {
      const fit = worst(openingOnHead(end.size, joint.size, torque), endReach(end.form, joint, torque));
      yield* single(piece, worst(fit, lever));
      if (end.form === 'ring' && fit !== null) yield* struck(bench, piece, fit, torque);
    }
  }
  yield* jawWays(bench, joint, crew);
}

function socketFit(socket: Extract<ToolOffer, { kind: 'socket' }>, joint: Joint, torque: number): Mark {
  const fit = openingOnHead(socket.size, joint.size, torque);
  return socket.points === 12 && joint.rusty ? oneWorse(fit) : fit;
}

function endReach(form: 'ring' | 'ratchet-ring' | 'open' | 'flare', joint: Joint, torque: number): Mark {
  switch (form) {
    case 'ring':
      return ringReach(joint.access, false);
    case 'ratchet-ring':
      return ringReach(joint.access, true);
    case 'open':
      return openEndReach(joint, torque);
    case 'flare':
      // Made for the soft nuts of pipes; the table gives it no column for bolts.
      return null;
  }
}

/** A ring struck with a hammer undoes more than an arm gives. */
function* struck(bench: Bench, piece: number, fit: Mark, torque: number): Generator<Found> {
  if (torque > STRUCK_RING) return;
  for (const hammer of functionPieces(bench, { fn: 'strike-hard' })) {
    if (hammer.piece === piece) continue;
    const mark = worst('with-care', fit, hammer.grade);
    if (mark !== null) yield { mark, pieces: [piece, hammer.piece], handle: false };
  }
}

function* jawWays(bench: Bench, joint: Joint, crew: Crew): Generator<Found> {
  const torque = torqueToUndo(joint);
  const width = flatsWidth(joint.size);
  if (width === null) return;
  for (const { piece, offer } of held(bench, 'adjustable')) {
    if (width < offer.from || width > offer.to) continue;
    const lever = leverMark(WRENCH_LEVER * offer.length, torque, joint.stance, crew);
    yield* single(piece, worst(adjustableReach(joint, offer.jaw, torque), lever));
  }
  for (const { piece, offer } of held(bench, 'pliers')) {
    if (width > offer.to) continue;
    const lever = leverMark(WRENCH_LEVER * offer.length, torque, joint.stance, crew);
    yield* single(piece, worst(pliersReach(joint, offer.form, torque), lever));
  }
}
