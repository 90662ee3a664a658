import type { CureAnswer, JobRef } from './plan-answer.ts';

/** The whole story of one belonging, job or failure in a plan (docs/answers.md). */
export type WhyAnswer = BelongingWhy | JobWhy | FailureWhy;

export interface BelongingWhy {
  readonly schema: 'waymend.why/1';
  readonly kind: 'belonging';
  readonly id: string;
  readonly name: string;
  readonly grams: number;
  readonly comes: boolean;
  /** Chance lost without it when it comes; chance it would add when it stays. */
  readonly worth: number;
  readonly jobs: readonly JobRef[];
  /** What would do its work, lightest first: only when it comes. */
  readonly substitutes: readonly {
    readonly id: string;
    readonly name: string;
    readonly grams: number;
    readonly owned: boolean;
    readonly cents: number;
    readonly chanceLost: number;
  }[];
  readonly words: string;
}

export interface JobWhy {
  readonly schema: 'waymend.why/1';
  readonly kind: 'job';
  readonly id: string;
  readonly title: string;
  readonly possible: boolean;
  readonly grade: 'proper' | 'with-care' | 'last-resort' | null;
  readonly skill: number;
  readonly bestSkill: number;
  readonly people: number;
  /** Each need with what meets it aboard. */
  readonly needs: readonly {
    readonly need: string;
    readonly met: boolean;
    readonly grade: string | null;
    readonly with: readonly string[];
  }[];
  readonly uses: readonly { readonly of: string; readonly aboard: number; readonly each: number }[];
  readonly cautions: readonly string[];
  readonly after: readonly string[];
}

export interface FailureWhy {
  readonly schema: 'waymend.why/1';
  readonly kind: 'failure';
  readonly id: string;
  readonly title: string;
  readonly group: string;
  readonly expected: number;
  readonly stopping: number;
  /** Every factor of every part, with where it comes from. */
  readonly parts: readonly {
    readonly on: string;
    readonly title: string;
    readonly base: number;
    readonly share: number;
    readonly events: number;
    readonly basis: string;
    readonly factors: readonly {
      readonly title: string;
      readonly factor: number;
      readonly basis: string;
      readonly mark: string;
    }[];
  }[];
  readonly answers: readonly {
    readonly job: string;
    readonly title: string;
    readonly grade: string;
    readonly chance: number;
  }[];
  readonly cures: readonly CureAnswer[];
}
