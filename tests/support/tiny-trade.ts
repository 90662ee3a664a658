import type { CatalogueBelonging } from '@waymend/catalogue/shape/belonging';
import type { Failure, FailureGroup } from '@waymend/catalogue/shape/failure';
import type { Job } from '@waymend/catalogue/shape/job';
import type { Offer } from '@waymend/catalogue/shape/offer';
import type { Place } from '@waymend/catalogue/shape/place';
import type { Trade } from '@waymend/planner/trade';
import { NEUTRAL_FACTORS } from './tiny-factors.ts';

/**
 * A whole trade in miniature: five places, seven jobs, seven failures, two dozen tools. It has one of everything that the
 * model treats in its own way (counter-hold, critical nuts, flare nuts, drive trains, stock with one user and with several,
 * counts, fluids that add up, ways made together, expedients, trust, skill, people), and nothing else. All figures are made up.
 */
const basis = { kind: 'estimate', why: 'written for these tests' } as const;

const PLACES: readonly Place[] = [
  {
    id: 'wheel-nut',
    title: 'Wheel nut',
    system: 'wheels-tyres',
    drive: 'hex',
    sizes: ['19 mm'],
    torqueNm: [100, 110],
    access: 'recess',
    stance: 'standing',
    critical: 'wheel',
    basis,
  },
  {
    id: 'brake-union',
    title: 'Brake union',
    system: 'brakes',
    drive: 'flare',
    sizes: ['10 mm'],
    torqueNm: [12, 16],
    access: 'open',
    stance: 'kneeling',
    critical: 'brake',
    basis,
  },
  {
    id: 'shock-lower',
    title: 'Shock absorber, lower bolt',
    system: 'suspension-steering',
    drive: 'hex',
    sizes: ['17 mm'],
    torqueNm: [40, 60],
    access: 'open',
    counterHold: true,
    stance: 'kneeling',
    basis,
  },
  {
    id: 'alternator-bolt',
    title: 'Alternator bolt',
    system: 'starting-charging',
    drive: 'hex',
    sizes: ['13 mm'],
    torqueNm: [20, 22],
    access: 'side',
    stance: 'kneeling',
    basis,
  },
  {
    id: 'rack-mount-key',
    title: 'Rack bolt',
    system: 'body-trailer',
    drive: 'hex-key',
    sizes: ['6 mm'],
    torqueNm: [8, 12],
    access: 'open',
    stance: 'standing',
    basis,
  },
];

const plain = { minutes: [5, 30], steps: [], cautions: [], after: [], expedients: [], basis } as const;

const JOBS: readonly Job[] = [
  {
    ...plain,
    id: 'wheel-off',
    system: 'wheels-tyres',
    title: 'Change a wheel',
    outcome: 'drive-on',
    skill: 1,
    people: 1,
    raise: 'wheel',
    needs: [{ turn: 'wheel-nut' }],
  },
  {
    ...plain,
    id: 'plug-tyre',
    system: 'wheels-tyres',
    title: 'Plug a tyre',
    outcome: 'limp',
    trust: 'T3',
    skill: 1,
    people: 1,
    needs: [{ fn: 'plug' }, { fn: 'inflate', amount: 20 }],
    uses: [{ of: 'P-STRING', units: 2 }],
  },
  {
    ...plain,
    id: 'pipe',
    system: 'brakes',
    title: 'Mend a brake pipe',
    outcome: 'drive-on',
    skill: 3,
    people: 2,
    needs: [{ turn: 'brake-union' }, { fn: 'eyes', safety: true }],
    uses: [
      { of: 'P-PIPE', units: 1 },
      { of: 'P-STRING', units: 1 },
    ],
  },
  {
    ...plain,
    id: 'shock',
    system: 'suspension-steering',
    title: 'Take off a shock absorber',
    outcome: 'drive-on',
    skill: 2,
    people: 1,
    under: true,
    needs: [{ turn: 'shock-lower' }],
    expedients: [
      {
        id: 'tie',
        title: 'Tie it up',
        trust: 'T2',
        skill: 1,
        needs: [{ fn: 'lash', count: 2 }],
        steps: [],
        limits: 'slowly',
        relativeChance: 0.6,
      },
    ],
  },
  {
    ...plain,
    id: 'belt',
    system: 'cooling',
    title: 'Fit a belt',
    outcome: 'drive-on',
    skill: 2,
    people: 1,
    needs: [{ turn: 'alternator-bolt' }],
    uses: [{ of: 'P-BELT', units: 1 }],
  },
  {
    ...plain,
    id: 'coolant',
    system: 'cooling',
    title: 'Tape a hose and top up',
    outcome: 'limp',
    trust: 'T2',
    skill: 1,
    people: 1,
    needs: [
      { fn: 'seal', of: 'coolant' },
      { fn: 'fluid', of: 'coolant', amount: 3 },
    ],
  },
  {
    ...plain,
    id: 'rack',
    system: 'body-trailer',
    title: 'Tighten the rack',
    outcome: 'drive-on',
    skill: 1,
    people: 1,
    needs: [{ turn: 'rack-mount-key' }, { fn: 'pad' }],
  },
];

