import { z } from 'zod';
import { cents, chance, count, grams, id, orNull, share, text, yes } from './fields.ts';

const band = z
  .strictObject({
    chance: chance('With the planned rates'),
    low: chance('5 of 100 beliefs about the rates put it lower'),
    median: chance('Half of them put it lower'),
    high: chance('5 of 100 put it higher'),
  })
  .meta({ id: 'SureBand', description: 'A chance of driving home unaided, and how far it may be off' });

const names = (what: string) => z.array(text('Belonging in words')).describe(what);

export const sureAnswer = z
  .strictObject({
    schema: z.literal('waymend.sure/1').describe('Which answer this is'),
    trip: id('Trip id of the garage'),
    seed: count('The number that drew these beliefs'),
    draws: count('Beliefs about the rates that the best kit was looked for'),
    planned: count('Of these, how many have a best kit'),
    chance: band.describe('Of the planned kit, each group of failures with a luck of its own'),
    together: band.describe('The same with every group better or worse than thought at once'),
    words: text('Both in a sentence'),
    items: z
      .array(
        z.strictObject({
          id: id('Belonging id'),
          name: text('Belonging in words'),
          grams: grams('Mass'),
          owned: yes('It is owned'),
          inKit: yes('It is in the planned kit'),
          share: share('Of the best kits, those it belongs to'),
          how: z
            .enum(['sure', 'likely', 'taste'])
            .describe('In at least 90 of 100 of them, in at least half, in fewer'),
        }),
      )
      .describe('Everything that is in the planned kit or in some best kit, surest first'),
    whatIf: z
      .array(
        z.strictObject({
          words: text('What is different'),
          times: z.number().describe('Every rate so many times the planned one'),
          chance: chance('Of the planned kit'),
          best: orNull(chance('Of the best kit then; null when there is none')),
          joins: names('What that kit brings besides'),
          leaves: names('What it leaves at home'),
        }),
      )
      .describe('What if all rates are off at once'),
    measureNext: z
      .array(
        z.strictObject({
          joint: id('Fitting id, or place and position'),
          title: text('The place in words'),
          assumed: text('Size that is assumed'),
          gain: chance('Chance gained, on average, by knowing it before choosing'),
          how: text('What to bring to find out'),
          others: z
            .array(
              z.strictObject({
                size: text('Another size it may have'),
                likely: chance('How likely that is (estimate)'),
                planned: chance('Of the planned kit, if it is so'),
                best: chance('Of the best kit, if it is so'),
                joins: names('What that kit brings besides'),
              }),
            )
            .describe('The other sizes it may have'),
        }),
      )
      .describe('Assumed sizes worth knowing, most gained first'),
    notLookedInto: count('Assumed sizes that were left out because less hangs on them'),
    prevent: z
      .array(
        z.strictObject({
          failure: id('Failure id'),
          title: text('Failure in words'),
          what: text('What to do at home'),
          cents: cents('Indicative cost'),
          gain: chance('Chance gained'),
        }),
      )
      .describe('What renewing or checking before leaving adds, most first'),
  })
  .meta({ id: 'sure', description: 'What `waymend sure FILE --json` prints (M11)' });
