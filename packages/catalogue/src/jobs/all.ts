import type { Job } from '../shape/job.ts';
import { CHASSIS_JOBS } from './chassis.ts';
import { SYSTEM_JOBS } from './systems.ts';

/** Every job in the catalogue. */
export const JOBS: readonly Job[] = [...CHASSIS_JOBS, ...SYSTEM_JOBS];
