import type { ComponentType } from 'react';
import { lazy } from 'react';

/** The places of the sheet's border, left to right in the order of the work: from home to the roadside. */
export interface Place {
  readonly id: 'garage' | 'vehicle' | 'kit' | 'jobs' | 'bags';
  readonly screen: ComponentType;
}

/** Each place is a file of its own, so that the first one is on the screen before the others are read. */
export const PLACES: readonly Place[] = [
  {
    id: 'garage',
    screen: lazy(() => import('../places/garage/garage-place.tsx').then((m) => ({ default: m.GaragePlace }))),
  },
  {
    id: 'vehicle',
    screen: lazy(() =>
      import('../places/vehicle/vehicle-place.tsx').then((m) => ({ default: m.VehiclePlace })),
    ),
  },
  {
    id: 'kit',
    screen: lazy(() => import('../places/kit/kit-place.tsx').then((m) => ({ default: m.KitPlace }))),
  },
  {
    id: 'jobs',
    screen: lazy(() => import('../places/jobs/jobs-place.tsx').then((m) => ({ default: m.JobsPlace }))),
  },
  {
    id: 'bags',
    screen: lazy(() => import('../places/bags/bags-place.tsx').then((m) => ({ default: m.BagsPlace }))),
  },
];
