import { inMillimetres } from '../quantity/units.ts';
import type { Grade } from '../repairing/scene.ts';
import { isSameSize } from './fit.ts';
import type { Size } from './size.ts';

/** Blade widths in mm that screwdrivers for slots are made in (ISO 2380-1, recalled, not re-read). */
export const SLOT_BLADES_MM: readonly number[] = [2, 2.5, 3, 3.5, 4, 4.5, 5.5, 6.5, 8, 10, 12, 14];

/** Cross and slot (M2 "Inside drives"): the same size is proper, one step up or down goes with care. */
export function screwFit(tool: Size, head: Size): Grade | null {
  if (isSameSize(tool, head)) return 'proper';
  if (tool.kind === 'cross' && head.kind === 'cross')
    return Math.abs(tool.number - head.number) === 1 ? 'with-care' : null;
  if (tool.kind === 'slot' && head.kind === 'slot') {
    const steps = Math.abs(stepOf(inMillimetres(tool.width)) - stepOf(inMillimetres(head.width)));
    return steps <= 1 ? 'with-care' : null;
  }
  return null;
}

/** Everything else that is turned from inside, and lobes from outside: the same size or nothing. */
export function exactFit(tool: Size, head: Size): Grade | null {
  return isSameSize(tool, head) ? 'proper' : null;
}

/** Position of the blade nearest to a width; the narrower one half way between two. */
function stepOf(mm: number): number {
  let nearest = 0;
  SLOT_BLADES_MM.forEach((blade, step) => {
    if (Math.abs(blade - mm) < Math.abs((SLOT_BLADES_MM[nearest] ?? 0) - mm) - 1e-9) nearest = step;
  });
  return nearest;
}
