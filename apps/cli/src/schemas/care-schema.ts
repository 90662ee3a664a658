import { z } from 'zod';
import { cents, chance, count, events, id, kilometres, orNull, text, yes } from './fields.ts';

const day = (means: string) => z.string().describe(`${means}, a day like 2026-03-05`);
const minutes = (means: string) => z.number().min(0).describe(`${means}, minutes, an estimate`);
const takes = z.array(text('One thing')).describe('What is needed besides hands');
const pct = (means: string) => z.number().min(0).max(100).describe(`${means}, percent of full`);
const km = (means: string) => orNull(z.number().describe(`${means}, km`));

const task = z
  .strictObject({
    id: id('Kind and what it is about; stable'),
    kind: z
      .enum(['floor', 'muster', 'repair', 'look', 'recent-work', 'loan', 'unready', 'incomplete', 'care'])
      .describe('What sort of thing it is'),
    about: orNull(id('Belonging, repair, muster or failure group; null for the whole kit')),
    title: text('What it is about, in words'),
    words: text('What is to be done and why'),
    chanceLost: chance('Chance of driving home unaided that is lost if it is left undone'),
    blocks: yes('Nobody should leave before it is done'),
    minutes: orNull(minutes('For one person; null where it cannot be said')),
    takes,
  })
  .meta({ id: 'ReadyTask', description: 'Something to do before leaving' });

const due = z
  .strictObject({
    thing: text('Belonging; empty for the whole kit'),
    name: text('The belonging in words'),
    rule: id('Care rule of the catalogue, or printed-date'),
    kind: z
      .enum(['expiry', 'charge', 'replace', 'pressure', 'service', 'calibration', 'check', 'storage'])
      .describe('What is due'),
    on: orNull(day('When it is due; null where no date is recorded to count from')),
    when: z
      .enum(['overdue', 'before-leaving', 'on-trip', 'after-trip', 'later', 'unknown'])
      .describe('That day beside the trip'),
    words: text('Why'),
    advice: text('What to do'),
    minutes: minutes('How long it takes'),
    takes,
    charge: z
      .strictObject({ pct: pct('Likely'), low: pct('At least'), high: pct('At most') })
      .nullable()
      .describe('State of charge on the day of leaving; null where it is not known'),
    basis: text('What the figures stand on'),
  })
  .meta({ id: 'Due', description: 'Something that care asks for' });

const repair = z
  .strictObject({
    id: id('Repair of the garage'),
    title: text('What was done'),
    lasts: z.enum(['permanent', 'temporary', 'made-safe']).describe('How long it is meant to last'),
    on: day('When it was done'),
    speedKmh: orNull(z.number().min(0).describe('Speed at most, km/h; null where none is known')),
    limits: orNull(text('What its weaker way must not be asked for')),
    nextLookKm: km('Travelled distance at which to look next; null when no look is asked for'),
    lookInKm: km('Until then; negative when it is overdue'),
    trustLeftKm: km('How far it may still be trusted; negative when it is over; null without a limit'),
    worse: yes('The last look found it worse'),
  })
  .meta({ id: 'OpenRepair', description: 'A repair that still asks for something' });

const loan = z
  .strictObject({
    id: id('Loan of the garage'),
    belonging: id('Belonging that is lent'),
    name: text('The belonging in words'),
    copies: count('How many'),
    to: text('Who has it'),
    on: day('Since when'),
    dueOn: orNull(day('When it is due back')),
    backOn: orNull(day('When it came back')),
    daysLate: count('Days past its due day'),
  })
  .meta({ id: 'Loan', description: "A belonging in somebody else's hands" });

const belief = (means: string) =>
  z
    .strictObject({
      mean: z.number().min(0).describe('Mean, a multiple of the usual rate'),
      low: z.number().min(0).describe('Five in a hundred that it is less, a multiple of the usual rate'),
      high: z.number().min(0).describe('Five in a hundred that it is more, a multiple of the usual rate'),
    })
    .describe(means);

