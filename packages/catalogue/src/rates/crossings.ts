import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';

export interface CrossingEvents {
  readonly id: string;
  readonly title: string;
  /** Expected events for one crossing, by how high the water comes. */
  readonly each: Readonly<Record<'belowHub' | 'hubToSill' | 'sillToBonnet' | 'aboveIntake', number>>;
  /** How an event is shared out among the groups; sums to 1. */
  readonly split: Readonly<Partial<Record<GroupId, number>>>;
  /** The true value lies between these divided and multiplied by this with 90 % belief. */
  readonly factor90: number;
  readonly basis: Basis;
}

/** Water gets into connectors and starters first, then bearings and oils, then a fan, at last the engine. */
export const CROSSINGS: CrossingEvents = {
  id: 'crossings',
  title: 'water crossings',
  each: { belowHub: 0.0005, hubToSill: 0.005, sillToBonnet: 0.02, aboveIntake: 0.1 },
  split: { wiring: 0.25, 'charging-starting': 0.25, driveline: 0.25, cooling: 0.1, engine: 0.15 },
  factor90: 4,
  basis: estimate('judgement, in the order of what fording checks of army manuals look at'),
};
