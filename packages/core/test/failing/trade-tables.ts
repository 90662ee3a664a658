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
  { id: 'diesel-waxed', group: 'fuel-air', title: 'Diesel waxed', share: 0, when: { all: ['diesel'] } },
];

const wear = ['suspension', 'steering', 'body', 'wiring', 'exhaust'];

export const TABLES: RateTables = {
  groups: TRADE_GROUPS,
  failures: FAILURES,
  factors: {
    roughness: {
      groups: wear,
      points: [
        { iri: 3, factor: 1 },
        { iri: 4, factor: 1.2 },
        { iri: 5, factor: 1.4 },
        { iri: 6, factor: 1.7 },
        { iri: 8, factor: 2.4 },
        { iri: 10, factor: 3.5 },
        { iri: 14, factor: 5.6 },
      ],
      surfaceIri: { sealed: 3, gravel: 6, corrugated: 10, rock: 14, sand: 6 },
      basis: { kind: 'recalled', of: 'World Bank vehicle operating cost model, parts' },
    },
    distance: {
      exponent: 0.308,
      referenceKm: 150_000,
      least: 0.5,
      most: 1.5,
      basis: { kind: 'recalled', of: 'parts use' },
    },
    age: { perYear: 0.05, referenceYears: 10, least: 0.5, most: 1.5, basis },
    batteryAge: {
      groups: ['battery'],
      steps: [
        { fromYears: 0, factor: 0.3 },
        { fromYears: 4, factor: 0.6 },
        { fromYears: 5, factor: 1 },
        { fromYears: 6, factor: 2 },
        { fromYears: 7, factor: 3 },
      ],
      basis,
    },
    care: { factor: { fresh: 0.3, good: 0.6, average: 1, neglected: 2 }, basis },
    recentWork: { factor: 2, basis: { kind: 'common-practice' } },
    load: [
      { groups: ['tyre'], exponent: 4, of: 'axle', basis },
      { groups: ['suspension'], exponent: 5, of: 'axle', basis },
      { groups: ['brakes', 'driveline', 'cooling'], exponent: 2, of: 'gross', basis },
    ],
    pace: { groups: ['suspension'], factor: 2.5, basis },
    heat: [
      { groups: ['cooling'], threshold: 35, factor: 1.5, basis },
      { groups: ['tyre'], threshold: 35, factor: 1.5, softTyres: 3, basis },
    ],
    cold: [{ groups: ['battery', 'charging-starting'], threshold: -10, factor: 3, basis }],
    waxing: {
      group: 'fuel-air',
      failure: 'diesel-waxed',
      when: { all: ['diesel'] },
      below: -10,
      perNight: 0.05,
      basis,
    },
    altitude: [{ groups: ['cooling'], threshold: 3000, factor: 1.3, basis: { kind: 'common-practice' } }],
    stones: { groups: ['tyre'], factor: { none: 1, gravel: 1, sharp: 2, staked: 4 }, basis },
    dust: [{ groups: ['charging-starting'], factor: 1.5, basis }],
    dustEvents: { group: 'fuel-air', failure: 'air-filter', per1000km: 0.05, basis },
    fillEvents: { group: 'fuel-air', perFill: 0.02, basis },
    circuits: { group: 'wiring', per10000km: 0.01, surface: 'corrugated', basis },
    modifications: [
      { id: 'lift', title: 'Lifted', groups: ['driveline'], liftMoreThanMm: 50, factor: 1.5, basis },
      {
        id: 'large-tyres',
        title: 'Large tyres',
        groups: ['steering', 'driveline'],
        oversizeMoreThanPct: 10,
        factor: 1.5,
        basis,
      },
      {
        id: 'lockers',
        title: 'Lockers on rock',
        groups: ['driveline'],
        when: { all: ['lockers'] },
        surface: 'rock',
        factor: 2,
        basis,
      },
      { id: 'roof', title: 'Roof overloaded', groups: ['body'], roofOverloaded: true, factor: 3, basis },
    ],
    driver: { factor: { gentle: 0.5, average: 1, hard: 2 }, basis },
    perDay: {
      group: 'battery',
      perYear: 0.1,
      perCampNight: 0.0005,
      campNightWhen: { all: ['fridge'], none: ['solar'] },
      basis,
    },
    crossing: {
      events: { belowHub: 0.0005, hubToSill: 0.005, sillToBonnet: 0.02, aboveIntake: 0.1 },
      split: [
        { group: 'wiring', share: 0.25 },
        { group: 'charging-starting', share: 0.25 },
        { group: 'driveline', share: 0.25 },
        { group: 'cooling', share: 0.1 },
        { group: 'engine', share: 0.15 },
      ],
      basis,
    },
  },
};
