import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';

export interface CrossingEvents {
  /** Expected events for one crossing, by how high the water comes. */
  readonly events: Readonly<Record<'belowHub' | 'hubToSill' | 'sillToBonnet' | 'aboveIntake', number>>;
  /** How an event is shared out among the groups; sums to 1. */
  readonly split: readonly { readonly group: GroupId; readonly share: number }[];
  readonly basis: Basis;
}

/** Water gets into connectors and starters first, then bearings and oils, then a fan, at last the engine. */
export const CROSSINGS: CrossingEvents = {
  events: { belowHub: 0.0005, hubToSill: 0.005, sillToBonnet: 0.02, aboveIntake: 0.1 },
  split: [
    { group: 'wiring', share: 0.25 },
    { group: 'charging-starting', share: 0.25 },
    { group: 'driveline', share: 0.25 },
    { group: 'cooling', share: 0.1 },
    { group: 'engine', share: 0.15 },
  ],
  basis: estimate(
    'judgement within a factor of four, in the order of what fording checks of army manuals look at',
  ),
};