export const careAnswer = z
  .strictObject({
    schema: z.literal('waymend.care/1').describe('Which answer this is'),
    trip: text('Trip in words'),
    today: day('Day of asking'),
    leaveOn: day('Day of leaving'),
    homeOn: day('Last day of the trip'),
    status: z.enum(['ready', 'ready-with-gaps', 'not-ready']).describe('Whether the kit is ready'),
    words: text('The same in a sentence'),
    minutes: minutes('All tasks together'),
    takes,
    tasks: z.array(task).describe('What blocks first, then by chance lost'),
    dues: z.array(due).describe('Everything that care asks for, soonest first'),
    repairs: z.array(repair).describe('Repairs that still ask for something'),
    loans: z.array(loan).describe('Every loan, those out first'),
    ownLog: z
      .strictObject({
        km: kilometres('Distance the log covers'),
        outside: count('Breakdowns outside that distance; they teach nothing'),
        groups: z
          .array(
            z.strictObject({
              group: id('Failure group'),
              title: text('The group in words'),
              events: count('Breakdowns counted'),
              expected: events('What the usual rates expect over the distance'),
              prior: belief('Before'),
              posterior: belief('After'),
            }),
          )
          .describe('Empty while nothing is learned'),
      })
      .describe("What the owner's own log teaches (M1)"),
  })
  .meta({ id: 'care', description: 'What `waymend care FILE --json` prints' });

const counted = z
  .strictObject({
    belonging: id('Belonging'),
    name: text('The belonging in words'),
    out: count('Pieces that went out'),
    back: count('Pieces that came back'),
    lost: count('Pieces lost'),
    damaged: count('Pieces damaged'),
    used: z.number().min(0).describe("Pieces used up; of a stock jobs' worth or litres, 0 or more"),
    missing: count('Pieces unaccounted for'),
  })
  .meta({ id: 'Counted', description: 'A belonging in a muster' });

export const musterAnswer = z
  .strictObject({
    schema: z.literal('waymend.muster/1').describe('Which answer this is'),
    file: text('Garage file'),
    written: yes('The garage was written'),
    musters: z
      .array(
        z.strictObject({
          id: id('Muster of the garage'),
          openedOn: day('When it was opened'),
          closedOn: orNull(day('When it was closed; null while it is open')),
          job: orNull(id('Job it is for')),
          trip: orNull(id('Trip it belongs to')),
          counts: z.array(counted).describe('What went out'),
        }),
      )
      .describe('Every muster'),
    restock: z
      .array(
        z.strictObject({
          why: z.enum(['lost', 'used', 'damaged', 'begun', 'wished-for']).describe('Why it is on the list'),
          belonging: orNull(id('Belonging; null for a thing that was wished for')),
          is: orNull(id("Catalogue thing; null for something of the owner's own")),
          name: text('In words'),
          amount: z.number().min(0).describe("Pieces; of a begun stock jobs' worth or litres, 0 or more"),
          cents: orNull(cents('Guide price; null where nothing has to be bought or none is known')),
        }),
      )
      .describe('What to put back into the kit'),
    chance: z
      .strictObject({
        before: chance('Of driving home unaided, before the muster was closed'),
        after: chance('Of driving home unaided, after'),
        weaker: z
          .array(
            z.strictObject({
              failure: id('Failure'),
              title: text('The failure in words'),
              before: chance('That it was put right'),
              after: chance('That it is now; 0 where nothing answers it any more'),
              job: orNull(text('Job that answered it')),
              now: orNull(text('Job that does now; null when none does')),
              expected: events('How often it stops the drive'),
            }),
          )
          .describe('Failures answered less well, worst first'),
        words: text('The same in a sentence'),
      })
      .nullable()
      .describe(
        'What closing changed for the trip of the muster; null when nothing was closed, or for no trip',
      ),
  })
  .meta({ id: 'muster', description: 'What `waymend muster FILE --json` prints' });

export const repairAnswer = z
  .strictObject({
    schema: z.literal('waymend.repair/1').describe('Which answer this is'),
    file: text('Garage file'),
    written: yes('The garage was written'),
    vehicle: id('Vehicle'),
    km: kilometres('Travelled distance the looks are counted from'),
    repairs: z.array(repair).describe('Repairs that still ask for something'),
  })
  .meta({ id: 'repair', description: 'What `waymend repair FILE --json` prints' });
