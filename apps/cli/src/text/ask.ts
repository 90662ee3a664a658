import { JOBS } from '@waymend/catalogue/jobs/all';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { amountIn } from '@waymend/garage/record/quantity-text';
import type { Garage } from '@waymend/garage/record/schema';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';

/** What the command line asked, after its words have been understood. */
export interface Asked {
  readonly tripId: string;
  readonly question: Question;
  readonly seconds: number | null;
  readonly units: 'metric' | 'inch';
  readonly json: boolean;
}

/** Longest a plan thinks when nobody says otherwise: then it gives the best found, with its gap. */
const PATIENCE_SECONDS = 60;

/** No kit rides that would weigh more; the garage file stops there too. */
const MOST_GRAMS = 10_000_000;

export function asked(garage: Garage, options: Readonly<Record<string, unknown>>): Result<Asked> {
  const trip = tripOf(garage, text(options['trip']));
  if (!trip.ok) return trip;
  const limit = massLimit(text(options['limit']));
  if (!limit.ok) return limit;
  const volume = number(text(options['volume']), 'volume', 0, 100_000);
  if (!volume.ok) return volume;
  const budget = number(text(options['budget']), 'budget', 0, 1_000_000);
  if (!budget.ok) return budget;
  const seconds = number(text(options['seconds']), 'seconds', 0.05, 86_400);
  if (!seconds.ok) return seconds;
  const chance = chanceOf(text(options['chance']));
  if (!chance.ok) return chance;
  const must = list(options['must']);
  const unknown = (must ?? []).filter((id) => !JOBS.some((job) => job.id === id));
  if (unknown.length > 0)
    return refuse(
      'job-unknown',
      `There is no job ${unknown.join(', ').slice(0, 60)}; waymend tables jobs lists them`,
    );
  const aim: Question['aim'] =
    chance.value !== null
      ? { kind: 'least-mass', chance: chance.value }
      : must !== null && limit.value === undefined
        ? { kind: 'must-do' }
        : { kind: 'best-chance' };
  // The lightest kit is sought without the trip's own mass limit, unless one is given here.
  const limitGrams = limit.value ?? (aim.kind === 'best-chance' ? undefined : null);
  return ok({
    tripId: trip.value,
    question: {
      aim,
      ...(limitGrams === undefined ? {} : { limitGrams: limitGrams === 'none' ? null : limitGrams }),
      ...(volume.value === null ? {} : { limitMl: Math.round(volume.value * 1000) }),
      ...(budget.value === null ? {} : { budgetCents: Math.round(budget.value * 100) }),
      ...(must === null ? {} : { mustDo: must }),
    },
    seconds: seconds.value ?? PATIENCE_SECONDS,
    units: options['units'] === 'inch' || options['units'] === 'metric' ? options['units'] : garage.units,
    json: options['json'] === true,
  });
}

export function tripOf(garage: Garage, wanted: string | null): Result<string> {
  const ids = Object.keys(garage.trips);
  if (wanted !== null) {
    return ids.includes(wanted)
      ? ok(wanted)
      : refuse('trip-unknown', `There is no trip "${wanted}"; this garage has ${ids.join(', ')}`);
  }
  const [only] = ids;
  if (only === undefined)
    return refuse(
      'trip-missing',
      'This garage has no trip; add one under "trips" with a vehicle, people and legs',
    );
  return ids.length === 1
    ? ok(only)
    : refuse('trip-unclear', `This garage has several trips; say which with --trip: ${ids.join(', ')}`);
}

function massLimit(given: string | null): Result<number | 'none' | undefined> {
  if (given === null) return ok(undefined);
  if (given === 'none') return ok('none');
  const mass = amountIn('g', /^\d+([.,]\d+)?$/.test(given.trim()) ? `${given} kg` : given);
  if (!mass.ok) return mass;
  if (mass.value < 0 || mass.value > MOST_GRAMS)
    return refuse('limit-unclear', `--limit wants a mass from 0 to 10,000 kg, not "${given.slice(0, 20)}"`);
  return ok(Math.round(mass.value));
}

function chanceOf(given: string | null): Result<number | null> {
  if (given === null) return ok(null);
  const value = Number(given.replace('%', '').replace(',', '.').trim());
  const chance = given.includes('%') || value > 1 ? value / 100 : value;
  return chance > 0 && chance < 1
    ? ok(chance)
    : refuse(
        'chance-unclear',
        `"${given.slice(0, 20)}" is not a chance; write 95% or 0.95, less than certain`,
      );
}

export function number(
  given: string | null,
  name: string,
  least: number,
  most: number,
): Result<number | null> {
  if (given === null) return ok(null);
  const value = given.trim() === '' ? Number.NaN : Number(given.replace(',', '.'));
  return Number.isFinite(value) && value >= least && value <= most
    ? ok(value)
    : refuse(
        `${name}-unclear`,
        `--${name} wants a number from ${least} to ${most}, not "${given.slice(0, 20)}"`,
      );
}

export function text(given: unknown): string | null {
  return typeof given === 'string' ? given : null;
}

export function list(given: unknown): readonly string[] | null {
  return Array.isArray(given) ? given.map(String) : null;
}
