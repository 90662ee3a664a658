import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import type { Refusal } from '@waymend/core/result';
import type { Belonging, Garage } from '../record/schema.ts';
import type { PlaceInFile } from './place-in-file.ts';
import { HEAVIEST_GRAMS, unusualMass } from './unusual-mass.ts';

/** Least and greatest that can be meant at all, in the unit the key names; `id` of the refusal on each side. */
interface Range {
  readonly key: string;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly kind: 'mass' | 'length' | 'distance' | 'amount' | 'torque' | 'money';
}

const RANGED = [
  'vehicles',
  'berths',
  'people',
  'bags',
  'pockets',
  'loads',
  'trips',
  'legs',
  'weakPoints',
  'belongings',
  'fittings',
  'repairs',
  'rechecks',
  'readings',
  'breakdowns',
] as const;
type Ranged = (typeof RANGED)[number];

const mass = (key: string, most: number, least = 0): Range => ({
  key,
  least,
  most,
  unit: 'kg',
  kind: 'mass',
});

const distance = (key: string): Range => ({ key, least: 0, most: 5_000_000, unit: 'km', kind: 'distance' });
const inside = (key: string, least = 0): Range => ({ key, least, most: 3_000, unit: 'mm', kind: 'length' });

/** What no vehicle, load or trip can be; anything inside may be odd but is believed. Common sense, no source. */
const RANGES: Readonly<Record<Ranged, readonly Range[]>> = {
  vehicles: [
    mass('emptyFrontKg', 20_000),
    mass('emptyRearKg', 20_000),
    mass('ratedFrontKg', 20_000),
    mass('ratedRearKg', 20_000),
    mass('ratedGrossKg', 40_000, 1),
    mass('ratedRoofKg', 2_000),
    mass('wheelMassKg', 500),
    { key: 'wheelbaseMm', least: 300, most: 12_000, unit: 'mm', kind: 'length' },
    { key: 'ageYears', least: 0, most: 120, unit: 'years', kind: 'amount' },
    { key: 'batteryAgeYears', least: 0, most: 40, unit: 'years', kind: 'amount' },
    { key: 'odometerKm', least: 0, most: 5_000_000, unit: 'km', kind: 'distance' },
  ],
  berths: [
    mass('limitKg', 20_000),
    { key: 'xMm', least: -3_000, most: 20_000, unit: 'mm', kind: 'length' },
    { key: 'litres', least: 0, most: 100_000, unit: 'l', kind: 'amount' },
    { key: 'zMm', least: -1_000, most: 4_000, unit: 'mm', kind: 'length' },
  ],
  people: [mass('massKg', 300, 1)],
  bags: [
    { key: 'grams', least: 0, most: 100_000, unit: 'g', kind: 'mass' },
    mass('limitKg', 1_000),
    { key: 'litres', least: 0, most: 2_000, unit: 'l', kind: 'amount' },
    ...['lengthMm', 'widthMm', 'heightMm'].map((key) => inside(key)),
  ],
  pockets: [mass('limitKg', 1_000), ...['widthMm', 'lengthMm', 'depthMm'].map((key) => inside(key, 1))],
  loads: [mass('kg', 10_000), { key: 'xMm', least: -3_000, most: 20_000, unit: 'mm', kind: 'length' }],
  trips: [
    mass('limitKg', 10_000),
    { key: 'limitLitres', least: 0, most: 100_000, unit: 'l', kind: 'amount' },
    { key: 'days', least: 0, most: 4_000, unit: 'days', kind: 'amount' },
    { key: 'campNights', least: 0, most: 4_000, unit: 'nights', kind: 'amount' },
    { key: 'budget', least: 0, most: 1e9, unit: '', kind: 'money' },
  ],
  legs: [
    { key: 'km', least: 0, most: 50_000, unit: 'km', kind: 'distance' },
    { key: 'helpKm', least: 0, most: 5_000, unit: 'km', kind: 'distance' },
    { key: 'iri', least: 0, most: 40, unit: 'm/km', kind: 'amount' },
    { key: 'doubtfulFills', least: 0, most: 1_000, unit: 'fills', kind: 'amount' },
  ],
  weakPoints: [{ key: 'factor', least: 0, most: 1_000, unit: '', kind: 'amount' }],
  belongings: [
    { key: 'grams', least: 0, most: HEAVIEST_GRAMS, unit: 'g', kind: 'mass' },
    { key: 'lengthMm', least: 0, most: 10_000, unit: 'mm', kind: 'length' },
    { key: 'handleMm', least: 0, most: 10_000, unit: 'mm', kind: 'length' },
    { key: 'bulkMl', least: 0, most: 1_000_000, unit: 'ml', kind: 'amount' },
    { key: 'stock', least: 0, most: 10_000, unit: '', kind: 'amount' },
    { key: 'price', least: 0, most: 1e7, unit: '', kind: 'money' },
    { key: 'copies', least: 0, most: 10_000, unit: 'pieces', kind: 'amount' },
  ],
  fittings: [{ key: 'torqueNm', least: 0.1, most: 5_000, unit: 'Nm', kind: 'torque' }],
  repairs: [distance('atKm'), distance('trustKm')],
  rechecks: [distance('atKm')],
  readings: [distance('km'), distance('oldKm')],
  breakdowns: [distance('atKm')],
};

