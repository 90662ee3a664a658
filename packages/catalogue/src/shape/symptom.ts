import type { Basis } from './basis.ts';

/** Where on the vehicle, or in what, something is noticed; the first list a driver chooses from. */
export const SYMPTOM_AREAS = [
  'starting',
  'running',
  'heat',
  'brakes',
  'steering',
  'wheels',
  'noises',
  'drive',
  'electrics',
  'leaks and smells',
  'body and trailer',
] as const;
export type SymptomArea = (typeof SYMPTOM_AREAS)[number];

export interface SymptomAnswer {
  readonly id: string;
  readonly text: string;
}

/** Something that can be seen, heard or smelled without taking anything apart. */
export interface SymptomQuestion {
  readonly id: string;
  readonly ask: string;
  readonly answers: readonly SymptomAnswer[];
}

/** A failure that shows itself like this, and the answers that speak for it. */
export interface SymptomLead {
  /** Id of a failure. */
  readonly failure: string;
  /** By question id: the answers that fit. A question that is not named says nothing about this failure. */
  readonly fits: Readonly<Record<string, readonly string[]>>;
}

/** What the driver notices, at most four questions, and the failures it may be. */
export interface Symptom {
  readonly id: string;
  readonly area: SymptomArea;
  readonly title: string;
  /** Before anything is looked at. */
  readonly first: readonly string[];
  readonly questions: readonly SymptomQuestion[];
  readonly leads: readonly SymptomLead[];
  readonly basis: Basis;
}
