import type { KitState } from '@waymend/core/choosing/kit-state';
import type { Trouble } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { BuiltScene } from '../scene/build-scene.ts';
import { loadedness, tripRates } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { Reading } from './reading.ts';

/**
 * Unaided chance of the kit in `state`, and so many grams of cases, with the rates of the mass really carried (M1, M5): kits are compared at one
 * stated load while they are chosen, and reported at their own. What a job can do does not depend on mass; how often it
 * is needed does, so each failure's remaining share is kept and its rate is taken anew.
 */
export function atRealMass(
  reading: Reading,
  state: KitState,
  built: BuiltScene,
  trade: Trade,
  caseGrams: number,
): Result<number> {
  const ratios = rateRatios(built, trade, state.grams + caseGrams);
  if (!ratios.ok) return ratios;
  const ratio = ratios.value;

  const loss = stillLost(reading, state).reduce(
    (sum, { trouble, share }) => sum + trouble.expected * share * (ratio.get(trouble.failure) ?? 1),
    0,
  );
  return ok(Math.exp(-loss));
}

/** By trouble: the share of its events that this kit does not put right, 0..1; 1 where nothing on the table could. */
export function stillLost(
  reading: Reading,
  state: KitState,
): readonly { readonly trouble: Trouble; readonly share: number }[] {
  const share = new Map<string, number>();
  reading.troubles.forEach((merged, event) => {
    const whole = reading.compiled.problem.events[event]?.loss ?? 0;
    const left = whole > 0 ? (whole - state.gainOf(event)) / whole : 1;
    for (const { id, expected } of merged) if (expected > 0) share.set(id, left);
  });
  return reading.scene.trouble.map((trouble) => ({ trouble, share: share.get(trouble.id) ?? 1 }));
}

/** By failure: its rate with so many grams of kit aboard, over its rate at the load that kits are compared at (M1, M13). */
export function rateRatios(
  { garage, tripId, trip, vehicle, features, rates }: BuiltScene,
  trade: Trade,
  kitGrams: number,
): Result<ReadonlyMap<string, number>> {
  const loaded = loadedness(garage, trip, vehicle, trade, kitGrams);
  if (!loaded.ok) return loaded;
  const now = tripRates(garage, tripId, trip, vehicle, features, trade, loaded.value);
  const planned = new Map(rates.failures.map((f) => [f.failure, f.immobilising]));
  return ok(
    new Map(now.failures.map((f) => [f.failure, ratioOf(f.immobilising, planned.get(f.failure) ?? 0)])),
  );
}

function ratioOf(now: number, planned: number): number {
  return planned > 0 ? now / planned : 1;
}
