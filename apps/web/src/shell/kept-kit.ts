import type { CarriedLine } from '@waymend/planner/views/carried';

/**
 * The kit of a trip as it was last planned, kept on this device: at the roadside a card must not wait for a proof. Not part of
 * the record, which holds nothing that is computed.
 */
const KEY = 'waymend.kit.';

/** Null when none was kept, or the browser forbids its store. */
export function keptKit(trip: string): readonly CarriedLine[] | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY + trip) ?? 'null');
    return Array.isArray(found) ? found.flatMap(lineOf) : null;
  } catch {
    return null;
  }
}

export function keepKit(trip: string, kit: readonly CarriedLine[]): void {
  try {
    localStorage.setItem(KEY + trip, JSON.stringify(kit.map(({ id, copies }) => ({ id, copies }))));
  } catch {
    // The next visit waits for the plan.
  }
}

function lineOf(value: unknown): readonly CarriedLine[] {
  if (typeof value !== 'object' || value === null) return [];
  const id: unknown = Reflect.get(value, 'id');
  const copies: unknown = Reflect.get(value, 'copies');
  return typeof id === 'string' && typeof copies === 'number' ? [{ id, copies }] : [];
}
