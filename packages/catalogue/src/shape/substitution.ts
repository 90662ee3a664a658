import type { Basis } from './basis.ts';
import type { FunctionId, Grade } from './words.ts';

/** One row of the substitution table: what is wanted, what is offered instead, and how good that is. */
export interface Substitution {
  readonly id: string;
  readonly wanted: { readonly fn: FunctionId | 'turn' | 'hold' | 'break-free'; readonly of?: string };
  /** In plain words, for cards and warnings. */
  readonly offered: string;
  readonly grade: Grade;
  readonly condition: string;
  /**
   * How the planner knows it: 'sizes' (computed in core/fastening), 'offers' (a belonging's `does` line carries this
   * grade), 'together' (the functions listed, all at once, stand in), or 'words' (shown on cards, never planned with).
   */
  readonly how:
    | { readonly by: 'sizes' | 'offers' | 'words' }
    | {
        readonly by: 'together';
        readonly needs: readonly {
          readonly fn: FunctionId;
          readonly of?: string;
          readonly amount?: number;
          /** Distinct pieces at the same moment, default 1. */
          readonly count?: number;
        }[];
        /** Greatest amount it stands in for, in the printed unit of what is wanted; said wherever that has one. */
        readonly upTo?: number;
      };
  /** For forbidden rows: catalogue ids that might be taken for it, and so must never offer what is wanted. */
  readonly barred?: readonly string[];
  readonly basis: Basis;
}
