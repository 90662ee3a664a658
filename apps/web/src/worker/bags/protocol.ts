import type { Garage } from '@waymend/garage/record/schema';
import type { ReadyAnswer } from '@waymend/planner/answer/ready-answer';
import type { StowAnswer } from '@waymend/planner/answer/stow-answer';
import type { Question } from '@waymend/planner/plan/plan-trip';
import type { ChangedChance } from '@waymend/planner/ready/changed-chance';
import type { CardPiece } from '@waymend/planner/ready/job-pieces';
import type { RestockLine } from '@waymend/planner/ready/restock';
import type { CarriedLine } from '@waymend/planner/views/carried';

/** What the Bags place asks of the worker. */
export type BagsRequest =
  /** What the catalogue knows of each belonging: its name, what it holds, its outline. */
  | { readonly kind: 'bags/things'; readonly garage: Garage }
  /** The pieces that a job takes out of the kit. */
  | {
      readonly kind: 'bags/job';
      readonly garage: Garage;
      readonly trip: string;
      readonly kit: readonly CarriedLine[];
      readonly job: string;
    }
  /** What a closed muster did to the chance, and what to buy: `garage` is the record before, `after` the one since. */
  | {
      readonly kind: 'bags/changed';
      readonly garage: Garage;
      readonly after: Garage;
      readonly trip: string;
      readonly kit: readonly CarriedLine[];
    }
  | {
      readonly kind: 'bags/ready';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
      readonly today: string;
      readonly leaveOn: string;
    }
  | {
      readonly kind: 'bags/stow';
      readonly garage: Garage;
      readonly trip: string;
      readonly question: Question;
    };

/** The plain shapes a piece is drawn in. */
export type Outline = 'wrench' | 'socket' | 'ratchet' | 'bar' | 'pliers' | 'driver' | 'box';

export interface BagThing {
  readonly name: string;
  /** Jobs' worth or litres in a new piece; null when it is not used up. */
  readonly asNew: number | null;
  readonly outline: Outline;
}

export type BagsReply =
  /** By belonging. */
  | { readonly kind: 'bags/things'; readonly things: Readonly<Record<string, BagThing>> }
  | { readonly kind: 'bags/job'; readonly pieces: readonly CardPiece[] }
  | {
      readonly kind: 'bags/changed';
      readonly changed: ChangedChance;
      readonly restock: readonly RestockLine[];
    }
  | { readonly kind: 'bags/ready'; readonly ready: ReadyAnswer; readonly calendar: string }
  | { readonly kind: 'bags/stow'; readonly stow: StowAnswer };
