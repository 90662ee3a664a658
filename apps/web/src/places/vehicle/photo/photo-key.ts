import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { keyOf } from '../walk/next-place.ts';

/** Names the photo of a place through all changes of its fitting. */
export function photoKey(vehicle: string, row: Pick<FittingRow, 'place' | 'position'>): string {
  return `${vehicle}/${keyOf(row)}`;
}
