import { z } from 'zod';
import { chance, count, days, events, grams, id, kilometres, orNull, share, skill, text } from './fields.ts';
import { gap } from './gap-schema.ts';
import { buy, homeItem, kit, shop, swap } from './kit-schema.ts';
import { load } from './load-schema.ts';

const trip = z
  .strictObject({
    id: id('Trip id of the garage'),
    name: text('Trip in words'),
    vehicle: text('Vehicle in words'),
    km: kilometres('Length of all legs'),
    days: days('How long it takes'),
    people: z
      .array(
        z.strictObject({ name: text('Person'), skill: skill('General skill') }).describe('A person aboard'),
      )
      .describe('Everybody aboard'),
    expected: z
      .array(
        z.strictObject({
          group: id('Failure group id'),
          title: text('Failure group in words'),
          failures: events('Failures of the group'),
          stopping: events('Those of them that stop the drive'),
        }),
      )
      .describe('What is to be expected, by failure group (M1)'),
  })
  .meta({ id: 'Trip', description: 'The trip that was planned for' });

const aim = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('best-chance').describe('Best chance within the limits'),
      limitGrams: orNull(grams('Mass limit of the kit; null for none')),
    }),
    z.strictObject({
      kind: z.literal('least-mass').describe('Lightest kit that reaches a chance'),
      chance: chance('Chance to be reached'),
    }),
    z.strictObject({
      kind: z.literal('must-do').describe('Lightest kit that can do these jobs'),
      jobs: z.array(id('Job id')).describe('Jobs that must be possible'),
    }),
  ])
  .meta({ id: 'Aim', description: 'What was asked for (M6)' });

const unaided = z
  .strictObject({
    empty: chance('Chance of driving home unaided with nothing aboard'),
    everything: chance('Chance with everything that is owned, whatever it weighs'),
    kit: chance('Chance with this kit, at the mass it really has'),
    low: chance('5 of 100 beliefs about the rates put it lower (M11)'),
    high: chance('5 of 100 put it higher'),
    sparesBound: chance(
      'How much higher the chance is when spares are counted exactly instead of by the bound of M5',
    ),
    words: text('The same in a sentence'),
  })
  .meta({ id: 'Unaided', description: 'Chances of driving home unaided (M5)' });

const comparison = z
  .strictObject({
    kind: z.enum(['nothing', 'everything', 'boxed-set', 'kit']).describe('Which choice this is'),
    title: text('The choice in words'),
    massGrams: grams('What it weighs'),
    pieces: count('Pieces carried'),
    unaided: chance('Chance of driving home unaided, at the mass it really has'),
    breaks: z.array(text('Limit and by how much')).describe('Limits of the vehicle that it breaks'),
  })
  .meta({ id: 'Comparison', description: 'A choice people make without a plan, on the same scale' });

const standing = z
  .strictObject({
    stage: z.enum(['bare', 'boxed', 'pile', 'fitted']).describe('How far the collection has come'),
    words: text('Where the owner stands, in a sentence'),
    coverage: share('Risk this kit takes away, of all that repairs could take away'),
    deadWeightGrams: grams('Owned mass that adds nothing on this trip'),
    doubles: count('Owned pieces that only repeat what others do'),
    missingSizes: z.array(text('Size')).describe('Sizes the vehicle takes and nothing owned fits'),
    step: text('The one step that helps most'),
  })
  .meta({ id: 'Standing', description: 'Where the owner stands' });

export const planAnswer = z
  .strictObject({
    schema: z.literal('waymend.plan/1').describe('Which answer this is'),
    trip,
    aim,
    status: z
      .enum(['proven', 'within'])
      .describe('`proven`: nothing on the table does better; `within`: at most `gap` better'),
    gap: share(
      'Loss (or mass, when the aim is the lightest kit) that could at most still be saved, relative to the plan; 0 when proven',
    ),
    stoppedBy: text('Why it was not proven: `time`, `cancel` or `rounding`').exactOptional(),
    kit,
    stayHome: z.array(homeItem).describe('Owned belongings that stay home, most missed first'),
    gaps: z.array(gap).describe('Failures without an answer, worst first'),
    buy: z.array(buy).describe('Purchases the plan makes within the budget'),
    shop,
    swaps: z.array(swap).describe('Lighter things that would do the same work'),
    unaided,
    comparisons: z
      .array(comparison)
      .describe('Nothing, a boxed set where one is owned, everything, and this kit'),
    load,
    standing,
    warnings: z.array(text('A sentence')).describe('What to know before trusting the plan'),
  })
  .meta({
    id: 'plan',
    description: 'What `waymend plan FILE --json` prints; every number has been re-checked (M8)',
  });

export const noPlanAnswer = z
  .strictObject({
    schema: z.literal('waymend.no-plan/1').describe('Which answer this is'),
    clashes: z
      .array(text('A sentence'))
      .min(1)
      .describe('Which limits clash, and by how much each would have to give'),
  })
  .meta({
    id: 'no-plan',
    description:
      'What a command that plans prints with --json when no kit satisfies the limits (exit code 3)',
  });
