import { z } from 'zod';

/**
 * The fields that every answer is made of. Each takes what the field means and adds its unit and range, so that the JSON
 * Schema, docs/answers.md and the check of an answer can never say different things.
 */
export const text = (means: string) => z.string().describe(means);
export const id = (means: string) => z.string().min(1).describe(means);
export const yes = (means: string) => z.boolean().describe(means);

/** Whole grams: sums are exact (docs/design/quantities.md). */
export const grams = (means: string) => z.number().int().min(0).describe(`${means}, whole grams, 0 or more`);
export const millilitres = (means: string) =>
  z.number().int().min(0).describe(`${means}, whole millilitres, 0 or more`);
export const cents = (means: string) =>
  z.number().int().min(0).describe(`${means}, whole cents of the garage's currency, 0 or more`);
export const kilograms = (means: string) => z.number().describe(`${means}, kg, to the gram`);
export const count = (means: string) => z.number().int().min(0).describe(`${means}, 0 or more`);
export const kilometres = (means: string) => z.number().min(0).describe(`${means}, km, 0 or more`);
export const days = (means: string) => z.number().min(0).describe(`${means}, days, 0 or more`);

/** A probability. */
export const chance = (means: string) => z.number().min(0).max(1).describe(`${means}, probability 0 to 1`);
/** A share of a whole. */
export const share = (means: string) => z.number().min(0).max(1).describe(`${means}, share 0 to 1`);
/** Expected events on the trip: may pass 1. */
export const events = (means: string) =>
  z.number().min(0).describe(`${means}, expected events on this trip, 0 or more`);
/** Skill as the garage file counts it. */
export const skill = (means: string) => z.number().int().min(0).max(5).describe(`${means}, 1 to 5`);

/** The field, or null; the description moves out to where a reader of the schema looks. */
export const orNull = <T extends z.ZodType>(field: T) => field.nullable().describe(field.description ?? '');

export const jobRef = z
  .strictObject({
    id: id('Job id, as `waymend tables jobs` lists it; a job done at several positions adds @front or @rear'),
    title: text('Job in words'),
  })
  .meta({ id: 'JobRef', description: 'A repair' });
