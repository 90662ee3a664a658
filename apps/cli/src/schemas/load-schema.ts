import { z } from 'zod';
import { id, kilograms, orNull, text } from './fields.ts';

const marginFields = {
  kg: kilograms('What it carries'),
  limitKg: orNull(kilograms('What it may carry; null when the garage records no limit')),
  marginKg: orNull(kilograms('What is left; negative when over; null without a limit')),
};

const margin = z
  .strictObject(marginFields)
  .meta({ id: 'Margin', description: 'A mass against its limit (M13)' });

export const load = z
  .strictObject({
    front: margin.describe('Front axle against its rating'),
    rear: margin.describe('Rear axle against its rating'),
    gross: margin.describe('The whole vehicle against its gross rating'),
    roof: margin.nullable().describe('Roof; null when nothing is on it and no limit is recorded'),
    tyres: z
      .strictObject({
        front: margin.describe('Front pair against its load index'),
        rear: margin.describe('Rear pair against its load index'),
      })
      .nullable()
      .describe('Tyre pairs by axle; null when the garage names no load index'),
    berths: z
      .array(
        z.strictObject({
          ...marginFields,
          id: id('Berth id of the garage'),
          name: text('Berth in words'),
        }),
      )
      .describe('Every berth of the vehicle'),
  })
  .meta({ id: 'Loads', description: 'Static loads as the vehicle sets out (M13)' });

export const loadAnswer = z
  .strictObject({
    schema: z.literal('waymend.load/1').describe('Which answer this is'),
    trip: text('Trip in words'),
    when: z
      .enum(['with the planned kit', 'before the kit'])
      .describe('Whether the planned kit is aboard; "before the kit" is `--without-kit`'),
    load,
    stowed: load
      .nullable()
      .optional()
      .describe(
        'The same with everything where `waymend stow` puts it, the bags themselves included; null when the garage has no bags; absent before the kit',
      ),
  })
  .meta({ id: 'load', description: 'What `waymend load FILE --json` prints' });
