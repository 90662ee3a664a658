/** The day of leaving as it was last said for a trip, while the page is open: a question of the moment, no part of the record. */
const said = new Map<string, string>();

export function leavingDay(trip: string | null): string | null {
  return trip === null ? null : (said.get(trip) ?? null);
}

export function sayLeavingDay(trip: string, day: string): void {
  said.set(trip, day);
}
