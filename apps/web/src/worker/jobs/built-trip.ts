import type { Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { withPeople } from '@waymend/planner/card/job-card';
import type { BuiltScene } from '@waymend/planner/scene/build-scene';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';

/** The scene asked about last: somebody at the roadside asks many things of one garage. */
let kept: { readonly key: string; readonly built: Result<BuiltScene> } | null = null;

/** The scene of a trip with these people on it (null: its own). */
export function builtTrip(
  garage: Garage,
  trip: string,
  people: readonly string[] | null,
): Result<BuiltScene> {
  const asked = people === null ? garage : withPeople(garage, trip, people);
  // What the page sends is plain data: the same garage has the same text.
  const key = JSON.stringify([trip, asked]);
  if (kept?.key !== key) kept = { key, built: buildScene(asked, trip, SHIPPED_TRADE) };
  return kept.built;
}
