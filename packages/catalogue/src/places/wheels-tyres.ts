import { COMMON_PRACTICE } from '../shape/basis.ts';
import type { Place } from '../shape/place.ts';

/** Wheels and tyres. Sizes in order of likelihood on loaded 4x4s; torques N m, the upper end is planned for. */
export const WHEEL_PLACES: readonly Place[] = [
  {
    id: 'wheel-nut',
    title: 'Wheel nuts',
    system: 'wheels-tyres',
    drive: 'hex',
    sizes: ['21 mm', '19 mm', '22 mm', '17 mm'],
    // M12 studs 100 to 130, M14 studs 130 to 210.
    torqueNm: [100, 210],
    access: 'deep',
    stance: 'standing',
    critical: 'wheel',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'wheel-nut-trailer',
    title: 'Trailer wheel nuts',
    system: 'wheels-tyres',
    when: { any: ['trailer', 'camper-trailer'] },
    drive: 'hex',
    sizes: ['19 mm', '21 mm', '22 mm', '17 mm'],
    torqueNm: [90, 150],
    access: 'deep',
    stance: 'standing',
    critical: 'wheel',
    basis: COMMON_PRACTICE,
  },
  {
    id: 'valve-stem-nut',
    title: 'Nut of a bolt-in tyre valve',
    system: 'wheels-tyres',
    when: { all: ['tubeless'] },
    drive: 'hex',
    sizes: ['11 mm', '12 mm', '10 mm'],
    torqueNm: [3, 5],
    access: 'deep',
    stance: 'kneeling',
    basis: COMMON_PRACTICE,
  },
];
