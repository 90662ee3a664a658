import type { GroupId } from '../shape/words.ts';

/** Groups of parts that shaking wears out (trade rule; the same groups the roughness model of road costs covers). */
export const SHAKEN: readonly GroupId[] = ['suspension', 'steering', 'body', 'wiring', 'exhaust'];

/** Groups that grow old with the vehicle. Tyres and battery have ages of their own, keys and glass have none. */
export const AGEING: readonly GroupId[] = [
  'charging-starting',
  'wiring',
  'ignition-management',
  'fuel-air',
  'cooling',
  'brakes',
  'steering',
  'suspension',
  'driveline',
  'transmission',
  'exhaust',
  'body',
  'engine',
];

/** Groups that a heavy or a light right foot tells on. */
export const DRIVEN: readonly GroupId[] = [
  'tyre',
  'wiring',
  'cooling',
  'brakes',
  'steering',
  'suspension',
  'driveline',
  'transmission',
  'exhaust',
  'body',
  'engine',
];
