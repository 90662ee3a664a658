import type { Basis } from './basis.ts';
import type { PlaceId } from './place-ids.ts';
import type { Access, Condition, Drive, System } from './words.ts';

/** A named spot on vehicles in general, and what it typically takes there until the owner has looked. */
export interface Place {
  readonly id: PlaceId;
  readonly title: string;
  readonly system: System;
  readonly when?: Condition;
  /** Typical head; the first size is assumed until somebody looks, the others are what else is met. */
  readonly drive: Drive;
  readonly sizes: readonly [string, ...string[]];
  /** Tightening torque, N m, typical range; the upper end is planned for. */
  readonly torqueNm: readonly [number, number];
  readonly access: Access;
  /** The other end turns with it: a second piece of the same size must hold (M3). */
  readonly counterHold?: true;
  /** Body weight on the bar is possible only when standing beside the vehicle. */
  readonly stance: 'standing' | 'kneeling' | 'under';
  /** Where a poor substitute can kill. */
  readonly critical?: 'wheel' | 'brake' | 'steering' | 'support';
  readonly basis: Basis;
}
