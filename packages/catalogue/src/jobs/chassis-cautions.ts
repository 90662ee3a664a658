/** Wheel nuts settle: looked at again after every wheel that came off. */
export const NUTS_AGAIN = { check: 'Wheel nuts tight, by hand and in star order', km: 50 } as const;

/** Caution of every job that blows a bead on to its seat. */
export const SEATING =
  'Never go above the seating pressure written on the sidewall. Stand to the side, never over the tyre, and put a chain or strap through the wheel.';

/** After any work on the hydraulics, whatever else is checked. */
export const PROVED = [
  { check: 'Pedal firm; pressed hard for a whole minute, nothing sinks and nothing weeps' },
  { check: 'A stop from walking pace, then one from 20 km/h, on clear level ground', km: 0 },
  { check: 'Fluid level and every joint that was opened', km: 10 },
  { check: 'Fluid level and every joint that was opened', km: 100 },
] as const;

/** Caution wherever brake fluid runs. */
export const FLUID =
  'Brake fluid harms eyes, skin and paint, and burns on hot metal. Goggles and gloves; rinse with plenty of water.';

/** Caution of every brake job: who should do it. */
export const MANUAL =
  "Brakes are for people who know them. Follow the maker's manual, and have the work looked at by a licensed mechanic as soon as you reach one.";

/** Caution wherever a brake is opened. */
export const DUST = 'Brake dust harms the lungs. Wet it down or wipe it; never blow it out.';

/** Caution of every job on a spring. */
export const STORED =
  'Springs store enough to kill. Keep head and hands out of the line a leaf, coil or strap would take, and never undo a loaded spring.';

/** Caution where a weakened corner has to carry on. */
export const LIGHTEN = 'Take load off that corner first, and carry it elsewhere or leave it.';

/** Caution of every job on a part that steers. */
export const STEERING =
  "A steering joint that parts steers nothing. Follow the maker's manual, use new pins and nuts, and have it looked at by a licensed mechanic as soon as you reach one.";

/** First check after any work on a part that steers. */
export const STEER_TEST = {
  check: 'Lock to lock standing, then at walking pace on clear ground, before any road',
  km: 0,
} as const;
