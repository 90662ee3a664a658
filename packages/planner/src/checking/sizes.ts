import type { Joint } from '@waymend/core/repairing/scene';
import type { Mark } from './marks.ts';

/** Sizes and fit (M2 "Opening on head", "Inside drives"), written again for the checker. */
export type Size = Joint['size'];
export type Flats = Extract<Size, { kind: 'across-flats' }>;

const MM = 0.001;
const INCH = 0.0254;

/** ISO 691 least openings, mm over the nominal width (recalled, not re-read). */
const LEAST_OVER: readonly (readonly [nominal: number, over: number])[] = [
  [8, 0.03],
  [10, 0.04],
  [13, 0.04],
  [16, 0.05],
  [17, 0.05],
  [19, 0.06],
  [22, 0.06],
  [24, 0.06],
  [27, 0.08],
  [30, 0.08],
];

/** The narrowest a tool marked with this width may be, m. */
export function leastOpening(tool: Flats): number {
  if (tool.system === 'inch') return 1.005 * tool.width + 0.001 * INCH;
  const nominal = tool.width / MM;
  // Between listed sizes the smaller deviation holds: the one listed below, since they never fall; outside, the nearest.
  const listed = LEAST_OVER.filter(([size]) => size <= nominal + 1e-6).at(-1) ?? LEAST_OVER[0];
  return tool.width + (listed?.[1] ?? 0) * MM;
}

const SAME = 1e-7;

/**
 * How a tool of one nominal width sits on a head of another.
 *
 * @param torque To undo, N m: near sizes are good for so much only.
 */
export function openingOnHead(tool: Size, head: Size, torque: number): Mark {
  if (tool.kind !== 'across-flats' || head.kind !== 'across-flats') return null;
  if (Math.abs(tool.width - head.width) < SAME) return 'proper';
  if (leastOpening(tool) < head.width || tool.width < head.width * (1 - 0.003)) return null;
  const oversize = (tool.width - head.width) / head.width;
  if (oversize <= 0.005) return 'with-care';
  if (oversize <= 0.011) return torque <= 80 ? 'with-care' : null;
  if (oversize <= 0.02) return torque <= 25 ? 'last-resort' : null;
  return null;
}

/** Keys, lobes, splines, square bits: the same size or nothing. */
export function sameSize(tool: Size, head: Size): boolean {
  switch (tool.kind) {
    case 'across-flats':
      return head.kind === 'across-flats' && Math.abs(tool.width - head.width) < SAME;
    case 'lobe':
      return head.kind === 'lobe' && tool.family === head.family && tool.number === head.number;
    case 'spline':
      return head.kind === 'spline' && tool.thread === head.thread;
    case 'cross':
      return head.kind === 'cross' && tool.number === head.number;
    case 'slot':
      return head.kind === 'slot' && Math.abs(tool.width - head.width) < SAME;
  }
}

/** Widths that slot blades are made in, mm (ISO 2380-1, recalled, not re-read). */
const BLADES = [2, 2.5, 3, 3.5, 4, 4.5, 5.5, 6.5, 8, 10, 12, 14];

/** A cross or slot of the same size, or of the next one up or down with care. */
export function screwFit(tool: Size, head: Size): Mark {
  if (sameSize(tool, head)) return 'proper';
  if (tool.kind === 'cross' && head.kind === 'cross') {
    return Math.abs(tool.number - head.number) === 1 ? 'with-care' : null;
  }
  if (tool.kind === 'slot' && head.kind === 'slot') {
    return Math.abs(bladeStep(tool.width) - bladeStep(head.width)) <= 1 ? 'with-care' : null;
  }
  return null;
}

function bladeStep(width: number): number {
  const gap = (blade: number) => Math.abs(blade - width / MM);
  return BLADES.reduce((found, blade, n) => (gap(blade) < gap(BLADES[found] ?? 0) ? n : found), 0);
}

/** The square drive whose bare end fits this plug: 3/8 in (10 mm counts) or 1/2 in (13 mm counts); null for others. */
export function plugDrive(head: Size): '3/8 in' | '1/2 in' | null {
  if (head.kind !== 'across-flats') return null;
  const is = (width: number) => Math.abs(head.width - width) < SAME;
  if (is((3 / 8) * INCH) || is(10 * MM)) return '3/8 in';
  if (is(INCH / 2) || is(13 * MM)) return '1/2 in';
  return null;
}

/** Nominal width across flats, or null for other shapes. */
export function flatsWidth(head: Size): number | null {
  return head.kind === 'across-flats' ? head.width : null;
}
