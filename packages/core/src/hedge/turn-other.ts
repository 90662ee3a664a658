import { bitReach } from './fast.ts';
import { SPINNER_LIMIT } from '../fastening/drive-limit.ts';
import type { Fit } from './grade.ts';
import { betterOf, worstOf } from './grade.ts';
import { leverFit, WRENCH_LEVER } from './fast.ts';
import { openingOnHead } from './fast.ts';
import { plugDrive, screwFit } from './screw.ts';
import type { Size } from '../fastening/size.ts';
import { sameSize } from './fast.ts';
import type { Bench } from './bench.ts';
import type { Crew, Joint } from '../repairing/scene.ts';
import type { Trains, TurnWay } from './turn-way.ts';
import { onTrain, pullOf, single, torqueToUndo } from './turn-way.ts';

/** How a tool that carries several sizes sits on a head: by its best one. */
function bestSize(sizes: readonly Size[], joint: Joint): Fit {
  const loose = joint.drive === 'cross' || joint.drive === 'slot';
  return sizes.reduce<Fit>(
    (best, size) =>
      betterOf(best, loose ? screwFit(size, joint.size) : sameSize(size, joint.size) ? 'proper' : null),
    null,
  );
}

/** Keys, lobes, splines, square plugs, cross and slot (M2 "Inside drives"). */
export function insideWays(bench: Bench, trains: Trains, joint: Joint, crew: Crew): readonly TurnWay[] {
  const torque = torqueToUndo(joint);
  const pull = pullOf(joint, crew);
  const { fit, reach } = bitReach(joint.access);
  const ways: TurnWay[] = [];
  for (const { piece, offer } of bench.of('bit-socket')) {
    if (offer.head !== joint.drive) continue;
    const sits = worstOf(fit, bestSize(offer.sizes, joint));
    if (sits !== null) ways.push(...onTrain(piece, sits, trains.of(offer.drive, reach, pull, piece)));
  }
  for (const { piece, offer } of bench.of('key')) {
    if (offer.head === joint.drive)
      ways.push(...single(piece, worstOf(bestSize(offer.sizes, joint), leverFit(offer.arm, pull))));
  }
  for (const { piece, offer } of bench.of('driver')) {
    if (offer.head === joint.drive && torque <= SPINNER_LIMIT)
      ways.push(...single(piece, bestSize(offer.sizes, joint)));
  }
  if (joint.drive === 'square') ways.push(...bareEnds(bench, trains, joint, crew));
  return ways;
}

/** A square plug takes the bare end of a handle, or of an extension, of its drive: with care. */
function bareEnds(bench: Bench, trains: Trains, joint: Joint, crew: Crew): TurnWay[] {
  const drive = plugDrive(joint.size);
  const { fit, reach } = bitReach(joint.access);
  const sits = worstOf('with-care', fit);
  if (drive === null || sits === null) return [];
  const pull = pullOf(joint, crew);
  const ways: TurnWay[] = onTrain(null, sits, trains.bare(drive, reach, pull));
  for (const { piece, offer } of bench.of('extension')) {
    if (offer.drive !== drive) continue;
    // The extension is itself the reach.
    const left = reach === 'extended' && offer.length >= 0.1 - 1e-9 ? 'straight' : reach;
    ways.push(...onTrain(piece, sits, trains.of(drive, left, pull, piece)));
  }
  return ways;
}

/** Flare nuts of pipes: their own wrenches; an open end as a last resort off the brakes, and never on them (M2). */
export function flareWays(bench: Bench, trains: Trains, joint: Joint, crew: Crew): readonly TurnWay[] {
  const torque = torqueToUndo(joint);
  const pull = pullOf(joint, crew);
  const grip = (form: string): Fit =>
    form === 'flare' ? 'proper' : form === 'open' && joint.critical !== 'brake' ? 'last-resort' : null;
  const ways: TurnWay[] = [];
  for (const { piece, offer } of bench.of('wrench')) {
    const lever = leverFit(WRENCH_LEVER * offer.length, pull);
    for (const end of offer.ends)
      ways.push(
        ...single(piece, worstOf(grip(end.form), openingOnHead(end.size, joint.size, torque), lever)),
      );
  }
  for (const { piece, offer } of bench.of('crow-foot')) {
    const sits = worstOf(grip(offer.form), openingOnHead(offer.size, joint.size, torque));
    if (sits !== null) ways.push(...onTrain(piece, sits, trains.of(offer.drive, 'straight', pull, piece)));
  }
  return ways;
}

/** Ring nuts of hubs: a thin-walled socket whose range covers them; drift and hammer as a last resort (M2). */
export function ringNutWays(bench: Bench, trains: Trains, joint: Joint, crew: Crew): readonly TurnWay[] {
  const ways: TurnWay[] = [];
  const form = joint.drive === 'locknut-hex' ? 'hex' : 'peg';
  if (joint.size.kind === 'across-flats') {
    const { width } = joint.size;
    for (const { piece, offer } of bench.of('locknut-socket')) {
      if (offer.form !== form || width < offer.from || width > offer.to) continue;
      ways.push(...onTrain(piece, 'proper', trains.of(offer.drive, 'straight', pullOf(joint, crew), piece)));
    }
  }
  for (const drift of bench.doing('drive-drift')) {
    for (const hammer of bench.doing('strike-hard')) {
      if (drift.piece === hammer.piece) continue;
      ways.push({ pieces: [drift.piece, hammer.piece], needs: [], grade: 'last-resort', handle: false });
    }
  }
  return ways;
}
