import { z } from 'zod';
import { cents, chance, events, grams, id, text } from './fields.ts';

export const cure = z
  .strictObject({
    kind: z
      .enum(['carry', 'buy', 'make-ready', 'renew-at-home', 'learn', 'bring-a-person'])
      .describe(
        'What has to be done: bring it from home, buy it, charge or renew it, mend at home first, learn, or take somebody along',
      ),
    words: text('The cure in a sentence'),
    items: z
      .array(id('Belonging id, `buy:` and a catalogue id, or `ready:` and a belonging id'))
      .describe('What it takes'),
    grams: grams('Mass it adds to the kit'),
    cents: cents('What it costs'),
    best: z
      .array(z.enum(['grams', 'money']).describe('A measure'))
      .describe("The measures by which it is the cheapest of this gap's cures"),
  })
  .meta({ id: 'Cure', description: 'One way to close a gap (M10)' });

export const gap = z
  .strictObject({
    failure: id(
      'Failure id, as `waymend tables failures` lists it; `floor-` and a function for a need of the floor',
    ),
    title: text('Failure in words'),
    group: id('Failure group id; `floor` for a need of the floor'),
    reason: z
      .enum(['tools', 'parts', 'skill', 'people', 'trust', 'nothing-helps', 'floor'])
      .describe('What is lacking; `trust`: a temporary repair that would not last to help'),
    words: text('The reason in a sentence'),
    expected: events('Failures that this gap leaves without an answer'),
    worth: chance('Chance of driving home unaided that closing the gap would add'),
    cures: z.array(cure).describe('Cheapest cures; empty when nothing helps'),
  })
  .meta({
    id: 'Gap',
    description: 'A failure that would end the drive and that this kit does not answer (M10)',
  });

export const gapsAnswer = z
  .strictObject({
    schema: z.literal('waymend.gaps/1').describe('Which answer this is'),
    trip: id('Trip id of the garage'),
    gaps: z.array(gap).describe('Worst first'),
  })
  .meta({ id: 'gaps', description: 'What `waymend gaps FILE --json` prints' });
