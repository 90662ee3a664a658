import type { FailureShare, GroupRates, RateTables, Surface } from '../../src/failing/rate-tables.ts';

const SURFACES: readonly Surface[] = ['sealed', 'gravel', 'corrugated', 'rock', 'sand'];
const basis = { kind: 'estimate', why: 'trade reference, default rates' } as const;

function group(id: string, rates: readonly number[], immobilises: number, restored: number): GroupRates {
  const per = Object.fromEntries(SURFACES.map((s, n) => [s, rates[n] ?? 0]));
  return {
    id,
    title: id,
    per10000km: { sealed: 0, gravel: 0, corrugated: 0, rock: 0, sand: 0, ...per },
    immobilises,
    restored,
    basis,
  };
}

/** Default rates per 10,000 km of a ten-year-old, averagely kept 4x4 inside its limits. Estimates of the trade reference. */
export const TRADE_GROUPS: readonly GroupRates[] = [
  group('tyre', [0.15, 1, 2.5, 4, 0.8], 0.9, 0.95),
  group('battery', [0.12, 0.12, 0.2, 0.2, 0.15], 0.95, 0.9),
  group('charging-starting', [0.02, 0.03, 0.08, 0.08, 0.04], 0.6, 0.65),
  group('wiring', [0.03, 0.06, 0.25, 0.2, 0.06], 0.4, 0.85),
  group('ignition-management', [0.035, 0.04, 0.07, 0.07, 0.05], 0.6, 0.45),
  group('fuel-air', [0.02, 0.05, 0.12, 0.08, 0.08], 0.7, 0.7),
  group('cooling', [0.015, 0.025, 0.06, 0.08, 0.08], 0.9, 0.7),
  group('brakes', [0.006, 0.015, 0.07, 0.08, 0.01], 0.5, 0.7),
  group('steering', [0.002, 0.006, 0.05, 0.07, 0.006], 0.7, 0.5),
  group('suspension', [0.005, 0.03, 0.4, 0.3, 0.05], 0.35, 0.65),
  group('driveline', [0.006, 0.02, 0.12, 0.3, 0.08], 0.5, 0.6),
  group('transmission', [0.01, 0.012, 0.03, 0.06, 0.06], 0.8, 0.35),
  group('exhaust', [0.003, 0.01, 0.08, 0.06, 0.005], 0.1, 0.9),
  group('body', [0.005, 0.03, 0.35, 0.15, 0.02], 0.1, 0.85),
  group('engine', [0.01, 0.012, 0.02, 0.04, 0.03], 0.9, 0.15),
  group('locks-glass', [0.03, 0.05, 0.08, 0.06, 0.04], 0.5, 0.6),
];

export const FAILURES: readonly FailureShare[] = [
  ...TRADE_GROUPS.filter((g) => g.id !== 'suspension').map((g) => ({
    id: `${g.id}-fails`,
    group: g.id,
    title: `${g.id} fails`,
    share: 2,
  })),
  {
    id: 'leaf-broken',
    group: 'suspension',
    title: 'Leaf broken',
    share: 3,
    when: { any: ['leaf-rear', 'leaf-front'] },
  },
  {
    id: 'coil-broken',
    group: 'suspension',
    title: 'Coil broken',
    share: 1,
    when: { any: ['coil-rear', 'coil-front'] },
  },
  { id: 'shock-dead', group: 'suspension', title: 'Shock absorber dead', share: 6 },
  {
    id: 'air-spring-burst',
    group: 'suspension',
    title: 'Air helper burst',
    share: 2,
    immobilises: 0.05,
    when: { all: ['assist-air-springs'], none: ['leaf-rear'] },
  },
  { id: 'air-filter', group: 'fuel-air', title: 'Air filter blocked', share: 1 },
];

const wear = ['suspension', 'steering', 'body', 'wiring', 'exhaust'];
const on = (groups: readonly string[], factor: number) => Object.fromEntries(groups.map((g) => [g, factor]));
const ALL = TRADE_GROUPS.map((g) => g.id);
const INFINITE = Number.POSITIVE_INFINITY;

