import type { Job } from '../shape/job.ts';
import { ARM_AND_STRUCTURE_JOBS } from './arms-structure.ts';
import { AXLE_OIL_JOBS } from './axle-oil.ts';
import { BRAKE_HYDRAULIC_JOBS } from './brake-hydraulics.ts';
import { BRAKE_WHEEL_JOBS } from './brake-wheels.ts';
import { DAMPER_AND_COIL_JOBS } from './dampers-coils.ts';
import { HUB_JOBS } from './hubs.ts';
import { SHAFT_JOBS } from './shafts.ts';
import { SPRING_JOBS } from './springs.ts';
import { STEERING_JOBS } from './steering.ts';
import { TYRE_JOBS } from './tyres.ts';
import { WHEEL_JOBS } from './wheels.ts';

/** Everything between body and road: wheels, brakes, driveline, suspension, steering, structure. */
export const CHASSIS_JOBS: readonly Job[] = [
  ...WHEEL_JOBS,
  ...TYRE_JOBS,
  ...BRAKE_HYDRAULIC_JOBS,
  ...BRAKE_WHEEL_JOBS,
  ...SHAFT_JOBS,
  ...HUB_JOBS,
  ...AXLE_OIL_JOBS,
  ...SPRING_JOBS,
  ...DAMPER_AND_COIL_JOBS,
  ...STEERING_JOBS,
  ...ARM_AND_STRUCTURE_JOBS,
];
