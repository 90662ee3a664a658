import type { Question } from '@waymend/planner/plan/plan-trip';
import { useMemo, useSyncExternalStore } from 'react';

/** What the plan looks for: a question of the moment, kept while the page is open and not part of the garage. */
export interface AimChoice {
  readonly kind: Question['aim']['kind'];
  /** For the least mass: help may be needed on one trip in so many. */
  readonly oneIn: number;
}

const FIRST: AimChoice = { kind: 'best-chance', oneIn: 6 };

let choice = FIRST;
const listeners = new Set<() => void>();

export function chooseAim(change: Partial<AimChoice>): void {
  choice = { ...choice, ...change };
  for (const listener of listeners) listener();
}

export function useAim(): AimChoice {
  return useSyncExternalStore(subscribe, () => choice);
}

/** The question the plan answers now. */
export function useQuestion(): Question {
  const { kind, oneIn } = useAim();
  return useMemo(() => questionOf({ kind, oneIn }), [kind, oneIn]);
}

/** The lightest kit is sought without the trip's own limit on mass. */
export function questionOf({ kind, oneIn }: AimChoice): Question {
  switch (kind) {
    case 'best-chance':
      return { aim: { kind } };
    case 'least-mass':
      return { aim: { kind, chance: 1 - 1 / oneIn }, limitGrams: null };
    case 'must-do':
      return { aim: { kind }, limitGrams: null };
  }
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
