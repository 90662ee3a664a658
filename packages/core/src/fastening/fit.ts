import type { NewtonMetres } from '../quantity/units.ts';
import { newtonMetres } from '../quantity/units.ts';
import type { Grade } from '../repairing/scene.ts';
import type { OpeningList } from './opening.ts';
import { openingOf, RECALLED_OPENINGS } from './opening.ts';
import type { Size } from './size.ts';

/** How a tool of one size sits on a head of another (M2 "Opening on head"). */
export type Fit =
  | {
      readonly kind: 'fits';
      readonly grade: Grade;
      /** Greatest torque to undo; null when the fit sets no limit of its own. */
      readonly upTo: NewtonMetres | null;
      /** (W - w) / w on nominal widths; 0 for the same size. */
      readonly oversize: number;
      /** Whether a recalled list decided that it goes on at all: such an answer is to be tried on the vehicle. */
      readonly rests: 'sizes' | 'recalled-openings';
    }
  | {
      readonly kind: 'no';
      readonly why: 'other-shape' | 'does-not-go-on' | 'too-loose';
      readonly oversize: number;
      readonly rests: 'sizes' | 'recalled-openings';
    };

/** Steps of oversize and what each is good for. Our own rule, not a standard's (M2). */
const STEPS: readonly { readonly oversize: number; readonly grade: Grade; readonly upTo: number | null }[] = [
  { oversize: 0.005, grade: 'with-care', upTo: null },
  { oversize: 0.011, grade: 'with-care', upTo: 80 },
  { oversize: 0.02, grade: 'last-resort', upTo: 25 },
];
/** A tool this much under the nominal width of the head may still go on, if its least opening says so. */
const UNDERSIZE = 0.003;
/** Rounding of millimetres and inches to binary fractions, m and as a share. */
const HAIR = 1e-9;

/** Whether two sizes are the same size of the same shape ('1/2 in' and '12.7 mm' are). */
export function isSameSize(a: Size, b: Size): boolean {
  switch (a.kind) {
    case 'across-flats':
      return b.kind === 'across-flats' && Math.abs(a.width - b.width) < HAIR;
    case 'slot':
      return b.kind === 'slot' && Math.abs(a.width - b.width) < HAIR;
    case 'lobe':
      return b.kind === 'lobe' && a.family === b.family && a.number === b.number;
    case 'cross':
      return b.kind === 'cross' && a.number === b.number;
    case 'spline':
      return b.kind === 'spline' && a.thread === b.thread;
  }
}

/**
 * Fit of an opening of nominal width W on a head of nominal width w. It goes on when its least opening is at least w and
 * W >= w (1 - 0.003); then the oversize decides. Direction matters: only the larger tool goes on the smaller head.
 */
export function fitOf(tool: Size, head: Size, openings: OpeningList = RECALLED_OPENINGS): Fit {
  if (isSameSize(tool, head) && tool.kind === 'across-flats')
    return { kind: 'fits', grade: 'proper', upTo: null, oversize: 0, rests: 'sizes' };
  if (tool.kind !== 'across-flats' || head.kind !== 'across-flats')
    return { kind: 'no', why: 'other-shape', oversize: 0, rests: 'sizes' };
  const oversize = (tool.width - head.width) / head.width;
  // Nobody makes an opening below its nominal width, so only a tool smaller than the head needs the list.
  const asked = oversize < 0 && oversize >= -UNDERSIZE - HAIR;
  const rests = asked && openings.status === 'recalled' ? 'recalled-openings' : 'sizes';
  const goesOn = oversize >= 0 || (asked && openingOf(tool, openings).least >= head.width - HAIR);
  if (!goesOn) return { kind: 'no', why: 'does-not-go-on', oversize, rests };
  const step = STEPS.find((s) => oversize <= s.oversize + HAIR);
  if (step === undefined) return { kind: 'no', why: 'too-loose', oversize, rests };
  const upTo = step.upTo === null ? null : newtonMetres(step.upTo);
  return { kind: 'fits', grade: step.grade, upTo, oversize, rests };
}

/** The grade of a fit when so much torque is to be undone; null when it does not go on or cannot bear it. */
export function gradeOfFit(fit: Fit, torque: NewtonMetres): Grade | null {
  if (fit.kind === 'no' || (fit.upTo !== null && torque > fit.upTo)) return null;
  return fit.grade;
}
