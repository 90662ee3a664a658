import { isCritical } from '../fastening/access.ts';
import { fitOf, gradeOfFit } from '../fastening/fit.ts';
import { GradedPieces } from './graded.ts';
import { bestBitFit } from './inside-drives.ts';
import type { Joint, SquareDrive } from './scene.ts';
import type { Toolbox } from './toolbox.ts';
import type { Task } from './turning.ts';

/** What can hold the other end of a joint (M3): by hand, or on a handle of some drive that stands still. */
export interface Holding {
  readonly alone: GradedPieces;
  readonly driven: ReadonlyMap<SquareDrive, GradedPieces>;
}

/**
 * Everything on the table that holds the far side. The record does not say how that side is reached, so only size and shape
 * are asked; a near size holds at the grade at which it would turn.
 */
export function holdWays(toolbox: Toolbox, task: Task, hold: NonNullable<Joint['hold']>): Holding {
  const alone = new GradedPieces();
  const driven = new Map<SquareDrive, GradedPieces>();
  const onDrive = (drive: SquareDrive): GradedPieces => {
    const pieces = driven.get(drive) ?? new GradedPieces();
    driven.set(drive, pieces);
    return pieces;
  };
  if (hold.drive === 'hex' || hold.drive === 'flare') holdFlats(toolbox, task, hold, alone, onDrive);
  else {
    for (const { piece, offer } of [...toolbox.of('key'), ...toolbox.of('driver')])
      if (offer.head === hold.drive) alone.put(piece, bestBitFit(offer.sizes, hold.size));
    for (const { piece, offer } of toolbox.of('bit-socket'))
      if (offer.head === hold.drive) onDrive(offer.drive).put(piece, bestBitFit(offer.sizes, hold.size));
  }
  return { alone, driven };
}

function holdFlats(
  toolbox: Toolbox,
  { joint, torque, openings }: Task,
  { size }: NonNullable<Joint['hold']>,
  alone: GradedPieces,
  onDrive: (drive: SquareDrive) => GradedPieces,
): void {
  for (const { piece, offer } of toolbox.of('wrench'))
    for (const end of offer.ends) alone.put(piece, gradeOfFit(fitOf(end.size, size, openings), torque));
  for (const { piece, offer } of toolbox.of('socket'))
    onDrive(offer.drive).put(piece, gradeOfFit(fitOf(offer.size, size, openings), torque));
  if (size.kind !== 'across-flats' || isCritical(joint)) return;
  for (const { piece, offer } of toolbox.of('adjustable'))
    if (offer.jaw !== 'pipe' && size.width >= offer.from && size.width <= offer.to)
      alone.put(piece, 'with-care');
  for (const { piece, offer } of toolbox.of('pliers'))
    if (offer.form === 'locking' && size.width <= offer.to) alone.put(piece, 'last-resort');
}
