import type { Basis } from './basis.ts';
import type { PlaceId } from './place-ids.ts';
import type { Condition, FunctionId, Skill, System, Trust } from './words.ts';

/** One requirement of a job. */
export type JobNeed =
  /** Undo and do up the fastener(s) at a place; drive, size, torque, access and counter-hold come from the fitting. */
  | { readonly turn: PlaceId; readonly only?: 'undo' | 'do-up' }
  | {
      readonly fn: FunctionId;
      readonly of?: string;
      /** Least amount, in the function's printed unit. */
      readonly amount?: number;
      /** Distinct pieces needed at the same moment. */
      readonly count?: number;
      /** Place whose torque a 'torque-set' need refers to. */
      readonly at?: PlaceId;
      /** A need that keeps people safe: never met by a last resort silently. */
      readonly safety?: true;
    };

export interface JobUse {
  /** A stock word: a spare's id ('P-BELT') or a fluid ('coolant'), see CatalogueBelonging.stock. */
  readonly of: string;
  /** Units used up each time: jobs' worth, or whole litres (rounded up) for fluids. */
  readonly units: number;
}

/** Another, weaker way through the same trouble. */
export interface Expedient {
  readonly id: string;
  readonly title: string;
  readonly trust: Trust;
  /** Metres a second are for machines; people read km/h. */
  readonly speedKmh?: number;
  readonly lookAgainKm?: number;
  readonly skill?: Skill;
  readonly needs: readonly JobNeed[];
  readonly uses?: readonly JobUse[];
  readonly steps: readonly string[];
  readonly limits: string;
  /** Chance relative to the proper job, 0..1; default 0.9. Estimate. */
  readonly relativeChance?: number;
}

/** A repair that can be done at the roadside, in general. */
export interface Job {
  readonly id: string;
  readonly system: System;
  readonly title: string;
  readonly outcome: 'drive-on' | 'limp' | 'made-safe';
  /** How far the result may be trusted when the outcome is a limp. */
  readonly trust?: Trust;
  readonly skill: Skill;
  readonly minutes: readonly [number, number];
  readonly people: 1 | 2;
  readonly when?: Condition;
  /** A wheel or the body comes off the ground: adds chock, base and lift (`high`: above normal jack height). */
  readonly raise?: 'wheel' | 'high';
  /** Somebody reaches under the raised vehicle: adds support, never substituted. */
  readonly under?: true;
  /** Needs without which the job is not done. */
  readonly needs: readonly JobNeed[];
  /** Used up each time. */
  readonly uses?: readonly JobUse[];
  /** Helps but is not required (shown on the card, not planned for). */
  readonly helps?: readonly { readonly fn: FunctionId; readonly of?: string }[];
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  readonly after: readonly { readonly check: string; readonly km?: number }[];
  readonly expedients: readonly Expedient[];
  /** What must not be done instead, in plain words. */
  readonly forbidden?: readonly string[];
  readonly basis: Basis;
}
