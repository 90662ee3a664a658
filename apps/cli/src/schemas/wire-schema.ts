import { z } from 'zod';
import { id, orNull, text, yes } from './fields.ts';

const quantity = (means: string, unit: string) => z.number().min(0).describe(`${means}, ${unit}, 0 or more`);

export const wireAnswer = z
  .strictObject({
    schema: z.literal('waymend.wire/1').describe('Which answer this is'),
    asked: z
      .strictObject({
        amps: quantity('What the circuit draws for long', 'A'),
        metresOneWay: quantity('From the battery to what is fed', 'm'),
        volts: quantity('Nominal supply: 12 or 24', 'V'),
        mostDropPct: quantity('Most that may be lost', '% of the supply'),
        engineSpace: yes('Some of it runs through the engine space'),
        insulationC: quantity('Insulation rating that counts', 'degrees Celsius'),
        insulationAssumed: yes('Nobody gave the insulation: the coolest of the table counts'),
      })
      .describe('The circuit as it was understood'),
    loopMetres: quantity('Copper there and back', 'm'),
    gauge: z
      .strictObject({
        awg: id('Gauge, AWG'),
        mm2: quantity('Copper of the gauge', 'mm2'),
        saeMm2: orNull(quantity('Least copper of cable marked with it to SAE; null where not listed', 'mm2')),
        allowedAmps: quantity('What it takes here, after heat', 'A'),
        dropVolts: quantity('Lost there and back, in the thinnest cable of that name', 'V'),
        dropPct: quantity('The same', '% of the supply'),
      })
      .describe('The smallest gauge that does it'),
    metric: z
      .strictObject({
        mm2: quantity('Nominal section', 'mm2'),
        allowedAmps: quantity('What it takes here, counted as the next thinner gauge', 'A'),
        dropVolts: quantity('Lost there and back', 'V'),
        dropPct: quantity('The same', '% of the supply'),
      })
      .nullable()
      .describe('The smallest metric cable that does it; null where the list ends before'),
    fuse: z
      .strictObject({
        amps: quantity('Rating; never above what the wire takes', 'A'),
        kind: z.enum(['blade', 'large-blade']).describe('Kind of fuse'),
        colour: text('Colour of its body'),
        recalled: yes('Rating and colour are remembered, not re-read'),
        withinMm: quantity('Greatest distance from the battery', 'mm'),
      })
      .describe('The fuse of the circuit'),
    sentences: z.array(text('A sentence')).describe('The answer in words'),
    cautions: z.array(text('A sentence')).describe('What can hurt, and how not to be hurt'),
    bases: z
      .array(z.strictObject({ what: text('Which figure'), basis: text('Where it is from') }))
      .describe('Where each figure is from'),
  })
  .meta({ id: 'wire', description: 'What `waymend wire --json` prints' });
