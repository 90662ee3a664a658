import { z } from 'zod';
import { amount, date, id, note, text } from './schema-parts.ts';

/** What happens to the belongings and the vehicle once they are in use. */

/** A care rule seen to on a belonging (or, for a rule of the whole kit, on none), and what was found. */
export const careMark = z.strictObject({
  belonging: id.optional(),
  /** Catalogue care rule. */
  rule: text,
  on: date,
  /** State of charge it was left at. */
  chargePct: z.number().min(0).max(100).optional(),
  by: id.optional(),
  note: note.optional(),
});

/** Counting the kit out and in, around a job. */
export const muster = z.strictObject({
  vehicle: id,
  trip: id.optional(),
  /** Catalogue job it is for. Absent: a count on its own. */
  job: text.optional(),
  openedOn: date,
  /** Absent while it is open: the bonnet stays up. */
  closedOn: date.optional(),
  note: note.optional(),
});

/**
 * One belonging in a muster: pieces out, and what became of them. Once it is closed, out = back + lost + damaged + used;
 * of a stock, `used` is jobs' worth or litres, and pieces that this empties need not come back.
 */
export const count = z.strictObject({
  muster: id,
  belonging: id,
  out: z.number().int().min(0).default(1),
  back: z.number().int().min(0).default(0),
  lost: z.number().int().min(0).default(0),
  damaged: z.number().int().min(0).default(0),
  /** Used up: pieces, or jobs' worth of stock. */
  used: z.number().min(0).default(0),
  missingParts: z.array(text).default([]),
});

/** A repair as it was done; a temporary one stays open until its permanent fix is recorded. */
export const repair = z.strictObject({
  vehicle: id,
  /** Catalogue job. */
  job: text,
  /** Catalogue expedient, when the job was done in a weaker way. */
  expedient: text.optional(),
  failure: text.optional(),
  on: date,
  atKm: amount('km'),
  lasts: z.enum(['permanent', 'temporary', 'made-safe']),
  /** How far and how fast it may be trusted. */
  trustKm: amount('km').optional(),
  speedKmh: z.number().min(0).optional(),
  /** Distances after the repair at which to look again. */
  lookAgainKm: z.array(amount('km')).default([]),
  /** The permanent fix. */
  mendedOn: date.optional(),
  note: note.optional(),
});

/** A look at a repair on the road. */
export const recheck = z.strictObject({
  repair: id,
  atKm: amount('km'),
  on: date,
  found: z.enum(['good', 'worse']).default('good'),
  note: note.optional(),
});

/** The odometer as read. */
export const reading = z.strictObject({
  vehicle: id,
  km: amount('km'),
  on: date,
  /** The instrument was replaced on that day: what the old one showed last. `km` is what the new one shows. */
  oldKm: amount('km').optional(),
});

/** A failure that happened; it teaches its rate. */
export const breakdown = z.strictObject({
  vehicle: id,
  /** Catalogue failure. */
  failure: text,
  on: date,
  atKm: amount('km'),
  ended: z.enum(['mended', 'limped', 'waited', 'towed']).default('mended'),
  repair: id.optional(),
  trip: id.optional(),
  note: note.optional(),
});

/** A belonging in somebody else's hands. */
export const loan = z.strictObject({
  belonging: id,
  copies: z.number().int().min(1).default(1),
  to: text,
  on: date,
  dueOn: date.optional(),
  backOn: date.optional(),
  note: note.optional(),
});

/** A job done at home with the kit alone, and what had to be fetched. */
export const drill = z.strictObject({
  job: text,
  vehicle: id,
  on: date,
  minutes: z.number().min(0).optional(),
  by: id.optional(),
  /** Catalogue things that were missing. */
  fetched: z.array(text).default([]),
  note: note.optional(),
});

/** After a trip: what was used, and what was wished for. Of what is not named, nobody said anything. */
export const use = z.strictObject({
  trip: id,
  /** A belonging that was there, or a catalogue thing that was not. */
  belonging: id.optional(),
  thing: text.optional(),
  said: z.enum(['used', 'wished-for', 'untouched']),
  times: z.number().int().min(1).default(1),
  note: note.optional(),
});