function group(id: FailureGroup['id'], rate: number, immobilises: number, restored: number): FailureGroup {
  return {
    id,
    title: id,
    per10000km: { sealed: rate, gravel: 2 * rate, corrugated: 3 * rate, rock: 5 * rate, sand: 4 * rate },
    factor90: 3,
    gammaShape: 2,
    immobilises,
    restored,
    basis,
  };
}

const GROUPS: readonly FailureGroup[] = [
  group('tyre', 0.61, 0.9, 0.95),
  group('brakes', 0.13, 0.3, 0.7),
  group('suspension', 0.37, 0.4, 0.6),
  group('cooling', 0.29, 0.8, 0.85),
  group('body', 0.17, 0.1, 0.9),
];

function failure(
  id: string,
  of: Failure['group'],
  share: number,
  jobs: readonly string[],
  more: Partial<Failure> = {},
): Failure {
  return { id, group: of, title: id, share, jobs, basis, ...more };
}

const FAILURES: readonly Failure[] = [
  failure('puncture', 'tyre', 7, ['wheel-off', 'plug-tyre']),
  failure('gash', 'tyre', 2, ['wheel-off']),
  failure('chafed-pipe', 'brakes', 1, ['pipe']),
  failure('dead-shock', 'suspension', 4, ['shock']),
  failure('bent-frame', 'suspension', 1, []),
  failure('lost-belt', 'cooling', 2, ['belt']),
  failure('split-hose', 'cooling', 3, ['coolant', 'belt'], { restored: 0.75 }),
  failure('loose-rack', 'body', 1, ['rack'], { immobilises: 0.2 }),
];

function thing(
  id: string,
  grams: number,
  offers: readonly Offer[],
  more: Partial<CatalogueBelonging> = {},
): CatalogueBelonging {
  return {
    id,
    kind: 'tool',
    name: id,
    offers,
    grams,
    lengthMm: 100,
    bulkMl: grams,
    price: 'P1',
    basis,
    ...more,
  };
}

const combination = (size: string, lengthMm: number): Offer => ({
  kind: 'wrench',
  ends: [
    { form: 'ring', size },
    { form: 'open', size },
  ],
  lengthMm,
});
const socket = (size: string, drive: '1/2 in' | '3/8 in', depth: 'shallow' | 'deep' = 'shallow'): Offer => ({
  kind: 'socket',
  size,
  depth,
  points: 6,
  drive,
});

