import type { BagsReply, BagsRequest } from './bags/protocol.ts';
import type { BelongingsReply, BelongingsRequest } from './belongings/protocol.ts';
import type { JobsReply, JobsRequest } from './jobs/protocol.ts';
import type { KitReply, KitRequest } from './kit/protocol.ts';
import type { TripReply, TripRequest } from './trip/protocol.ts';
import type { VehicleReply, VehicleRequest } from './vehicle/protocol.ts';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { WhyAnswer } from '@waymend/planner/answer/why-answer';
import type { Question } from '@waymend/planner/plan/plan-trip';
import type { Refusal } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import type { Wording } from '@waymend/planner/words/wording';

/** What the page asks the worker; every request has a number of its own and is answered by messages with that number. */
export type Request =
  | { readonly kind: 'plan'; readonly garage: Garage; readonly trip: string; readonly question: Question }
  | {
      readonly kind: 'curve';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
      readonly points: number;
    }
  | {
      readonly kind: 'why';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
      readonly what: string;
    }
  | { readonly kind: 'open'; readonly bytes: Uint8Array; readonly name: string }
  | { readonly kind: 'write'; readonly garage: Garage }
  | BagsRequest
  | BelongingsRequest
  | JobsRequest
  | KitRequest
  | TripRequest
  | VehicleRequest;

export interface Asking {
  readonly number: number;
  readonly request: Request;
  /** Whose words the reply is to be in. */
  readonly wording: Wording;
}

/** A limit that would make room by giving way, and by how much: grams, millilitres, cents ('mass', 'load rear' ...). */
export interface Clash {
  readonly limit: string;
  readonly shortBy: number;
}

/** One point of the curve as the screen draws it. */
export interface CurvePoint {
  readonly grams: number;
  readonly pieces: number;
  /** Belongings that come, by id. */
  readonly belongings: readonly string[];
  /** Chance of driving home unaided with the rates of this mass, 0..1. */
  readonly unaided: number;
  readonly proven: boolean;
  /** Loss that could at most still be avoided, as a share; 0 when proven. */
  readonly gap: number;
}

/** How far the proof is. */
export interface ProofProgress {
  readonly grams: number | null;
  readonly unaided: number | null;
  /** No kit within the limits does better than this. */
  readonly atBest: number;
}

export type Reply =
  /** A kit at once, with its certified gap, while the proof runs; then the answer to stay. */
  | { readonly kind: 'plan'; readonly answer: PlanAnswer; readonly final: boolean; readonly seconds: number }
  | { readonly kind: 'proof'; readonly progress: ProofProgress }
  | { readonly kind: 'no-plan'; readonly sentences: readonly string[]; readonly clashes: readonly Clash[] }
  | { readonly kind: 'curve-point'; readonly point: CurvePoint }
  | {
      readonly kind: 'curve';
      readonly points: readonly CurvePoint[];
      readonly complete: boolean;
      readonly stopped: boolean;
    }
  | { readonly kind: 'why'; readonly why: WhyAnswer }
  | { readonly kind: 'garage'; readonly garage: Garage }
  | { readonly kind: 'text'; readonly text: string }
  | BagsReply
  | BelongingsReply
  | JobsReply
  | KitReply
  | TripReply
  | VehicleReply
  /** The input was not accepted; nothing changed. */
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  /** Stopped because somebody asked, before there was anything to show. */
  | { readonly kind: 'stopped' }
  /** A defect of ours: said in words, never hidden. */
  | { readonly kind: 'broken'; readonly cause: string };

export interface Answering {
  readonly number: number;
  readonly reply: Reply;
  /** No further message has this number. */
  readonly last: boolean;
}

/** Sent once when the worker starts: the flag that asks a running search to stop, where the browser allows shared memory. */
export interface Start {
  readonly kind: 'start';
  readonly stop: SharedArrayBuffer | null;
}
