import { bitReachOf } from '../fastening/access.ts';
import { SPINNER_LIMIT } from '../fastening/drive-limit.ts';
import { isSameSize } from '../fastening/fit.ts';
import { leverGrade } from '../fastening/lever.ts';
import { bitFit } from '../fastening/bit-fit.ts';
import type { Size } from '../fastening/size.ts';
import { inches, millimetres } from '../quantity/units.ts';
import { reachLeft } from './drive-train.ts';
import { betterOf, worstOf } from './grade.ts';
import type { Grade, SquareDrive } from './scene.ts';
import type { Toolbox } from './toolbox.ts';
import type { Task, Turning } from './turning.ts';

/** How the best of a tool's sizes sits in, or on, a head that takes bits. */
export function bestBitFit(sizes: readonly Size[], head: Size): Grade | null {
  return sizes.reduce<Grade | null>((best, size) => betterOf(best, bitFit(size, head)), null);
}

/** Keys, lobes inside and outside, splines, square plugs, cross and slot (M2 "Inside drives"). */
export function turnInside(toolbox: Toolbox, task: Task, turning: Turning): void {
  const { joint, torque, puller } = task;
  const { drive, size } = joint;
  const reached = bitReachOf(joint.access);
  if (reached !== null) {
    for (const { piece, offer } of toolbox.of('bit-socket')) {
      if (offer.head !== drive) continue;
      const ask = { drive: offer.drive, reach: reached.reach, torque, puller, ownDrive: false };
      turning.drive(piece, worstOf(reached.grade, bestBitFit(offer.sizes, size)), ask);
    }
  }
  for (const { piece, offer } of toolbox.of('key')) {
    if (offer.head !== drive) continue;
    turning.alone.put(piece, worstOf(bestBitFit(offer.sizes, size), leverGrade(offer.arm, torque, puller)));
  }
  // A screwdriver is twirled like a spinner: the rule gives it no lever.
  for (const { piece, offer } of toolbox.of('driver'))
    if (offer.head === drive && torque <= SPINNER_LIMIT)
      turning.alone.put(piece, bestBitFit(offer.sizes, size));
  if (drive === 'square') turnWithBareEnd(toolbox, task, turning);
}

/** Plugs that take the bare square of a handle or an extension: 3/8 in or 10 mm, 1/2 in or 13 mm. */
const PLUG_DRIVES: readonly { readonly drive: SquareDrive; readonly sizes: readonly Size[] }[] = [
  {
    drive: '3/8 in',
    sizes: [flats('3/8 in', inches(3 / 8), 'inch'), flats('10 mm', millimetres(10), 'metric')],
  },
  {
    drive: '1/2 in',
    sizes: [flats('1/2 in', inches(1 / 2), 'inch'), flats('13 mm', millimetres(13), 'metric')],
  },
];

function flats(label: string, width: ReturnType<typeof inches>, system: 'metric' | 'inch'): Size {
  return { kind: 'across-flats', label, width, system };
}

function turnWithBareEnd(toolbox: Toolbox, { joint, torque, puller }: Task, turning: Turning): void {
  const plug = PLUG_DRIVES.find(({ sizes }) => sizes.some((size) => isSameSize(size, joint.size)));
  const reached = bitReachOf(joint.access);
  if (plug === undefined || reached === null) return;
  const { drive } = plug;
  const grade = worstOf('with-care', reached.grade);
  turning.bareEnd(grade, { drive, reach: reached.reach, torque, puller, ownDrive: true });
  for (const { piece, offer } of toolbox.of('extension')) {
    if (offer.drive !== drive) continue;
    const reach = reachLeft(reached.reach, offer.length);
    turning.drive(piece, grade, { drive, reach, torque, puller, ownDrive: false });
  }
}
