import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import { CARE_RULE_BY_ID } from '@waymend/catalogue/care/all';
import { FAILURES } from '@waymend/catalogue/failures/all';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { PLACE_IDS } from '@waymend/catalogue/shape/place-ids';
import { GROUPS, SYSTEMS } from '@waymend/catalogue/shape/words';

/** Ids of the catalogue that a garage may name. */
export interface KnownIds {
  readonly belongings: ReadonlySet<string>;
  readonly places: ReadonlySet<string>;
  readonly patterns: ReadonlySet<string>;
  readonly groups: ReadonlySet<string>;
  readonly systems: ReadonlySet<string>;
  readonly jobs: ReadonlySet<string>;
  readonly failures: ReadonlySet<string>;
  readonly expedients: ReadonlySet<string>;
  readonly careRules: ReadonlySet<string>;
}

/** What the shipped catalogue knows. */
export const SHIPPED_IDS: KnownIds = {
  belongings: new Set(BELONGING_BY_ID.keys()),
  places: new Set<string>(PLACE_IDS),
  patterns: new Set(PATTERNS.map(({ id }) => id)),
  groups: new Set<string>(GROUPS),
  systems: new Set<string>(SYSTEMS),
  jobs: new Set(JOBS.map(({ id }) => id)),
  failures: new Set(FAILURES.map(({ id }) => id)),
  expedients: new Set(JOBS.flatMap(({ expedients }) => expedients.map(({ id }) => id))),
  careRules: new Set(CARE_RULE_BY_ID.keys()),
};
