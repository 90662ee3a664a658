import { z } from 'zod';
import { count, events, grams, id, millilitres, orNull, share, text, yes } from './fields.ts';
import { load } from './load-schema.ts';

const millimetres = (means: string) =>
  z.number().int().min(0).describe(`${means}, whole millimetres, 0 or more`);

const item = z
  .strictObject({
    id: id(
      'Piece: a belonging id, with `#2` for its second copy; `buy:` and a catalogue id when it is to be bought',
    ),
    belonging: id('Belonging it is a copy of'),
    name: text('Piece in words'),
    grams: grams('Its mass'),
    lengthMm: millimetres('Greatest length'),
    widthMm: millimetres('Breadth across its length, estimated from the room it takes'),
    thicknessMm: millimetres('Thickness, estimated likewise'),
    uses: events('Repairs that take it in hand'),
    firstGrab: yes('Wanted in the first fifteen minutes'),
    byHand: yes('The record says that it was put there by hand; it was left there'),
    cameFrom: orNull(z.strictObject({ bag: id('Bag id'), pocket: orNull(id('Pocket id')) })).describe(
      'Where the record has it now; null when it stays there, or the record names no bag',
    ),
    standsOutMm: millimetres('How far it stands out of an open pocket'),
  })
  .meta({ id: 'StowedItem', description: 'One piece where it is stowed' });

const pocket = z
  .strictObject({
    id: id('Pocket id of the garage'),
    name: text('Pocket in words'),
    widthMm: millimetres('Flat width'),
    lengthMm: millimetres('Along the tool'),
    depthMm: orNull(millimetres('How thick it may get; null: cloth')),
    takes: z.enum(['mm', 'ml']).describe('What it fills up by: half girths across a cloth pocket, or room'),
    used: count('Taken of it, mm or ml'),
    room: count('What there is of it, mm or ml'),
    items: z.array(item).describe('What is in it'),
  })
  .meta({ id: 'StowedPocket', description: 'A pocket and what is in it' });

const bag = z
  .strictObject({
    id: id('Bag id of the garage; `proposed` and a name for a typical one'),
    name: text('Bag in words'),
    kind: z.enum(['roll', 'pouch', 'bag', 'box', 'case']).describe('What kind of bag'),
    berth: id('Berth it rides in'),
    berthName: text('That berth in words'),
    moved: yes('Set down elsewhere than the record says'),
    proposed: yes('Nobody owns it yet'),
    firstGrab: yes('Reached in seconds'),
    spillproof: yes('What leaks inside stays inside'),
    lengthMm: orNull(millimetres('Inside length; null when not measured')),
    widthMm: orNull(millimetres('Inside width; null when not measured')),
    heightMm: orNull(millimetres('Inside height; null when not measured')),
    grams: grams('Bag and contents'),
    limitGrams: orNull(grams('The most it may weigh with its contents; null without a limit')),
    usedMl: millilitres('Room taken'),
    roomMl: orNull(millilitres('Room there is; null when not measured')),
    pockets: z.array(pocket).describe('Its pockets in order'),
    items: z.array(item).describe('What lies in its room, beside any pockets'),
  })
  .meta({ id: 'StowedBag', description: 'A bag that comes along' });

const berth = z
  .strictObject({
    id: id('Berth id of the garage'),
    name: text('Berth in words'),
    atHand: yes('Reached without unloading'),
    grams: grams('Kit and bags stowed here'),
    limitGrams: orNull(grams('What everything else that rides here leaves; null without a limit')),
    bags: z.array(id('Bag id')).describe('Bags in it'),
    loose: z.array(item).describe('What rides in it without a bag'),
  })
  .meta({ id: 'StowedBerth', description: 'A berth and what is stowed in it' });

const level = z
  .strictObject({
    level: z
      .enum(['unplaced', 'danger', 'order', 'reach', 'height', 'behind', 'moved'])
      .describe('Levels in their order: no later one ever buys an earlier one'),
    words: text('What it counts'),
    value: z.number().describe('What the stowage comes to, 0 or more; less is better'),
    bound: z
      .number()
      .describe('No stowage with the bags in these berths, as good at the levels before, is below this'),
    firstFit: z
      .number()
      .describe('The same of plain first-fit decreasing, which the stowage is never worse than'),
  })
  .meta({ id: 'StowLevel', description: 'One level by which a stowage is judged (M14)' });

const broken = z
  .strictObject({
    rule: id('Rule'),
    class: z
      .enum(['danger', 'order', 'by-hand'])
      .describe('It can hurt or spoil; it costs time; or a limit that something put by hand passes'),
    sentence: text('What is wrong and what to do'),
    pieces: z.array(id('Piece')).describe('Pieces it is about'),
    bag: orNull(id('Bag it is about')),
    berth: orNull(id('Berth it is about')),
    byHand: yes('Something in it was put there by hand'),
  })
  .meta({ id: 'StowBroken', description: 'A rule that the stowage breaks' });

export const stowAnswer = z
  .strictObject({
    schema: z.literal('waymend.stow/1').describe('Which answer this is'),
    trip: z
      .strictObject({ id: id('Trip id'), name: text('Trip in words'), vehicle: text('Vehicle in words') })
      .describe('The trip whose planned kit is stowed'),
    status: z.enum(['proven', 'within']).describe('Whether every level is proven'),
    gap: share('Greatest share by which a level could still be better; 0 when proven'),
    stoppedBy: z
      .enum(['time', 'cancel'])
      .nullable()
      .describe('Why the search ended early; null when it did not'),
    levels: z.array(level).describe('What it is judged by, first things first'),
    proposed: yes('The garage has no bags: typical ones stand in for them'),
    berths: z.array(berth).describe('Berths of the vehicle, front to back'),
    bags: z.array(bag).describe('Bags that come, front to back'),
    emptyBags: z
      .array(z.strictObject({ id: id('Bag id'), name: text('Bag in words') }))
      .describe('Bags that stay home because nothing is in them'),
    unplaced: z
      .array(
        z.strictObject({ id: id('Piece'), name: text('Piece in words'), why: text('Why nothing takes it') }),
      )
      .describe('What nothing takes'),
    first: z.array(text('What to do')).describe('What to do first'),
    broken: z.array(broken).describe('What is broken, dangers first'),
    load: load.describe('Axles as stowed, the bags themselves included (M13)'),
    loadAsPlanned: load.describe('Axles as the plan had them, without bags'),
  })
  .meta({ id: 'stow', description: 'What `waymend stow FILE --json` prints' });
