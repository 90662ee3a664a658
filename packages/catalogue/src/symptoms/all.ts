import type { Symptom } from '../shape/symptom.ts';
import { BODY_TRAILER } from './body-trailer.ts';
import { BRAKES } from './brakes.ts';
import { DRIVE } from './drive.ts';
import { ELECTRICS } from './electrics.ts';
import { HEAT } from './heat.ts';
import { LEAKS_SMELLS } from './leaks-smells.ts';
import { NOISES } from './noises.ts';
import { RUNNING } from './running.ts';
import { STARTING } from './starting.ts';
import { STEERING } from './steering.ts';
import { WHEELS } from './wheels.ts';

/** Everything a driver may notice, by area. */
export const SYMPTOMS: readonly Symptom[] = [
  ...STARTING,
  ...RUNNING,
  ...HEAT,
  ...BRAKES,
  ...STEERING,
  ...WHEELS,
  ...NOISES,
  ...DRIVE,
  ...ELECTRICS,
  ...LEAKS_SMELLS,
  ...BODY_TRAILER,
];
