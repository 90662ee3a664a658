import type { FactorTables } from '@waymend/core/failing/rate-tables';

const basis = { kind: 'estimate', why: 'written for these tests' } as const;

/** Rate factors that change nothing: a garage's rates are then base x share x distance, whatever the kit weighs. */
export const NEUTRAL_FACTORS: FactorTables = {
  roughness: {
    points: [{ iri: 1, factor: 1 }],
    surfaceIri: { sealed: 1, gravel: 1, corrugated: 1, rock: 1, sand: 1 },
    basis,
  },
  distance: { exponent: 0, referenceKm: 1, least: 1, most: 1, basis },
  age: { perYear: 0, referenceYears: 0, least: 1, most: 1, basis },
  batteryAge: { steps: [], basis },
  care: { factor: { fresh: 1, good: 1, average: 1, neglected: 1 }, basis },
  recentWork: { factor: 1, basis },
  load: [],
  pace: { factor: 1, basis },
  heat: [],
  cold: [],
  altitude: [],
  stones: { factor: { none: 1, gravel: 1, sharp: 1, staked: 1 }, basis },
  dust: [],
  dustEvents: { group: 'body', per1000km: 0, basis },
  fillEvents: { group: 'body', perFill: 0, basis },
  circuits: { group: 'body', per10000km: 0, surface: 'sealed', basis },
  modifications: [],
  driver: { factor: { gentle: 1, average: 1, hard: 1 }, basis },
  perDay: { group: 'body', perYear: 0, perCampNight: 0, campNightWhen: {}, basis },
  crossing: { events: { belowHub: 0, hubToSill: 0, sillToBonnet: 0, aboveIntake: 0 }, split: [], basis },
};
