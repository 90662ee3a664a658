import { z } from 'zod';
import { count, text } from './fields.ts';

export const checkAnswer = z
  .strictObject({
    schema: z.literal('waymend.check/1').describe('Which answer this is'),
    file: text('File that was read, as it was named'),
    version: z.number().int().min(1).describe('Version of the garage file, 1 or more'),
    counts: z
      .strictObject({
        vehicles: count('Vehicles and trailers'),
        people: count('People'),
        trips: count('Trips'),
        legs: count('Legs of all trips'),
        fittings: count('Fittings recorded'),
        assumedFittings: count('Fittings nobody has read or measured'),
        belongings: count('Belongings, one for all copies'),
        notUnderstood: count('Belongings that no entry of the catalogue describes'),
        weighed: count('Belongings that were weighed'),
        notReady: count('Belongings that are flat, expired, damaged, lent or unproven'),
        words: count('Words the owner has taught'),
      })
      .describe('What the garage holds'),
  })
  .meta({
    id: 'check',
    description: 'What `waymend check FILE --json` prints for a garage that is in order',
  });