/** Figures of the trade reference, so that a change in the catalogue does not move these checks. */
export const TABLES: RateTables = {
  groups: TRADE_GROUPS,
  failures: FAILURES,
  factors: {
    roughness: {
      id: 'roughness',
      title: 'roughness',
      groups: wear,
      slope: 0.0137 * 13,
      referenceIri: 3,
      linearAboveIri: 120 / 13,
      surfaceIri: { sealed: 3, gravel: 7, corrugated: 11, rock: 12, sand: 6 },
      basis: { kind: 'recalled', of: 'World Bank HDM-III, parts consumption' },
    },
    accumulatedKm: {
      id: 'accumulated-km',
      title: 'distance run so far',
      groups: ALL,
      exponent: 0.308,
      ordinaryKmPerYear: 15_000,
      assumedAgeYears: 10,
      leastKm: 10_000,
      basis: { kind: 'recalled', of: 'World Bank HDM-III, parts consumption' },
    },
    vehicleAge: {
      id: 'vehicle-age',
      title: 'age',
      groups: ALL,
      perYear: 0.05,
      referenceYears: 10,
      least: 0.5,
      greatest: 1.5,
      basis,
    },
    batteryAge: {
      id: 'battery-age',
      title: 'battery age',
      steps: [
        { upTo: 3, by: { battery: 0.3 } },
        { upTo: 4, by: { battery: 0.6 } },
        { upTo: 5, by: { battery: 1 } },
        { upTo: 6, by: { battery: 2 } },
        { upTo: INFINITE, by: { battery: 3 } },
      ],
      basis,
    },
    care: {
      id: 'care',
      title: 'care',
      words: { fresh: on(ALL, 0.3), good: on(ALL, 0.6), average: {}, neglected: on(ALL, 2) },
      basis,
    },
    recentWork: {
      id: 'recent-work',
      title: 'work done lately',
      factor: 2,
      basis: { kind: 'common-practice' },
    },
    load: {
      id: 'load',
      title: 'load',
      exponents: { tyre: 4, suspension: 5, brakes: 2, driveline: 2, cooling: 2 },
      basis,
    },
    driver: {
      id: 'driver',
      title: 'driving',
      words: { gentle: on(ALL, 0.5), average: {}, hard: on(ALL, 2) },
      basis,
    },
    corrugationPace: {
      id: 'corrugation-pace',
      title: 'pace on corrugations',
      by: { suspension: 1.5 },
      onPart: { part: 'shock absorbers', factor: 2.5 },
      basis,
    },
    heat: {
      id: 'heat',
      title: 'heat',
      steps: [
        { upTo: 35, by: {} },
        { upTo: INFINITE, by: { cooling: 1.5, tyre: 1.5 } },
      ],
      basis,
    },
    cold: {
      id: 'cold',
      title: 'cold',
      steps: [
        { upTo: -20, by: { battery: 4 } },
        { upTo: -10, by: { battery: 2 } },
        { upTo: INFINITE, by: {} },
      ],
      basis,
    },
    altitude: {
      id: 'altitude',
      title: 'altitude',
      steps: [
        { upTo: 3000, by: {} },
        { upTo: INFINITE, by: { cooling: 1.3 } },
      ],
      basis: { kind: 'common-practice' },
    },
    stones: {
      id: 'stones',
      title: 'stones',
      words: { none: {}, gravel: {}, sharp: { tyre: 2.5 }, staked: { tyre: 3.5 } },
      basis,
    },
    dust: { id: 'dust', title: 'dust', by: { 'charging-starting': 1.5 }, basis },
    liftKit: { id: 'lift-kit', title: 'lift', by: { driveline: 1.25 }, aboveMm: 50, basis },
    largeTyres: {
      id: 'large-tyres',
      title: 'large tyres',
      by: { steering: 1.5, driveline: 1.5 },
      abovePct: 10,
      basis,
    },
    lockersOnRock: {
      id: 'lockers-on-rock',
      title: 'locked axles',
      when: { all: ['lockers'] },
      by: { driveline: 1.5 },
      basis,
    },
    roofOverload: { id: 'roof-overload', title: 'roof overloaded', by: { body: 5 / 3 }, basis },
    addedCircuits: {
      id: 'added-circuits',
      title: 'circuits added',
      group: 'wiring',
      eachPer10000km: { sealed: 0.0012, gravel: 0.0024, corrugated: 0.01, rock: 0.008, sand: 0.0024 },
      basis,
    },
    added: [
      { id: 'day', title: 'days away', each: 0.1 / 365, counts: 'day', group: 'battery', basis },
      {
        id: 'night',
        title: 'nights with a fridge',
        when: { all: ['fridge'], none: ['solar'] },
        each: 0.0005,
        counts: 'camp night',
        group: 'battery',
        basis,
      },
      {
        id: 'dust-filter',
        title: 'dust',
        each: 0.5,
        counts: '10,000 km of dusty leg',
        group: 'fuel-air',
        failure: 'air-filter',
        basis,
      },
      {
        id: 'fill',
        title: 'doubtful fills',
        each: 0.02,
        counts: 'fill',
        group: 'fuel-air',
        failure: 'not-on-this-vehicle',
        basis,
      },
      {
        id: 'waxing',
        title: 'cold nights',
        when: { all: ['diesel'] },
        each: 0.03,
        counts: 'cold night',
        group: 'fuel-air',
        basis,
      },
    ],
    crossings: {
      id: 'crossings',
      title: 'water crossings',
      each: { belowHub: 0.0005, hubToSill: 0.005, sillToBonnet: 0.02, aboveIntake: 0.1 },
      split: { wiring: 0.25, 'charging-starting': 0.25, driveline: 0.25, cooling: 0.1, engine: 0.15 },
      basis,
    },
  },
};
