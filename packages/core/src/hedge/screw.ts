import { MM_PER_INCH } from '../quantity/units.ts';
import type { SquareDrive } from '../repairing/scene.ts';
import type { Fit } from './grade.ts';
import type { Size } from '../fastening/size.ts';
import { sameSize } from './fast.ts';

/** Widths that slot blades are made in, mm (ISO 2380-1, recalled, not re-read). */
const BLADES = [2, 2.5, 3, 3.5, 4, 4.5, 5.5, 6.5, 8, 10, 12, 14];

/** A cross or slot of the same size, or of the next one up or down with care (M2). */
export function screwFit(tool: Size, head: Size): Fit {
  if (sameSize(tool, head)) return 'proper';
  if (tool.kind === 'cross' && head.kind === 'cross')
    return Math.abs(tool.number - head.number) === 1 ? 'with-care' : null;
  if (tool.kind === 'slot' && head.kind === 'slot') {
    return Math.abs(bladeStep(tool.width * 1000) - bladeStep(head.width * 1000)) <= 1 ? 'with-care' : null;
  }
  return null;
}

/** Which blade of the series a width is nearest to. */
function bladeStep(mm: number): number {
  let nearest = 0;
  BLADES.forEach((blade, step) => {
    if (Math.abs(blade - mm) < Math.abs((BLADES[nearest] ?? 0) - mm)) nearest = step;
  });
  return nearest;
}

/** The square drive whose bare end fits a plug: 3/8 in or 10 mm, 1/2 in or 13 mm; null for other sizes (M2). */
export function plugDrive(head: Size): SquareDrive | null {
  if (head.kind !== 'across-flats') return null;
  const is = (mm: number) => Math.abs(head.width * 1000 - mm) < 1e-4;
  if (is((3 / 8) * MM_PER_INCH) || is(10)) return '3/8 in';
  return is(MM_PER_INCH / 2) || is(13) ? '1/2 in' : null;
}
