import { z } from 'zod';
import { chance, count, grams, id, share, yes } from './fields.ts';

const curvePoint = z
  .strictObject({
    massGrams: grams('Mass of the kit'),
    pieces: count('Pieces in it'),
    unaided: chance('Chance of driving home unaided, at the load that kits are compared at (M1)'),
    proven: yes('No kit of that mass or less does better'),
    gap: share('Loss that could at most still be saved at that mass, relative to the point; 0 when proven'),
  })
  .meta({ id: 'CurvePoint', description: 'A kit that no lighter one equals' });

export const curveAnswer = z
  .strictObject({
    schema: z.literal('waymend.curve/1').describe('Which answer this is'),
    trip: id('Trip id of the garage'),
    complete: yes('Every such kit there is stands among the points'),
    points: z.array(curvePoint).min(1).describe('Light to heavy'),
  })
  .meta({ id: 'curve', description: 'What `waymend curve FILE --json` prints (M9)' });
