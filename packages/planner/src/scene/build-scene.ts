import type { Feature } from '@waymend/catalogue/shape/words';
import { ratesOf } from '@waymend/core/failing/rates';
import type { RateResult } from '@waymend/core/failing/rate-result';
import { loadOf, loadRatios } from '@waymend/core/loading/load';
import { berthRoom, loadRowsOf } from '@waymend/core/loading/load-rows';
import { cents, grams, kilograms, millilitres } from '@waymend/core/quantity/units';
import type { FunctionNeed, Scene, SceneLimits, Together } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Garage, Trip, Vehicle } from '@waymend/garage/record/schema';
import type { Trade } from '../trade.ts';
import { functionWord } from './function-word.ts';
import { sceneJobs } from './jobs.ts';
import { loadInput, lump } from './load.ts';
import type { Table } from './pieces.ts';
import { ownedPieces, readyPieces, shopPieces } from './pieces.ts';
import { holds } from './features.ts';
import type { Loadedness } from './rate-input.ts';
import { learnedFactors } from './own-log.ts';
import { rateInput } from './rate-input.ts';
import { featuresOf, jointsWithTowed, towedOn } from './towed.ts';
import { troubleOf } from './trouble.ts';

/** Limits of one question; what is absent comes from the trip. */
export interface Ask {
  readonly limitGrams?: number | null;
  readonly limitMl?: number | null;
  readonly budgetCents?: number;
  readonly mustDo?: readonly string[];
}

/** A scene with what made it, so that a kit can be weighed in it again. */
export interface BuiltScene {
  readonly scene: Scene;
  readonly rates: RateResult;
  readonly garage: Garage;
  readonly tripId: string;
  readonly trip: Trip;
  readonly vehicle: Vehicle;
  readonly features: ReadonlySet<Feature>;
  readonly ask: Ask;
}

/** Share of the heavier axle's rating that a jack must raise and a stand hold (M4). */
const LIFT_SHARE = 0.6;
/** From here on an ordinary jack is too short: body lift in mm, tyres in per cent over the original diameter (estimate). */
const TALL_LIFT_MM = 50;
const TALL_TYRE_PCT = 10;

/** What every trip carries whatever the score says (M7). */
export const FLOOR: readonly FunctionNeed[] = [
  { fn: 'light' },
  { fn: 'hands' },
  { fn: 'eyes', safety: true },
  { fn: 'fire' },
  { fn: 'warn' },
  { fn: 'chock' },
  { fn: 'support', safety: true },
];

/** The model's view of one trip of a garage (Scene), or why there is none. */
export function buildScene(garage: Garage, tripId: string, trade: Trade, ask: Ask = {}): Result<BuiltScene> {
  const trip = garage.trips[tripId];
  if (trip === undefined) {
    const known = Object.keys(garage.trips).join(', ');
    return refuse(
      'trip-unknown',
      `There is no trip "${tripId}"; this garage has ${known === '' ? 'none' : known}`,
      { path: 'trips' },
    );
  }
  const vehicle = garage.vehicles[trip.vehicle];
  if (vehicle === undefined)
    return refuse('vehicle-unknown', `The trip names the vehicle "${trip.vehicle}", which is not there`, {
      path: `trips.${tripId}.vehicle`,
    });
  const pattern = trade.patterns.find((p) => p.id === vehicle.pattern) ?? null;
  const towed = towedOn(garage, trip, trade.patterns);
  const features = new Set<Feature>([
    ...featuresOf(vehicle, pattern),
    ...(towed === null ? [] : featuresOf(towed.trailer, towed.pattern)),
  ]);
  const places = jointsWithTowed(garage, trip.vehicle, vehicle, pattern, towed, trade.places);
  if (!places.ok) return places;
  const joints = places.value;

  const people = trip.people.flatMap((id) => garage.people[id] ?? []);
  const liftKg = Math.round(LIFT_SHARE * Math.max(vehicle.ratedFrontKg, vehicle.ratedRearKg));
  const tall = vehicle.liftMm > TALL_LIFT_MM || vehicle.tyreOversizePct > TALL_TYRE_PCT;
  const jobs = sceneJobs(trade.jobs, joints, features, people, { liftKg, tall });

  const table = tableOf(garage, trip, trade, features, ask.budgetCents ?? Math.round(trip.budget * 100));
  if (!table.ok) return table;
  const limits = limitsOf(garage, trip, vehicle, trade, ask);
  if (!limits.ok) return limits;
  const loaded = loadedness(garage, trip, vehicle, trade, limits.value.grams ?? ownedGrams(table.value));
  if (!loaded.ok) return loaded;
  const rates = tripRates(garage, tripId, trip, vehicle, features, trade, loaded.value);
  const facts = new Map(rates.failures.map((f) => [f.failure, f]));
  const failures = new Map(trade.failures.map((f) => [f.id, f]));
  const scene: Scene = {
    joints,
    jobs,
    trouble: troubleOf(rates.byReach, failures, facts, jobs),
    crew: { count: people.length, heaviest: kilograms(Math.max(0, ...people.map((p) => p.massKg))) },
    pieces: table.value.pieces,
    bundles: table.value.bundles,
    together: togetherRows(trade),
    floor: FLOOR,
    limits: limits.value,
    mustDo: ask.mustDo ?? trip.mustDo,
  };
  return ok({ scene, rates, garage, tripId, trip, vehicle, features, ask });
}

