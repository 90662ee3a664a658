import type { Metres } from '../quantity/units.ts';

/**
 * What part of a mass at `x` behind the front axle each axle carries, by moments about the front axle (statics). A mass
 * behind the rear axle puts more than itself on the rear and lifts the front: the front share is then negative.
 */
export function axleShare(x: Metres, wheelbase: Metres): { readonly front: number; readonly rear: number } {
  const rear = x / wheelbase;
  return { front: 1 - rear, rear };
}
