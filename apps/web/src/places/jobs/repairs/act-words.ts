import type { Refusal, Result } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';

/** A change of the record that may be refused. */
export type Change = (garage: Garage) => Result<Garage>;

/** The change as the record takes it: tried on the garage that stands at that moment, and left out if it does not fit. */
export function asEdit(change: Change): (garage: Garage) => Garage {
  return (garage) => {
    const changed = change(garage);
    return changed.ok ? changed.value : garage;
  };
}

export function refusalOf(garage: Garage, change: Change): Refusal | null {
  const tried = change(garage);
  return tried.ok ? null : tried.error;
}
