import { fitOf, gradeOfFit } from '../fastening/fit.ts';
import { leverGrade, wrenchLever } from '../fastening/lever.ts';
import { worstOf } from './grade.ts';
import type { Grade } from './scene.ts';
import type { Toolbox } from './toolbox.ts';
import type { Task, Turning } from './turning.ts';

/** Flare nuts of pipes are soft: their own wrenches; an open end as a last resort off the brakes, never on them (M2). */
export function turnFlare(toolbox: Toolbox, task: Task, turning: Turning): void {
  const { joint, torque, puller, openings } = task;
  const grip = (form: 'ring' | 'ratchet-ring' | 'open' | 'flare'): Grade | null => {
    if (form === 'flare') return 'proper';
    return form === 'open' && joint.critical !== 'brake' ? 'last-resort' : null;
  };
  for (const { piece, offer } of toolbox.of('wrench')) {
    const lever = leverGrade(wrenchLever(offer.length), torque, puller);
    for (const end of offer.ends) {
      const fit = gradeOfFit(fitOf(end.size, joint.size, openings), torque);
      turning.alone.put(piece, worstOf(grip(end.form), fit, lever));
    }
  }
  for (const { piece, offer } of toolbox.of('crow-foot')) {
    const fit = gradeOfFit(fitOf(offer.size, joint.size, openings), torque);
    const ask = { drive: offer.drive, reach: 'straight', torque, puller, ownDrive: false } as const;
    turning.drive(piece, worstOf(grip(offer.form), fit), ask);
  }
}

/** Ring nuts of hubs: a socket whose range covers the size; drift and hammer as a last resort (M2). */
export function turnRingNut(toolbox: Toolbox, { joint, torque, puller }: Task, turning: Turning): void {
  const form = joint.drive === 'locknut-hex' ? 'hex' : 'peg';
  for (const { piece, offer } of toolbox.of('locknut-socket')) {
    if (offer.form !== form || joint.size.kind !== 'across-flats') continue;
    const { width } = joint.size;
    const covers = width >= offer.from && width <= offer.to;
    const ask = { drive: offer.drive, reach: 'straight', torque, puller, ownDrive: false } as const;
    turning.drive(piece, covers ? 'proper' : null, ask);
  }
  for (const { piece } of toolbox.doing('drive-drift')) turning.drifts.put(piece, 'last-resort');
}
