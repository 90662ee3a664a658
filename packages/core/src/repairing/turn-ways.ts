import type { Reach, ToolForm } from '../fastening/access.ts';
import { reachOf } from '../fastening/access.ts';
import { fitOf, gradeOfFit } from '../fastening/fit.ts';
import { leverGrade, STRUCK_RING, wrenchLever } from '../fastening/lever.ts';
import type { Size } from '../fastening/size.ts';
import type { SquareDrive } from './scene.ts';
import type { TrainAsk } from './drive-train.ts';
import { oneWorse, worstOf } from './grade.ts';
import { turnInside } from './inside-drives.ts';
import { turnFlare, turnRingNut } from './pipe-and-ring-nuts.ts';
import type { Grade } from './scene.ts';
import type { Toolbox } from './toolbox.ts';
import type { Task } from './turning.ts';
import { Turning } from './turning.ts';

/** Everything on the table that turns a joint, and at which grade (M2). */
export function turnWays(toolbox: Toolbox, task: Task): Turning {
  const turning = new Turning();
  switch (task.joint.drive) {
    case 'hex':
      turnHex(toolbox, task, turning);
      break;
    case 'flare':
      turnFlare(toolbox, task, turning);
      break;
    case 'locknut-hex':
    case 'locknut-peg':
      turnRingNut(toolbox, task, turning);
      break;
    case 'hex-key':
    case 'lobe':
    case 'lobe-external':
    case 'spline':
    case 'square':
    case 'slot':
    case 'cross':
      turnInside(toolbox, task, turning);
  }
  return turning;
}

/** How an opening sits on the joint's head with the torque to undo on it. */
export function sits(tool: Size, { joint, torque, openings }: Task): Grade | null {
  return gradeOfFit(fitOf(tool, joint.size, openings), torque);
}

export function trainFor(task: Task, drive: SquareDrive, reach: Reach): TrainAsk {
  return { drive, reach, torque: task.torque, puller: task.puller, ownDrive: false };
}

const RING_FORMS: Readonly<Record<'ring' | 'ratchet-ring' | 'open', ToolForm>> = {
  ring: 'ring',
  'ratchet-ring': 'ratchet-ring',
  open: 'open-end',
};

function turnHex(toolbox: Toolbox, task: Task, turning: Turning): void {
  const { joint, torque, puller } = task;
  const head = { ...joint, torque };
  for (const { piece, offer } of toolbox.of('socket')) {
    const reached = reachOf(offer.depth === 'deep' ? 'deep-socket' : 'shallow-socket', head, offer);
    if (reached === null) continue;
    const fit = sits(offer.size, task);
    const kept = offer.points === 12 && joint.rusty ? oneWorse(fit) : fit;
    turning.drive(piece, worstOf(kept, reached.grade), trainFor(task, offer.drive, reached.reach));
  }
  for (const { piece, offer } of toolbox.of('brace')) {
    // It reaches as its depth says, and takes nothing between.
    const reached = reachOf(offer.depth === 'deep' ? 'deep-socket' : 'shallow-socket', head);
    if (reached?.reach !== 'straight') continue;
    const lever = leverGrade(offer.lever, torque, puller);
    for (const size of offer.sizes) turning.alone.put(piece, worstOf(sits(size, task), reached.grade, lever));
  }
  for (const { piece, offer } of toolbox.of('wrench')) {
    const lever = leverGrade(wrenchLever(offer.length), torque, puller);
    for (const end of offer.ends) {
      // Flare ends are for the soft nuts of pipes; the access table has no column for them on bolts.
      if (end.form === 'flare') continue;
      const reached = reachOf(RING_FORMS[end.form], head);
      const on = worstOf(sits(end.size, task), reached?.grade ?? null);
      turning.alone.put(piece, worstOf(on, lever));
      if (end.form === 'ring' && torque <= STRUCK_RING) turning.struck.put(piece, worstOf('with-care', on));
    }
  }
  turnWithJaws(toolbox, task, turning);
}

function turnWithJaws(toolbox: Toolbox, { joint, torque, puller }: Task, turning: Turning): void {
  if (joint.size.kind !== 'across-flats') return;
  const { width } = joint.size;
  const head = { ...joint, torque };
  for (const { piece, offer } of toolbox.of('adjustable')) {
    // Pipe jaws bite round things.
    if (offer.jaw === 'pipe' || width < offer.from || width > offer.to) continue;
    const reached = reachOf(offer.jaw === 'parallel' ? 'parallel-jaw' : 'adjustable', head);
    const lever = leverGrade(wrenchLever(offer.length), torque, puller);
    turning.alone.put(piece, worstOf(reached?.grade ?? null, lever));
  }
  for (const { piece, offer } of toolbox.of('pliers')) {
    if (width > offer.to) continue;
    const reached = reachOf(offer.form === 'locking' ? 'locking-pliers' : 'water-pump-pliers', head);
    const lever = leverGrade(wrenchLever(offer.length), torque, puller);
    turning.alone.put(piece, worstOf(reached?.grade ?? null, lever));
  }
}
