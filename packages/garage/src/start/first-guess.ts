/**
 * The trip a new vehicle gets until its owner says better: a long weekend on gravel (estimate). Plain values, so that a screen
 * can tell whether anybody has touched it.
 */
export const FIRST_LEG = { km: 400, surface: 'gravel', helpKm: 80, stones: 'gravel' } as const;
export const FIRST_STAY = { days: 3, campNights: 2 } as const;
