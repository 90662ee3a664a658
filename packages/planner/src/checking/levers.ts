import type { Crew, Joint, SquareDrive } from '@waymend/core/repairing/scene';
import type { Mark } from './marks.ts';

/** Torque to undo, arms, body weight and square drives (M2), written again for the checker. */

const EASY_PULL = 200;
const HARD_PULL = 350;
const BODY_SHARE = 0.7;
const GRAVITY = 9.80665;
const RUST = 1.5;
const LITTLE = 2;

export const WRENCH_LEVER = 0.85;
export const HANDLE_LEVER = 0.95;
/** How far a tube is pushed onto a bar, m. */
const TUBE_OVERLAP = 0.15;
/** Up to which a ring struck with a hammer undoes, N m. */
export const STRUCK_RING = 200;
/** Above this pawls strip, N m. */
export const RATCHET = 80;
/** What a hand turns with a spinner, N m; a screwdriver is turned the same way. */
export const SPINNER = 6;

export const DRIVE_LIMIT: Readonly<Record<SquareDrive, number>> = {
  '1/4 in': 30,
  '3/8 in': 100,
  '1/2 in': 300,
  '3/4 in': 800,
  '1 in': 1500,
};

export function torqueToUndo(joint: Joint): number {
  return joint.torque * (joint.rusty ? RUST : 1);
}

/** Whether a lever of this length gives this torque to these people, and how well. */
export function leverMark(lever: number, torque: number, stance: Joint['stance'], crew: Crew): Mark {
  if (torque < LITTLE) return 'proper';
  const weight = stance === 'standing' ? BODY_SHARE * crew.heaviest * GRAVITY : 0;
  if (torque <= EASY_PULL * lever || (lever >= 0.4 && torque <= weight * lever)) return 'proper';
  if (torque <= HARD_PULL * lever || (lever >= 0.25 && torque <= weight * lever)) return 'with-care';
  return null;
}

export function tubeLever(bar: number, tube: number): number {
  return bar + tube - TUBE_OVERLAP;
}
