import type { BalloonGroup } from './balloons.ts';
import type { ChanceScale } from './chance-scale.ts';
import type { MassScale } from './mass-scale.ts';
import type { Step } from './steps.ts';

/** Where the parts of the drawing lie, in pixels of its own. */
export interface Frame {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Line of the chain dimensions. */
  readonly chain: number;
  readonly height: number;
}

/** Room beneath the axis: its numbers and the grip, then the dimensions; on a phone they stand beside the grip. */
const GRIP = 62;
/** Half the grip, with a little air: what the dimensions beside it leave free. */
export const BESIDE_GRIP = 28;
const CHAIN = 32;

export function frameFor(width: number, plot: number): Frame {
  const compact = width < 560;
  const top = compact ? 12 : 28;
  const bottom = top + plot;
  return {
    width,
    left: compact ? 62 : 86,
    right: width - (compact ? 6 : 24),
    top,
    bottom,
    chain: bottom + (compact ? GRIP - 8 : GRIP + CHAIN - 6),
    height: bottom + GRIP + (compact ? 0 : CHAIN + 2),
  };
}

/** The staircase from one step to another: level until the next kit weighs enough, then straight up. */
export function stairPath(
  steps: readonly Step[],
  from: number,
  to: number,
  mass: MassScale,
  chance: ChanceScale,
  bottom: number,
): string {
  const first = steps[from];
  if (first === undefined) return '';
  let path =
    from === 0
      ? `M${round(mass.x(first.grams))} ${bottom}V${round(chance.y(1 - first.unaided))}`
      : `M${round(mass.x(first.grams))} ${round(chance.y(1 - first.unaided))}`;
  for (const step of steps.slice(from + 1, to + 1))
    path += `H${round(mass.x(step.grams))}V${round(chance.y(1 - step.unaided))}`;
  return path;
}

export interface PlacedGroup extends BalloonGroup {
  /** Where the leader touches the riser. */
  readonly at: { readonly x: number; readonly y: number };
  /** Centre of the first balloon. */
  readonly x: number;
  readonly y: number;
}

/** Balloons stand right of their riser, one under another, and never touch. */
export function placeBalloons(
  groups: readonly BalloonGroup[],
  steps: readonly Step[],
  mass: MassScale,
  chance: ChanceScale,
  frame: Frame,
  handle: number,
): readonly PlacedGroup[] {
  const apart = 30;
  let above = frame.top;
  return groups.flatMap((group) => {
    const step = steps[group.step];
    if (step === undefined) return [];
    const before = steps[group.step - 1];
    const high = chance.y(1 - step.unaided);
    const low = before === undefined ? frame.bottom : chance.y(1 - before.unaided);
    const at = { x: mass.x(step.grams), y: (high + low) / 2 };
    const y = Math.min(Math.max(at.y + 22, above + apart), frame.bottom - 14);
    if (y - above < apart - 2) return [];
    above = y;
    const x = at.x + 46 + (y - at.y) * 0.35;
    const end = x + (group.numbers.length - 1) * 27 + 13;
    // Clear of the handle's line: before it where there is room, else behind it.
    const clear =
      end < handle - 4 || x - 13 > handle + 4
        ? x
        : end - x + at.x + 30 < handle
          ? x - (end - handle) - 6
          : handle + 20;
    return [{ ...group, at, x: clear, y }];
  });
}

export function round(value: number): number {
  return Math.round(value * 10) / 10;
}
