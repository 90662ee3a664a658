import type { Fit } from './grade.ts';
import { openingOnHead } from './fast.ts';
import { screwFit } from './screw.ts';
import type { Size } from '../fastening/size.ts';
import { sameSize } from './fast.ts';
import type { Bench } from './bench.ts';
import { standingTrain } from './drive-train.ts';
import type { NeedPool } from './need-pool.ts';
import type { Joint, SquareDrive } from '../repairing/scene.ts';
import { isCritical } from './turn-hex.ts';
import type { TurnWay } from './turn-way.ts';
import { single, torqueToUndo } from './turn-way.ts';

/**
 * Ways to hold the other end of a joint still (M3). How that end is reached the record does not say, so reach is not asked.
 */
export function holdWays(
  pool: NeedPool,
  bench: Bench,
  joint: Joint,
  hold: NonNullable<Joint['hold']>,
): readonly TurnWay[] {
  const torque = torqueToUndo(joint);
  const ways: TurnWay[] = [];
  const standing = (piece: number, fit: Fit, drive: SquareDrive) => {
    if (fit === null) return;
    const need = standingTrain(pool, bench, drive, torque, bench.trainParts.has(piece) ? piece : undefined);
    if (need !== null) ways.push({ pieces: [piece], needs: [need], grade: fit, handle: true });
  };
  if (hold.drive === 'hex' || hold.drive === 'flare') {
    for (const { piece, offer } of bench.of('wrench')) {
      for (const end of offer.ends) ways.push(...single(piece, openingOnHead(end.size, hold.size, torque)));
    }
    for (const { piece, offer } of bench.of('socket'))
      standing(piece, openingOnHead(offer.size, hold.size, torque), offer.drive);
    ways.push(...jaws(bench, joint, hold.size));
    return ways;
  }
  const loose = hold.drive === 'cross' || hold.drive === 'slot';
  const fit = (size: Size): Fit =>
    loose ? screwFit(size, hold.size) : sameSize(size, hold.size) ? 'proper' : null;
  for (const { piece, offer } of [...bench.of('key'), ...bench.of('driver')]) {
    if (offer.head === hold.drive) for (const size of offer.sizes) ways.push(...single(piece, fit(size)));
  }
  for (const { piece, offer } of bench.of('bit-socket')) {
    if (offer.head === hold.drive) for (const size of offer.sizes) standing(piece, fit(size), offer.drive);
  }
  return ways;
}

function jaws(bench: Bench, joint: Joint, head: Size): TurnWay[] {
  if (head.kind !== 'across-flats' || isCritical(joint)) return [];
  const { width } = head;
  const ways: TurnWay[] = [];
  for (const { piece, offer } of bench.of('adjustable')) {
    if (offer.jaw !== 'pipe' && width >= offer.from && width <= offer.to)
      ways.push(...single(piece, 'with-care'));
  }
  for (const { piece, offer } of bench.of('pliers')) {
    if (offer.form === 'locking' && width <= offer.to) ways.push(...single(piece, 'last-resort'));
  }
  return ways;
}
