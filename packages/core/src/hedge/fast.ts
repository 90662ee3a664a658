import type { Access, ToolOffer } from '../repairing/scene.ts';
import { bitReachOf, reachOf } from '../fastening/access.ts';
import type { Reach } from '../fastening/access.ts';
import { fitOf, gradeOfFit } from '../fastening/fit.ts';
import { leverGrade } from '../fastening/lever.ts';
import type { Size } from '../fastening/size.ts';
import { metres, newtonMetres } from '../quantity/units.ts';
import type { Kilograms } from '../quantity/units.ts';
import { DRIVE_LIMIT, RATCHET_LIMIT, SPINNER_LIMIT } from '../fastening/drive-limit.ts';
import type { SquareDrive } from '../repairing/scene.ts';
import type { Fit } from './grade.ts';
export type { Reach };
export const WRENCH_LEVER = 0.85,
  HANDLE_LEVER = 0.95,
  TUBE_OVERLAP = 0.15,
  RUST_FACTOR = 1.5;
export { isSameSize as sameSize } from '../fastening/fit.ts';
export { STRUCK_RING } from '../fastening/lever.ts';
export const openingOnHead = (t: Size, h: Size, torque: number): Fit =>
  gradeOfFit(fitOf(t, h), newtonMetres(torque));
export interface Pull {
  readonly torque: number;
  readonly stance: 'standing' | 'kneeling' | 'under';
  readonly heaviest: Kilograms;
}
export const leverFit = (l: number, p: Pull): Fit => leverGrade(metres(l), newtonMetres(p.torque), p);
export function handleLimit(h: { form: string; max?: number; drive: SquareDrive }): number | null {
  const own = Math.min(h.max ?? Infinity, DRIVE_LIMIT[h.drive]);
  if (h.form === 'torque') return null;
  if (h.form === 'ratchet') return Math.min(own, RATCHET_LIMIT);
  if (h.form === 'spinner') return Math.min(own, SPINNER_LIMIT);
  return own;
}
type Socket = Extract<ToolOffer, { kind: 'socket' }>;
export const socketReach = (access: Access, s: Socket): { fit: Fit; reach: Reach } => {
  const r = reachOf(
    s.depth === 'deep' ? 'deep-socket' : 'shallow-socket',
    { access, torque: 0, rusty: false },
    s,
  );
  return r === null ? { fit: null, reach: 'straight' } : { fit: r.grade, reach: r.reach };
};
export const bitReach = (access: Access): { fit: Fit; reach: Reach } => {
  const r = bitReachOf(access);
  return r === null ? { fit: null, reach: 'straight' } : { fit: r.grade, reach: r.reach };
};
export const braceReach = (access: Access, depth: 'shallow' | 'deep'): Fit => {
  const r = reachOf(depth === 'deep' ? 'deep-socket' : 'shallow-socket', { access, torque: 0, rusty: false });
  return r === null || r.reach !== 'straight' ? null : r.grade;
};
export const form = (f: Parameters<typeof reachOf>[0], access: Access, torque: number, rusty: boolean): Fit =>
  reachOf(f, { access, torque, rusty })?.grade ?? null;
export const openEndReach = (a: Access, t: number, r: boolean): Fit => form('open-end', a, t, r);
export const adjustableReach = (a: Access, jaw: string, t: number): Fit =>
  jaw === 'pipe' ? null : form(jaw === 'parallel' ? 'parallel-jaw' : 'adjustable', a, t, false);
export const pliersReach = (a: Access, f: string, t: number): Fit =>
  form(f === 'locking' ? 'locking-pliers' : 'water-pump-pliers', a, t, false);
export const ringReach = (a: Access, ratchet: boolean): Fit =>
  form(ratchet ? 'ratchet-ring' : 'ring', a, 0, false);
