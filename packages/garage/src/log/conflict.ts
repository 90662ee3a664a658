import type { Change } from './change.ts';

/** Two or more values for one field, none of whose authors knew of the others. The record shows the last until it is settled. */
export interface Conflict {
  readonly entity: string;
  /** A field; or `EXISTS` where a thing was deleted (false) and changed or restored (true) apart: it stays visible. */
  readonly field: string;
  /** Oldest first; for `EXISTS` the change may be one of another field, the edit that speaks for the thing. */
  readonly values: readonly { readonly value: unknown; readonly change: Change }[];
}
