import { z } from 'zod';
import { chance, count, events, grams, id, orNull, share, text, yes } from './fields.ts';

const simulatedChance = z
  .strictObject({
    chance: chance('Share of the drawn trips that came home unaided'),
    low: chance('Lower end of its 95 % interval (Wilson)'),
    high: chance('Upper end of its 95 % interval (Wilson)'),
  })
  .meta({ id: 'SimulatedChance', description: 'A chance seen on drawn trips, with its interval' });

const story = z
  .strictObject({
    home: yes('The trip came home unaided'),
    events: z
      .array(
        z.strictObject({
          failure: id('Failure id'),
          title: text('Failure in words'),
          job: orNull(text('Repair that was tried; null when there was none')),
          held: yes('The repair held'),
          ranOut: yes('It could have been put right, but what that takes had been used up on this trip'),
          with: z.array(text('Piece in words')).describe('What it was done with'),
        }),
      )
      .describe('In the order they happened'),
  })
  .meta({ id: 'Story', description: 'One drawn trip on which something happened' });

export const simulateAnswer = z
  .strictObject({
    schema: z.literal('waymend.simulate/1').describe('Which answer this is'),
    trip: id('Trip id of the garage'),
    seed: count('The number that drew these trips'),
    trips: count('Trips drawn; those without a failure need no drawing'),
    unaided: simulatedChance.describe('With the planned kit'),
    stated: chance('Chance that the plan states (M5), at the mass really carried'),
    statedExactStock: chance('The same with spares that several failures share counted out exactly'),
    words: text('Whether the two agree, and what their difference is'),
    strands: z
      .array(
        z.strictObject({
          failure: id('Failure id'),
          title: text('Failure in words'),
          group: id('Failure group id'),
          share: share('Trips that it ends'),
        }),
      )
      .describe('What ends the drive, worst first'),
    used: z
      .array(
        z.strictObject({
          id: id('Belonging id'),
          name: text('Belonging in words'),
          perTrip: events('Repairs that took it in hand'),
        }),
      )
      .describe('How often each piece is used, most used first'),
    stories: z.array(story).describe('A handful of the trips, told'),
    against: z
      .strictObject({
        title: text('The other kit'),
        massGrams: grams('Its mass'),
        unaided: simulatedChance.describe('With the other kit, on the same trips with the same luck'),
        onlyThisKit: share('Trips that only the planned kit survives'),
        onlyTheOther: share('Trips that only the other survives'),
      })
      .nullable()
      .describe('Null unless --against was given'),
  })
  .meta({ id: 'simulate', description: 'What `waymend simulate FILE --json` prints (M12)' });
