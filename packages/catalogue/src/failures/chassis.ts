import type { Failure } from '../shape/failure.ts';
import { BRAKE_FAILURES } from './brakes.ts';
import { DRIVELINE_FAILURES } from './driveline.ts';
import { STEERING_FAILURES } from './steering.ts';
import { SUSPENSION_FAILURES } from './suspension.ts';
import { TYRE_FAILURES } from './tyre.ts';

/** Failures of everything between body and road. */
export const CHASSIS_FAILURES: readonly Failure[] = [
  ...TYRE_FAILURES,
  ...BRAKE_FAILURES,
  ...STEERING_FAILURES,
  ...SUSPENSION_FAILURES,
  ...DRIVELINE_FAILURES,
];
