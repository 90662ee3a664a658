import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { FAILURES } from '@waymend/catalogue/failures/all';
import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { PLACES } from '@waymend/catalogue/places/all';
import { bandCents, priceCents } from '@waymend/catalogue/prices';
import { RATE_FACTORS } from '@waymend/catalogue/rates/all';
import { TYRE_LOAD_INDEX } from '@waymend/catalogue/standards/tyre-load-index';
import { SUBSTITUTIONS } from '@waymend/catalogue/substitutions';
import type { Trade } from './trade.ts';

/** The catalogue as it ships. */
export const SHIPPED_TRADE: Trade = {
  jobs: JOBS,
  places: PLACES,
  groups: FAILURE_GROUPS,
  failures: FAILURES,
  factors: RATE_FACTORS,
  belongings: BELONGINGS,
  sets: BOXED_SETS,
  priceOf: priceCents,
  bandCents,
  substitutions: SUBSTITUTIONS,
  patterns: PATTERNS,
  loadIndex: TYRE_LOAD_INDEX.rows.map((row) => ({ index: row.loadIndex, kg: row.kg })),
};
