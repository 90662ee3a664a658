import { z } from 'zod';
import { count, id, orNull, share, text, yes } from './fields.ts';

const line = z.number().int().min(1).describe('Line of the list, or row of the table, from 1');

const importMatch = z
  .strictObject({
    line,
    text: text('The line as typed'),
    is: id('Catalogue id of the thing or boxed set'),
    name: text('The thing or set in words'),
    copies: count('How many'),
    confidence: share('How sure the reading is'),
  })
  .meta({ id: 'ImportMatch', description: 'A belonging understood from a list' });

const notUnderstood = z
  .strictObject({
    line,
    text: text('The line, or the part of it, as typed'),
    reason: text('Why, and what to do, in a sentence'),
    suggestion: orNull(text('The nearest thing of the catalogue; null when nothing is near')),
  })
  .meta({ id: 'NotUnderstood', description: 'What a list says and nobody could read; nothing is dropped' });

export const importAnswer = z
  .strictObject({
    schema: z.literal('waymend.import/1').describe('Which answer this is'),
    file: orNull(text('List that was read; null when only words were taught')),
    written: yes('The garage was written'),
    matches: z.array(importMatch).describe('What was understood, in the order of the list'),
    notUnderstood: z.array(notUnderstood).describe('What was not'),
    repeated: count('Matches whose line the garage already holds'),
    unbelieved: z
      .array(
        z.strictObject({
          line,
          text: text('The line as typed'),
          sentence: text('What is odd about the mass'),
        }),
      )
      .describe('Belongings added without their mass, because it is absurd for their kind and not confirmed'),
  })
  .meta({ id: 'import', description: 'What `waymend import GARAGE LIST --json` prints' });
