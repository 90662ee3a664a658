import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';
import type { GroupId } from '../shape/words.ts';

export interface LoadFactor {
  readonly id: string;
  readonly title: string;
  /** (mass / rated) ^ exponent; groups not named do not feel the load. */
  readonly exponents: Readonly<Partial<Record<GroupId, number>>>;
  readonly basis: Basis;
}

/** Ten per cent over the rating is 1.6 times the suspension trouble. */
export const LOAD: LoadFactor = {
  id: 'load',
  title: 'load',
  exponents: { tyre: 4, suspension: 5, brakes: 2, driveline: 2, cooling: 2 },
  basis: estimate('fatigue reasoning: life falls with a high power of stress; the powers are rounded'),
};