/** The same trip's rates with another mass of kit aboard: the load factor of M1 at the mass really carried. */
export function tripRates(
  garage: Garage,
  tripId: string,
  trip: Trip,
  vehicle: Vehicle,
  features: ReadonlySet<Feature>,
  trade: Trade,
  loaded: Loadedness,
): RateResult {
  const tables = { groups: trade.groups, failures: trade.failures, factors: trade.factors };
  const learned = learnedFactors(garage, trip.vehicle, vehicle, features, trade);
  return ratesOf(rateInput(garage, trip, tripId, vehicle, features, tables, loaded, learned));
}

/** How loaded the vehicle is with so much kit where the kit rides. */
export function loadedness(
  garage: Garage,
  trip: Trip,
  vehicle: Vehicle,
  trade: Trade,
  kitGrams: number,
): Result<Loadedness> {
  const load = loadOf(loadInput(garage, trip, vehicle, [lump(kitGrams)], trade.loadIndex));
  if (!load.ok) return load;
  const { roof } = load.value;
  return ok({ ...loadRatios(load.value), roofOverloaded: roof.limitKg !== null && roof.kg > roof.limitKg });
}

function tableOf(
  garage: Garage,
  trip: Trip,
  trade: Trade,
  features: ReadonlySet<Feature>,
  budgetCents: number,
): Result<Table> {
  // A spare for something this vehicle does not have is of no use on it, owned or not.
  const useful = new Map(
    trade.belongings.map((b) => [b.id, holds(b.fits, features) ? b : { ...b, offers: [], stock: [] }]),
  );
  const owned = ownedPieces(garage, useful);
  if (!owned.ok) return owned;
  const ready = readyPieces(garage, useful);
  if (!ready.ok) return ready;
  const shop = shopPieces(
    { ...trade, belongings: trade.belongings.filter((b) => holds(b.fits, features)) },
    budgetCents,
    trip.buyFrom === 'catalogue',
  );
  if (!shop.ok) return shop;
  return ok({
    pieces: [...owned.value.pieces, ...ready.value, ...shop.value.pieces],
    bundles: [...owned.value.bundles, ...shop.value.bundles],
  });
}

function ownedGrams(table: Table): number {
  return table.pieces.reduce((sum, p) => sum + (p.owned ? p.grams : 0), 0);
}

function limitsOf(garage: Garage, trip: Trip, vehicle: Vehicle, trade: Trade, ask: Ask): Result<SceneLimits> {
  const input = loadInput(garage, trip, vehicle, [], trade.loadIndex);
  const bare = loadOf(input);
  if (!bare.ok) return bare;
  const loads = loadRowsOf(input);
  if (!loads.ok) return loads;
  const kg =
    ask.limitGrams !== undefined
      ? ask.limitGrams
      : trip.limitKg === undefined
        ? null
        : Math.round(trip.limitKg * 1000);
  const ml =
    ask.limitMl !== undefined
      ? ask.limitMl
      : trip.limitLitres === undefined
        ? null
        : Math.round(trip.limitLitres * 1000);
  return ok({
    grams: kg === null ? null : grams(kg),
    millilitres: ml === null ? null : millilitres(ml),
    cents: cents(ask.budgetCents ?? Math.round(trip.budget * 100)),
    berths: berthRoom(bare.value).map((b) => ({
      id: b.id,
      grams: grams(b.grams),
      ...(b.id === trip.kitBerth ? { kit: true as const } : {}),
    })),
    loads: loads.value,
  });
}

function togetherRows(trade: Trade): readonly Together[] {
  return trade.substitutions.flatMap((row) => {
    const { how, grade, wanted } = row;
    if (how.by !== 'together' || grade === 'forbidden') return [];
    const needs = how.needs.map(({ fn, of, ...rest }) => ({ ...rest, ...functionWord(fn, of) }));
    const most = how.upTo === undefined ? {} : { upTo: how.upTo };
    return [{ id: row.id, wanted: functionWord(wanted.fn, wanted.of), grade, needs, ...most }];
  });
}
