import type { Kilograms, Metres, NewtonMetres } from '../quantity/units.ts';
import { metres, newtonMetres, STANDARD_GRAVITY } from '../quantity/units.ts';
import type { Grade, Joint } from '../repairing/scene.ts';

/** Pull of one person, N: with ease (HSE risk filter L23, men, push or pull to start) and hard (common practice 300-400). */
export const EASY_PULL = 200;
export const HARD_PULL = 350;
/** Share of the body that hangs on a bar, and the levers from which it may (common practice). */
const BODY_SHARE = 0.7;
const BODY_PROPER = 0.4;
const BODY_WITH_CARE = 0.25;
/** Where the hand is, as a share of the length of a wrench and of a handle. */
const WRENCH_SHARE = 0.85;
const HANDLE_SHARE = 0.95;
/** How far a tube is pushed over its bar, m. */
const TUBE_OVERLAP = 0.15;
/** Below this any tool serves, N m. */
const LITTLE = 2;
/** A vehicle marked rusty is undone at this times the tightening torque (common practice 1.3-2; no source seen). */
const RUST = 1.5;
/** Up to which a ring struck with a hammer undoes, N m (common practice). */
export const STRUCK_RING = 200;

/** Who pulls, and from where. */
export interface Puller {
  readonly stance: Joint['stance'];
  readonly heaviest: Kilograms;
}

/** Torque to undo, N m: what it was tightened to, more when rusted in. */
export function torqueToUndo(joint: Pick<Joint, 'torque' | 'rusty'>): NewtonMetres {
  return newtonMetres(joint.torque * (joint.rusty ? RUST : 1));
}

export function wrenchLever(length: Metres): Metres {
  return metres(WRENCH_SHARE * length);
}

export function handleLever(length: Metres): Metres {
  return metres(HANDLE_SHARE * length);
}

/** A tube slid over a bar; never over a ratchet, whose pawls would strip. */
export function tubeLever(bar: Metres, tube: Metres): Metres {
  return metres(bar + tube - TUBE_OVERLAP);
}

/** The most a lever gives, N m, at each grade (M2 "Lever"). Body weight counts for who stands beside the vehicle. */
export function leverTorque(
  lever: Metres,
  { stance, heaviest }: Puller,
): { readonly proper: NewtonMetres; readonly withCare: NewtonMetres } {
  const body = stance === 'standing' ? BODY_SHARE * heaviest * STANDARD_GRAVITY * lever : 0;
  const proper = Math.max(EASY_PULL * lever, lever >= BODY_PROPER ? body : 0);
  const withCare = Math.max(proper, HARD_PULL * lever, lever >= BODY_WITH_CARE ? body : 0);
  return { proper: newtonMetres(proper), withCare: newtonMetres(withCare) };
}

/** How well a lever gives a torque to these people; null when it does not. */
export function leverGrade(lever: Metres, torque: NewtonMetres, puller: Puller): Grade | null {
  if (torque < LITTLE) return 'proper';
  const { proper, withCare } = leverTorque(lever, puller);
  return torque <= proper ? 'proper' : torque <= withCare ? 'with-care' : null;
}