/** Negative and impossible numbers, and unlikely ones that the owner is asked about (ids that end in -ask). */
export function doubtfulValues(garage: Garage, at: PlaceInFile): readonly Refusal[] {
  const refusals: Refusal[] = [];
  for (const { table, ranges } of RANGED.map((key) => ({ table: key, ranges: RANGES[key] }))) {
    const entities: Readonly<Record<string, object>> = garage[table];
    for (const [id, entity] of Object.entries(entities)) {
      const fields = new Map<string, unknown>(Object.entries(entity));
      for (const range of ranges) {
        const value = fields.get(range.key);
        if (typeof value !== 'number' || (value >= range.least && value <= range.most)) continue;
        const said = `${range.key} of ${id} is ${value}${range.unit === '' ? '' : ` ${range.unit}`}`;
        const path = [table, id, range.key];
        refusals.push(
          value < 0 && range.least >= 0
            ? at.refusal(`${range.kind}-negative`, path, `${said}; it cannot be negative, remove the minus`)
            : at.refusal(
                `${range.kind}-absurd`,
                path,
                `${said}; between ${range.least} and ${range.most} is possible, look at the unit`,
              ),
        );
      }
    }
  }
  for (const [id, belonging] of Object.entries(garage.belongings)) {
    const asked = massToAsk(id, belonging);
    if (asked !== null) refusals.push(at.refusal('mass-absurd-ask', ['belongings', id, 'grams'], asked));
  }
  for (const [id, fitting] of Object.entries(garage.fittings)) {
    const torque = fitting.torqueNm ?? 0;
    if (torque > MOST_LIKELY_TORQUE && !fitting.confirmed) {
      refusals.push(
        at.refusal(
          'torque-absurd-ask',
          ['fittings', id, 'torqueNm'],
          `torqueNm of ${id} is ${torque} Nm, more than any joint of the catalogue; if it is right, add "confirmed: true"`,
        ),
      );
    }
  }
  return refusals;
}

/** Above the tightest joints of light vehicles (estimate). */
const MOST_LIKELY_TORQUE = 800;
function massToAsk(id: string, belonging: Belonging): string | null {
  const unusual = unusualMass(belonging);
  if (unusual === null) return null;
  const { is, name, copies } = belonging;
  const what = (is === undefined ? undefined : BELONGING_BY_ID.get(is)?.name) ?? name ?? 'your own thing';
  return `${copies > 1 ? 'one of ' : ''}${id} (${what}) ${unusual}; if it is right, add "confirmed: true"`;
}
