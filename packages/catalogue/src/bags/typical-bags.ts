import type { Basis } from '../shape/basis.ts';
import { estimate } from '../shape/basis.ts';

/** A bag in general: inside measures mm, its own mass g. Proposed to owners who have recorded none. */
export interface TypicalBag {
  readonly id: string;
  readonly name: string;
  readonly kind: 'roll' | 'pouch' | 'bag' | 'box' | 'case';
  readonly grams: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly limitKg: number;
  readonly firstGrab?: true;
  readonly spillproof?: true;
  /** Slots or bays, from left to right: flat width, length along the tool, depth where it is no cloth. */
  readonly pockets?: readonly {
    readonly name: string;
    readonly widthMm: number;
    readonly lengthMm: number;
    readonly depthMm?: number;
    readonly openEnded?: true;
  }[];
  readonly basis: Basis;
}

const CLOTH: Basis = estimate(
  'Ordinary canvas goods as they are commonly sewn, from memory; measure your own',
);
const RIGID: Basis = estimate('Ordinary plastic boxes with a lid, from memory; measure your own');

const slots = (widths: readonly number[], lengthMm: number) =>
  widths.map((widthMm, n) => ({ name: `slot ${n + 1}`, widthMm, lengthMm, openEnded: true as const }));

/** Few, plain, and of common sizes. */
export const TYPICAL_BAGS: readonly TypicalBag[] = [
  {
    id: 'grab-pouch',
    name: 'first-grab pouch',
    kind: 'pouch',
    grams: 300,
    lengthMm: 320,
    widthMm: 220,
    heightMm: 110,
    limitKg: 6,
    firstGrab: true,
    basis: CLOTH,
  },
  {
    id: 'roll-spanners',
    name: 'roll for wrenches and drivers, 14 slots',
    kind: 'roll',
    grams: 700,
    lengthMm: 700,
    widthMm: 330,
    heightMm: 60,
    limitKg: 8,
    pockets: slots([25, 25, 30, 30, 35, 35, 40, 40, 45, 50, 55, 60, 70, 80], 220),
    basis: CLOTH,
  },
  {
    id: 'roll-handles',
    name: 'roll for handles and pliers, 8 slots',
    kind: 'roll',
    grams: 800,
    lengthMm: 720,
    widthMm: 420,
    heightMm: 80,
    limitKg: 10,
    pockets: slots([50, 50, 60, 60, 70, 80, 90, 100], 300),
    basis: CLOTH,
  },
  {
    id: 'socket-box',
    name: 'flat box for sockets',
    kind: 'box',
    grams: 600,
    lengthMm: 330,
    widthMm: 220,
    heightMm: 65,
    limitKg: 10,
    basis: RIGID,
  },
  {
    id: 'electrics-pouch',
    name: 'pouch for electrics',
    kind: 'pouch',
    grams: 250,
    lengthMm: 300,
    widthMm: 220,
    heightMm: 110,
    limitKg: 6,
    basis: CLOTH,
  },
  {
    id: 'spill-box',
    name: 'box with a tight lid for fluids',
    kind: 'box',
    grams: 1500,
    lengthMm: 380,
    widthMm: 280,
    heightMm: 260,
    limitKg: 22,
    spillproof: true,
    basis: RIGID,
  },
  {
    id: 'soft-bag',
    name: 'wide-mouth bag for bulky tools',
    kind: 'bag',
    grams: 900,
    lengthMm: 500,
    widthMm: 250,
    heightMm: 250,
    limitKg: 20,
    basis: CLOTH,
  },
  {
    id: 'spares-box',
    name: 'box for spares',
    kind: 'box',
    grams: 1800,
    lengthMm: 450,
    widthMm: 320,
    heightMm: 200,
    limitKg: 20,
    basis: RIGID,
  },
];

/** The bags that hold what rolls and pouches do not; of these as many are proposed as the litres ask for. */
export const ROOMY_BAG = 'soft-bag';
