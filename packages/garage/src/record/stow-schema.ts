import { z } from 'zod';
import { amount, id, note, text } from './schema-parts.ts';

/** What holds belongings, and where it rides. Inside measures. */
export const bag = z.strictObject({
  name: text,
  /** A roll has slots side by side; a pouch, a bag, a box and a case have pockets, or none. Absent: a bag. */
  kind: z.enum(['roll', 'pouch', 'bag', 'box', 'case']).optional(),
  berth: id.optional(),
  grams: amount('g').default(0),
  lengthMm: amount('mm').optional(),
  widthMm: amount('mm').optional(),
  heightMm: amount('mm').optional(),
  litres: amount('l').optional(),
  limitKg: amount('kg').optional(),
  /** Reached in seconds, for the first fifteen minutes. */
  firstGrab: z.boolean().optional(),
  /** What leaks inside stays inside. */
  spillproof: z.boolean().optional(),
  /** Where it was put by hand; a plan of stowage leaves it there. */
  fixed: z.boolean().optional(),
  note: note.optional(),
});

/** A place in a bag: a slot of a roll, a pouch sewn on, a bay between walls. */
export const pocket = z.strictObject({
  bag: id,
  name: text,
  /** From left to right, or from the top. */
  order: z.number().int().default(0),
  /** Flat width, which a tool's girth takes up. */
  widthMm: amount('mm'),
  /** Along the tool: what is longer sticks out, or does not close. */
  lengthMm: amount('mm'),
  /** How thick it may get; absent: as thick as cloth allows, half its width. */
  depthMm: amount('mm').optional(),
  /** Open at the top: a long tool may stand out of it. */
  openEnded: z.boolean().default(false),
  limitKg: amount('kg').optional(),
  note: note.optional(),
});
