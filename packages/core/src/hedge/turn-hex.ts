import { adjustableReach, ringReach, braceReach, openEndReach, pliersReach, socketReach } from './fast.ts';
import type { Fit } from './grade.ts';
import { oneWorse, worstOf } from './grade.ts';
import { leverFit, STRUCK_RING, WRENCH_LEVER } from './fast.ts';
import { openingOnHead } from './fast.ts';
import type { Bench } from './bench.ts';
import type { Crew, Joint } from '../repairing/scene.ts';
import type { Trains, TurnWay } from './turn-way.ts';
import { onTrain, pullOf, single, torqueToUndo } from './turn-way.ts';

/** Where a rounded nut can kill, nothing with a screw or a pivot goes on it. */
export function isCritical(joint: Joint): boolean {
  return joint.critical === 'wheel' || joint.critical === 'brake' || joint.critical === 'steering';
}

/** Every way to turn a hexagon (M2). */
export function hexWays(bench: Bench, trains: Trains, joint: Joint, crew: Crew): readonly TurnWay[] {
  const torque = torqueToUndo(joint);
  const pull = pullOf(joint, crew);
  const ways: TurnWay[] = [];
  for (const { piece, offer } of bench.of('socket')) {
    const size = openingOnHead(offer.size, joint.size, torque);
    if (size === null) continue;
    const { fit, reach } = socketReach(joint.access, offer);
    const sits = worstOf(fit, offer.points === 12 && joint.rusty ? oneWorse(size) : size);
    if (sits !== null) ways.push(...onTrain(piece, sits, trains.of(offer.drive, reach, pull, piece)));
  }
  for (const { piece, offer } of bench.of('brace')) {
    for (const size of offer.sizes) {
      ways.push(
        ...single(
          piece,
          worstOf(
            openingOnHead(size, joint.size, torque),
            braceReach(joint.access, offer.depth),
            leverFit(offer.lever, pull),
          ),
        ),
      );
    }
  }
  for (const { piece, offer } of bench.of('wrench')) {
    const lever = leverFit(WRENCH_LEVER * offer.length, pull);
    for (const end of offer.ends) {
      const sits = worstOf(openingOnHead(end.size, joint.size, torque), endReach(end.form, joint, torque));
      ways.push(...single(piece, worstOf(sits, lever)));
      if (end.form === 'ring' && sits !== null) ways.push(...struck(bench, piece, sits, torque));
    }
  }
  if (!isCritical(joint)) ways.push(...jawWays(bench, joint, crew));
  return ways;
}

function endReach(form: 'ring' | 'ratchet-ring' | 'open' | 'flare', joint: Joint, torque: number): Fit {
  switch (form) {
    case 'ring':
      return ringReach(joint.access, false);
    case 'ratchet-ring':
      return ringReach(joint.access, true);
    case 'open':
      return openEndReach(joint.access, torque, joint.rusty);
    case 'flare':
      // Made for the soft nuts of pipes.
      return null;
  }
}

/** A ring wrench struck with a hammer undoes more than an arm gives. */
function struck(bench: Bench, piece: number, sits: Fit, torque: number): TurnWay[] {
  if (torque > STRUCK_RING) return [];
  return bench.doing('strike-hard').flatMap((hammer): TurnWay[] => {
    const grade = worstOf('with-care', sits, hammer.offer.grade);
    if (grade === null || hammer.piece === piece) return [];
    return [{ pieces: [piece, hammer.piece], needs: [], grade, handle: false }];
  });
}

function jawWays(bench: Bench, joint: Joint, crew: Crew): TurnWay[] {
  if (joint.size.kind !== 'across-flats') return [];
  const { width } = joint.size;
  const torque = torqueToUndo(joint);
  const pull = pullOf(joint, crew);
  const ways: TurnWay[] = [];
  for (const { piece, offer } of bench.of('adjustable')) {
    if (width < offer.from || width > offer.to) continue;
    ways.push(
      ...single(
        piece,
        worstOf(
          adjustableReach(joint.access, offer.jaw, torque),
          leverFit(WRENCH_LEVER * offer.length, pull),
        ),
      ),
    );
  }
  for (const { piece, offer } of bench.of('pliers')) {
    if (width > offer.to) continue;
    ways.push(
      ...single(
        piece,
        worstOf(pliersReach(joint.access, offer.form, torque), leverFit(WRENCH_LEVER * offer.length, pull)),
      ),
    );
  }
  return ways;
}
