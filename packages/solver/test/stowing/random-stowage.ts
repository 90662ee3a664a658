import { grams, millilitres, wholeMillimetres } from '@waymend/core/quantity/units';
import { measuresFrom } from '@waymend/core/stowing/piece-measures';
import type {
  BagKind,
  StowBag,
  StowBerth,
  StowMark,
  StowPiece,
  StowProblem,
} from '@waymend/core/stowing/stow-problem';

/** Numbers from 0 to 1 that are the same on every machine (mulberry32). */
export function drawer(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const mm = wholeMillimetres;

export function berth(id: string, x: number, more: Partial<StowBerth> = {}): StowBerth {
  return {
    id,
    name: id,
    x: mm(x),
    z: mm(0),
    roof: false,
    atHand: false,
    seat: false,
    wheelOnly: false,
    room: null,
    millilitres: null,
    ...more,
  };
}

export function bag(id: string, kind: BagKind, more: Partial<StowBag> = {}): StowBag {
  return {
    id,
    name: id,
    kind,
    grams: grams(500),
    length: null,
    width: null,
    height: null,
    millilitres: null,
    limit: null,
    firstGrab: false,
    spillproof: false,
    fixedIn: null,
    berth: null,
    pockets: [],
    ...more,
  };
}

export function slots(of: string, widths: readonly number[], length: number): StowBag['pockets'] {
  return widths.map((width, n) => ({
    id: `${of}-${n + 1}`,
    name: `slot ${n + 1}`,
    width: mm(width),
    length: mm(length),
    depth: null,
    openEnded: true,
    limit: null,
  }));
}

export function piece(id: string, more: Partial<StowPiece> = {}): StowPiece {
  return {
    id,
    name: id,
    grams: grams(100),
    millilitres: millilitres(100),
    size: measuresFrom(100, 100, 'long'),
    marks: [],
    uses: 0,
    firstGrab: false,
    groups: [],
    ...more,
  };
}

/** Fourteen bags like an owner's: rolls, a socket box, pouches, boxes; `more` times as roomy. */
export function fourteenBags(): readonly StowBag[] {
  const spanner = (id: string): StowBag =>
    bag(id, 'roll', {
      grams: grams(700),
      berth: 'drawer',
      fixedIn: 'drawer',
      pockets: slots(id, [30, 30, 35, 35, 40, 40, 45, 50, 55, 60, 60, 70], 150),
    });
  const box = (id: string, litres: number, at: string, more: Partial<StowBag> = {}): StowBag =>
    bag(id, 'box', {
      grams: grams(1200),
      berth: at,
      fixedIn: at,
      length: mm(400),
      width: mm(300),
      height: mm(Math.round((litres * 1e6) / (400 * 300))),
      limit: grams(22_000),
      ...more,
    });
  return [
    bag('grab', 'pouch', {
      firstGrab: true,
      fixedIn: 'cab',
      millilitres: millilitres(6000),
      length: mm(350),
    }),
    spanner('roll-a'),
    spanner('roll-b'),
    spanner('roll-c'),
    bag('pouch-e', 'pouch', { fixedIn: 'drawer', millilitres: millilitres(4000), length: mm(300) }),
    bag('pouch-t', 'pouch', { fixedIn: 'drawer', millilitres: millilitres(4000), length: mm(300) }),
    bag('bag-a', 'bag', { berth: 'canopy', millilitres: millilitres(15_000), length: mm(600) }),
    bag('bag-b', 'bag', { berth: 'canopy', millilitres: millilitres(15_000), length: mm(600) }),
    box('sockets', 8, 'drawer'),
    box('fluids', 20, 'canopy', { spillproof: true }),
    box('spares', 25, 'canopy'),
    box('spares-2', 25, 'canopy'),
    box('heavy', 20, 'canopy'),
    box('aerosols', 8, 'canopy', { spillproof: true }),
  ];
}

const MARKS: readonly (readonly StowMark[])[] = [
  ['liquid'],
  ['electric'],
  ['sharp'],
  ['lithium', 'battery'],
  ['aerosol', 'liquid'],
];

/** So many belongings of every shape, the kind of numbers a kit has. */
export function randomStowage(
  start: number,
  pieces: number,
  bags: readonly StowBag[] = fourteenBags(),
): StowProblem {
  const draw = drawer(start);
  const whole = (from: number, to: number): number => Math.floor(from + draw() * (to - from + 1));
  return {
    pieces: Array.from({ length: pieces }, (_, n) => {
      const form = draw() < 0.5 ? 'long' : draw() < 0.5 ? 'round' : 'flat';
      const length = form === 'long' ? whole(90, 330) : whole(25, 160);
      const bulk = Math.max(3, Math.round(length * whole(40, 900) * 0.001 * (draw() < 0.15 ? 6 : 1)));
      const marks = draw() < 0.3 ? (MARKS[whole(0, MARKS.length - 1)] ?? []) : [];
      return piece(`p${n}`, {
        grams: grams(whole(10, 40) + Math.round(bulk * (0.5 + 2 * draw()))),
        millilitres: millilitres(bulk),
        size: measuresFrom(length, bulk, form),
        marks,
        uses: draw() < 0.6 ? whole(1, 12_000) : 0,
        firstGrab: draw() < 0.06,
        groups: draw() < 0.25 ? [`g${whole(1, 8)}`] : [],
      });
    }),
    bags,
    berths: [
      berth('cab', 1300, { seat: true, atHand: true }),
      berth('drawer', 2700, { room: grams(60_000), z: mm(100) }),
      berth('canopy', 2950, { room: grams(150_000) }),
      berth('tail', 3900, { room: grams(40_000), atHand: true, z: mm(200) }),
    ],
    rearAxle: mm(3080),
    loads: [],
  };
}