/** Masses are whole multiples of 4 g, so that quarters of them on an axle are whole grams too. */
const BELONGINGS: readonly CatalogueBelonging[] = [
  thing('wrench-13', 80, [combination('13 mm', 170)]),
  thing('wrench-17', 140, [combination('17 mm', 210)]),
  thing('open-17', 100, [{ kind: 'wrench', ends: [{ form: 'open', size: '17 mm' }], lengthMm: 200 }]),
  thing('flare-10', 60, [{ kind: 'wrench', ends: [{ form: 'flare', size: '10 mm' }], lengthMm: 150 }]),
  thing('socket-13', 40, [socket('13 mm', '3/8 in')]),
  thing('socket-17', 60, [socket('17 mm', '3/8 in')]),
  thing('socket-19', 120, [socket('19 mm', '1/2 in', 'deep')]),
  thing('socket-3/4', 124, [socket('3/4 in', '1/2 in', 'deep')]),
  thing('ratchet-3/8', 300, [{ kind: 'handle', form: 'ratchet', drive: '3/8 in', lengthMm: 200 }]),
  thing('bar-1/2', 800, [{ kind: 'handle', form: 'bar', drive: '1/2 in', lengthMm: 450 }]),
  thing('bar-short', 400, [{ kind: 'handle', form: 'bar', drive: '1/2 in', lengthMm: 250 }]),
  thing('adapter', 40, [{ kind: 'adapter', handle: '1/2 in', socket: '3/8 in' }]),
  thing('tube', 600, [{ kind: 'lever-tube', lengthMm: 500 }]),
  thing('brace', 1000, [{ kind: 'brace', sizes: ['17 mm', '19 mm'], depth: 'deep', leverMm: 350 }]),
  thing('adjustable', 400, [{ kind: 'adjustable', jaw: 'adjustable', fromMm: 0, toMm: 30, lengthMm: 250 }]),
  thing('parallel', 520, [{ kind: 'adjustable', jaw: 'parallel', fromMm: 0, toMm: 40, lengthMm: 250 }]),
  thing('locking', 440, [
    { kind: 'pliers', form: 'locking', toMm: 40, lengthMm: 250 },
    { kind: 'does', fn: 'lash', grade: 'last-resort' },
  ]),
  thing('key-6', 40, [{ kind: 'key', head: 'hex-key', sizes: ['6 mm'], armMm: 90 }]),
  thing('bits', 160, [{ kind: 'bit-socket', head: 'hex-key', sizes: ['5 mm', '6 mm'], drive: '3/8 in' }]),
  thing('jack', 4000, [
    { kind: 'does', fn: 'lift', amount: 2000 },
    // A tempting line that must never count: jacks do not support.
    { kind: 'does', fn: 'support', amount: 5000 },
  ]),
  thing('stand', 2400, [{ kind: 'does', fn: 'support', amount: 2000 }]),
  thing('chocks', 600, [
    { kind: 'does', fn: 'chock' },
    { kind: 'does', fn: 'base', grade: 'with-care' },
  ]),
  thing('board', 1200, [
    { kind: 'does', fn: 'base' },
    { kind: 'does', fn: 'chock', grade: 'last-resort' },
  ]),
  thing('lamp', 120, [{ kind: 'does', fn: 'light' }]),
  thing('goggles', 80, [{ kind: 'does', fn: 'eyes' }]),
  thing('sunglasses', 40, [{ kind: 'does', fn: 'eyes', grade: 'last-resort' }]),
  thing('compressor', 2000, [{ kind: 'does', fn: 'inflate', amount: 40 }]),
  thing('foot-pump', 1400, [{ kind: 'does', fn: 'inflate', amount: 10 }]),
  thing('plugs', 200, [{ kind: 'does', fn: 'plug' }], { stock: [{ of: 'P-STRING', units: 5 }] }),
  thing('strings', 40, [], { kind: 'spare', stock: [{ of: 'P-STRING', units: 2 }] }),
  thing('pipe', 200, [], { kind: 'spare', stock: [{ of: 'P-PIPE', units: 1 }] }),
  thing('belt-spare', 160, [], { kind: 'spare', stock: [{ of: 'P-BELT', units: 1 }] }),
  thing('tape', 80, [
    { kind: 'does', fn: 'seal', of: 'coolant', grade: 'with-care' },
    { kind: 'does', fn: 'pad', grade: 'last-resort' },
  ]),
  thing('clamps', 120, [{ kind: 'does', fn: 'seal', of: 'coolant' }]),
  thing('water-2', 2000, [{ kind: 'does', fn: 'fluid', of: 'coolant', amount: 2 }], { kind: 'supply' }),
  thing('water-1', 1000, [{ kind: 'does', fn: 'fluid', of: 'coolant', amount: 1, grade: 'with-care' }], {
    kind: 'supply',
  }),
  thing('cord', 60, [{ kind: 'does', fn: 'lash' }]),
  thing('straps', 300, [{ kind: 'does', fn: 'lash', pieces: 2 }]),
  thing('rubber', 100, [{ kind: 'does', fn: 'pad' }]),
  thing('hammer', 900, [{ kind: 'does', fn: 'strike-hard' }]),
  thing('foam', 40, [{ kind: 'does', fn: 'pad', grade: 'with-care' }]),
];

/** What the shop sells within reach of a small budget; everything else costs more than anybody has. */
const SOLD: ReadonlyMap<string, number> = new Map([
  ['wrench-17', 900],
  ['clamps', 700],
]);
const OUT_OF_REACH = 9_999_900;

export const TINY_TRADE: Trade = {
  jobs: JOBS,
  places: PLACES,
  groups: GROUPS,
  failures: FAILURES,
  factors: NEUTRAL_FACTORS,
  belongings: BELONGINGS,
  sets: [],
  priceOf: (item) => SOLD.get(item.id) ?? OUT_OF_REACH,
  bandCents: () => OUT_OF_REACH,
  substitutions: [
    {
      id: 'two-boards',
      wanted: { fn: 'chock' },
      offered: 'two pads and a cord',
      grade: 'with-care',
      condition: 'always',
      how: { by: 'together', needs: [{ fn: 'pad' }, { fn: 'lash' }] },
      basis,
    },
    {
      id: 'tape-and-cord',
      wanted: { fn: 'seal', of: 'coolant' },
      offered: 'a pad under two lashings',
      grade: 'last-resort',
      condition: 'always',
      how: { by: 'together', needs: [{ fn: 'pad' }, { fn: 'lash', count: 2 }] },
      basis,
    },
  ],
  patterns: [],
  loadIndex: [],
};

/** Prices the shop asks for what it sells within reach, whole cents. */
export const TINY_PRICES: readonly number[] = [...SOLD.values()];
