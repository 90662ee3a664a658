import type { NewtonMetres } from '../quantity/units.ts';
import { newtonMetres } from '../quantity/units.ts';
import type { SquareDrive, ToolOffer } from '../repairing/scene.ts';

export type HandleOffer = Extract<ToolOffer, { kind: 'handle' }>;

export const SQUARE_DRIVES: readonly SquareDrive[] = ['1/4 in', '3/8 in', '1/2 in', '3/4 in', '1 in'];

/** What a square drive is worked to, N m (common practice: well under 0.7 of the recalled test torques). */
export const DRIVE_LIMIT: Readonly<Record<SquareDrive, NewtonMetres>> = {
  '1/4 in': newtonMetres(30),
  '3/8 in': newtonMetres(100),
  '1/2 in': newtonMetres(300),
  '3/4 in': newtonMetres(800),
  '1 in': newtonMetres(1500),
};

/** Test torques of ISO 3315 (also DIN 3122), recalled, not re-read: nothing is planned with them, tests bound the limits. */
export const RECALLED_TEST_TORQUE: Readonly<Record<SquareDrive, NewtonMetres>> = {
  '1/4 in': newtonMetres(62),
  '3/8 in': newtonMetres(203),
  '1/2 in': newtonMetres(512),
  '3/4 in': newtonMetres(1412),
  '1 in': newtonMetres(2515),
};

/** Above this the pawls of a ratchet strip, N m. */
export const RATCHET_LIMIT = newtonMetres(80);
/** What fingers turn with a spinner or a screwdriver, N m. */
export const SPINNER_LIMIT = newtonMetres(6);

/**
 * The most a handle undoes, N m, by itself and with drives of these sizes after it: the least of all of them. A torque
 * wrench undoes nothing (TM 9-254 says not to loosen with one).
 */
export function chainLimit(handle: HandleOffer, drives: readonly SquareDrive[]): NewtonMetres {
  if (handle.form === 'torque') return newtonMetres(0);
  const own = [
    handle.max ?? Number.POSITIVE_INFINITY,
    handle.form === 'ratchet' ? RATCHET_LIMIT : Number.POSITIVE_INFINITY,
    handle.form === 'spinner' ? SPINNER_LIMIT : Number.POSITIVE_INFINITY,
    DRIVE_LIMIT[handle.drive],
  ];
  return newtonMetres(Math.min(...own, ...drives.map((drive) => DRIVE_LIMIT[drive])));
}
