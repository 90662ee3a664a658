import type { Trust } from './words.ts';

/** Kilometres that a repair of each trust may carry the vehicle; null: to the end of the trip (M4, estimate). */
export const TRUST_KM: Readonly<Record<Trust, number | null>> = { T0: 0, T1: 1, T2: 50, T3: 300, T4: null };
