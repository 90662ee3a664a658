import type { Garage } from '@waymend/garage/record/schema';
import type { StartNames } from '@waymend/garage/start/from-pattern';

/** What the trip screens ask of the worker, and what it replies; each kind starts with 'trip/'. */
export type TripRequest =
  /** A vehicle or trailer of a pattern into the garage; a trailer is hitched to `hitchTo`. Answered by 'trip/started'. */
  | {
      readonly kind: 'trip/start';
      readonly garage: Garage;
      readonly pattern: string;
      readonly names: StartNames;
      readonly hitchTo: string | null;
    }
  /** Every repair there is, for people's practice and the jobs a kit must do. */
  | { readonly kind: 'trip/jobs' };

export type TripReply =
  | {
      readonly kind: 'trip/started';
      readonly garage: Garage;
      readonly vehicle: string;
      readonly trip: string | null;
    }
  | { readonly kind: 'trip/jobs'; readonly jobs: readonly ListedJob[] };

/** A repair as a list shows it. */
export interface ListedJob {
  readonly id: string;
  readonly title: string;
  readonly system: string;
  /** 1..5, see the words of each step on the people's sheet. */
  readonly skill: number;
  readonly people: number;
}
