import { inMillimetres } from '../quantity/units.ts';
import type { Grade } from '../repairing/scene.ts';
import { isSameSize } from './fit.ts';
import type { Size } from './size.ts';

/** Blade widths in mm that screwdrivers for slots are made in (ISO 2380-1, recalled, not re-read). */
export const SLOT_BLADES_MM: readonly number[] = [2, 2.5, 3, 3.5, 4, 4.5, 5.5, 6.5, 8, 10, 12, 14];

/**
 * How a bit, key or driver sits in, or on, the head it is made for (M2 "Inside drives"): keys, lobes, splines and squares of
 * the same size or not at all; cross and slot also one step up or down, with care.
 */
export function bitFit(tool: Size, head: Size): Grade | null {
  if (isSameSize(tool, head)) return 'proper';
  if (tool.kind === 'cross' && head.kind === 'cross')
    return Math.abs(tool.number - head.number) === 1 ? 'with-care' : null;
  if (tool.kind === 'slot' && head.kind === 'slot') {
    const steps = Math.abs(stepOf(inMillimetres(tool.width)) - stepOf(inMillimetres(head.width)));
    return steps <= 1 ? 'with-care' : null;
  }
  return null;
}

/** Position of the blade nearest to a width; the narrower one half way between two. */
function stepOf(mm: number): number {
  let nearest = 0;
  SLOT_BLADES_MM.forEach((blade, step) => {
    if (Math.abs(blade - mm) < Math.abs((SLOT_BLADES_MM[nearest] ?? 0) - mm) - 1e-9) nearest = step;
  });
  return nearest;
}
