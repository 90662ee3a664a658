import type { Garage } from '@waymend/garage/record/schema';
import type { JobCard, SymptomCard, SymptomListCard } from '@waymend/planner/answer/card-answer';
import type { WireAnswer } from '@waymend/planner/answer/wire-answer';
import type { CauseLine, SystemJobs } from '@waymend/planner/card/job-list';
import type { RepairWay } from '@waymend/planner/card/repair-ways';
import type { CardPiece } from '@waymend/planner/ready/job-pieces';
import type { OpenRepair } from '@waymend/planner/ready/repairs-open';
import type { CarriedLine } from '@waymend/planner/views/carried';
import type { WireQuestion } from '@waymend/planner/wire/wire-answer';

/** What is here: the lines of a planned kit, or null for everything that is owned and ready. */
export type Here = readonly CarriedLine[] | null;

/** What may be said about a card; what is null or absent is not known. */
export interface CardTerms {
  readonly here: Here;
  /** People who are here, by id; null: those of the trip. */
  readonly people: readonly string[] | null;
  readonly dark: boolean;
  readonly helpKm: number | null;
  readonly daylightHours: number | null;
  readonly waterDays: number | null;
  readonly hurt: boolean;
  readonly danger: boolean;
  readonly convoy: boolean;
}

/** What the Jobs screens ask of the worker, and what it replies; each kind starts with 'jobs/'. */
export type JobsRequest =
  /** What a driver may notice on this vehicle, and every job it has. */
  | { readonly kind: 'jobs/list'; readonly garage: Garage; readonly trip: string }
  | {
      readonly kind: 'jobs/symptom';
      readonly garage: Garage;
      readonly trip: string;
      readonly here: Here;
      readonly symptom: string;
      /** Question and answer, in the order they were given. */
      readonly given: readonly (readonly [string, string])[];
    }
  | {
      readonly kind: 'jobs/card';
      readonly garage: Garage;
      readonly trip: string;
      readonly job: string;
      readonly terms: CardTerms;
    }
  /** The ways a job may have been done, and the failures it puts right. */
  | { readonly kind: 'jobs/ways'; readonly garage: Garage; readonly trip: string; readonly job: string }
  | {
      readonly kind: 'jobs/repairs';
      readonly garage: Garage;
      readonly vehicle: string;
    }
  | { readonly kind: 'jobs/wire'; readonly question: WireQuestion };

export type JobsReply =
  | {
      readonly kind: 'jobs/list';
      readonly symptoms: SymptomListCard['areas'];
      readonly systems: readonly SystemJobs[];
    }
  | { readonly kind: 'jobs/symptom'; readonly symptom: SymptomCard }
  | {
      readonly kind: 'jobs/card';
      readonly card: JobCard;
      /** What goes out of the bags for it: owned belongings and how many pieces of each. */
      readonly pieces: readonly CardPiece[];
    }
  | {
      readonly kind: 'jobs/ways';
      /** As the catalogue calls the job. */
      readonly job: string;
      readonly ways: readonly RepairWay[];
      readonly causes: readonly CauseLine[];
    }
  | {
      readonly kind: 'jobs/repairs';
      readonly repairs: readonly OpenRepair[];
      /** The last distance that the record knows, travelled km. */
      readonly knownKm: number;
    }
  | { readonly kind: 'jobs/wire'; readonly wire: WireAnswer };
