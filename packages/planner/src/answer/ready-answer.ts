import type { ReadyTask } from '@waymend/core/caring/readiness';

/** What `waymend care` answers: whether a planned kit is ready, and what care asks for (docs/answers.md). */
export interface ReadyAnswer {
  readonly schema: 'waymend.care/1';
  readonly trip: string;
  readonly today: string;
  readonly leaveOn: string;
  readonly homeOn: string;
  readonly status: 'ready' | 'ready-with-gaps' | 'not-ready';
  readonly words: string;
  readonly minutes: number;
  readonly takes: readonly string[];
  readonly tasks: readonly ReadyTask[];
  readonly dues: readonly DueAnswer[];
  readonly repairs: readonly RepairAnswer[];
  readonly loans: readonly LoanAnswer[];
  readonly ownLog: OwnLogAnswer;
}

export interface DueAnswer {
  /** Belonging; empty for the whole kit. */
  readonly thing: string;
  readonly name: string;
  readonly rule: string;
  readonly kind:
    | 'expiry'
    | 'charge'
    | 'replace'
    | 'pressure'
    | 'service'
    | 'calibration'
    | 'check'
    | 'storage';
  readonly on: string | null;
  readonly when: 'overdue' | 'before-leaving' | 'on-trip' | 'after-trip' | 'later' | 'unknown';
  readonly words: string;
  readonly advice: string;
  readonly minutes: number;
  readonly takes: readonly string[];
  readonly charge: { readonly pct: number; readonly low: number; readonly high: number } | null;
  /** What the figures stand on, in words. */
  readonly basis: string;
}

export interface RepairAnswer {
  readonly id: string;
  readonly title: string;
  readonly lasts: 'permanent' | 'temporary' | 'made-safe';
  readonly on: string;
  readonly speedKmh: number | null;
  readonly limits: string | null;
  /** Travelled distance, km. */
  readonly nextLookKm: number | null;
  readonly lookInKm: number | null;
  readonly trustLeftKm: number | null;
  readonly worse: boolean;
}

export interface LoanAnswer {
  readonly id: string;
  readonly belonging: string;
  readonly name: string;
  readonly copies: number;
  readonly to: string;
  readonly on: string;
  readonly dueOn: string | null;
  readonly backOn: string | null;
  readonly daysLate: number;
}

export interface OwnLogAnswer {
  readonly km: number;
  readonly outside: number;
  readonly groups: readonly {
    readonly group: string;
    readonly title: string;
    readonly events: number;
    readonly expected: number;
    readonly prior: BeliefAnswer;
    readonly posterior: BeliefAnswer;
  }[];
}

/** A rate as a multiple of the plain one. */
export interface BeliefAnswer {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}
