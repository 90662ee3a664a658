import { estimate } from '../shape/basis.ts';
import type { LoadFactor } from './shape.ts';

const BASIS = estimate('fatigue reasoning: life falls with a high power of stress; the powers are rounded');

/** Ten per cent over the rating is 1.6 times the suspension trouble. Axles carry their own; cooling feels the whole mass. */
export const LOAD: readonly LoadFactor[] = [
  { groups: ['tyre'], exponent: 4, of: 'axle', basis: BASIS },
  { groups: ['suspension'], exponent: 5, of: 'axle', basis: BASIS },
  { groups: ['brakes', 'driveline', 'cooling'], exponent: 2, of: 'gross', basis: BASIS },
];
