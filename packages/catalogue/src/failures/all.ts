import type { Failure } from '../shape/failure.ts';
import { CHASSIS_FAILURES } from './chassis.ts';
import { SYSTEM_FAILURES } from './systems.ts';

/** Every failure in the catalogue. */
export const FAILURES: readonly Failure[] = [...CHASSIS_FAILURES, ...SYSTEM_FAILURES];
