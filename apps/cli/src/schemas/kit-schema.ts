import { z } from 'zod';
import { cents, chance, count, grams, id, jobRef, millilitres, orNull, text, yes } from './fields.ts';

const kitItem = z
  .strictObject({
    id: id('Belonging id of the garage; `buy:` and a catalogue id when it is to be bought'),
    name: text('Belonging in words'),
    grams: grams('All copies that come, together'),
    copies: count('Copies that come'),
    weighed: yes('The mass was weighed; otherwise it is an estimate'),
    worth: chance('Chance of driving home unaided that is lost if all these copies stay home'),
    jobs: z.array(jobRef).describe('Jobs, or better grades of jobs, that could no longer be done without it'),
    reason: z
      .enum(['worth', 'floor', 'pinned', 'must-do', 'in-set'])
      .describe(
        'Why it comes: its worth, safety on every trip, the owner said always, a must-do job, or its set comes whole',
      ),
    berth: orNull(id('Berth it rides in; null: where the kit rides')),
    bought: yes('It is not owned yet'),
  })
  .meta({ id: 'KitItem', description: 'A belonging that comes along; one line for all its copies' });

export const kit = z
  .strictObject({
    massGrams: grams('Mass of the kit, cases of whole sets included'),
    volumeMl: millilitres('Room the kit takes'),
    estimatedGrams: grams('Part of the mass that nobody has weighed'),
    items: z.array(kitItem).describe('What comes along, most worth first'),
  })
  .meta({ id: 'Kit', description: 'What comes along' });

export const homeItem = z
  .strictObject({
    id: id('Belonging id of the garage'),
    name: text('Belonging in words'),
    grams: grams('All copies that stay, together'),
    copies: count('Copies that stay'),
    couldAdd: chance('Best chance one copy could add to this kit by itself'),
    perKilogram: z
      .number()
      .min(0)
      .describe('The same per kilogram of its mass, probability per kg, 0 or more'),
    needs: z
      .array(text('Belonging in words'))
      .describe('Least company it needs to add anything, when alone it adds nothing'),
    why: z
      .enum([
        'adds-nothing',
        'over-the-limit',
        'not-ready',
        'not-understood',
        'never',
        'double',
        'does-not-fit',
      ])
      .describe('Why it stays'),
  })
  .meta({ id: 'HomeItem', description: 'An owned belonging that stays home (M10)' });

export const buy = z
  .strictObject({
    id: id(
      '`buy:` and a catalogue id, `set:` and the id of a boxed set, or the id of a belonging or set for sale',
    ),
    name: text('What to buy'),
    grams: grams('Its mass'),
    cents: cents('Its price, all copies or the whole set'),
    worth: chance('Chance of driving home unaided that is lost without it'),
    jobs: z.array(jobRef).describe('Jobs it makes possible'),
  })
  .meta({ id: 'Buy', description: 'A purchase that earns its place within the budget' });

export const shop = z
  .strictObject({
    from: z
      .enum(['catalogue', 'listed'])
      .describe('What the budget may go on: the whole catalogue, or only what the garage lists for sale'),
    budgetCents: cents('What may be spent'),
    spentCents: cents('What the plan spends'),
    left: z
      .array(
        z.strictObject({
          id: id('Belonging id of the garage'),
          name: text('Belonging or set in words'),
          grams: grams('Its mass'),
          cents: cents('Its price'),
          couldAdd: chance('Chance that it would add to this kit by itself'),
          needs: z
            .array(text('Belonging in words'))
            .describe('Least company it needs to add anything, when alone it adds nothing'),
          why: z
            .enum(['over-a-limit', 'adds-nothing-here', 'no-job-needs-it'])
            .describe(
              'Why it is not bought: it would help, but not for its price and mass; it adds nothing to this kit; no repair on this trip asks for it',
            ),
        }),
      )
      .describe('Listed for sale and left in the shop, most missed first'),
  })
  .meta({ id: 'Shop', description: 'Money, and what is listed for sale and not bought' });

export const swap = z
  .strictObject({
    id: id('Belonging id of what comes'),
    name: text('What comes'),
    grams: grams('Its mass'),
    with: id('Belonging id, or `buy:` and a catalogue id, of what could come instead'),
    withName: text('What could come instead'),
    savedGrams: grams('Mass saved'),
    cents: cents('Price; 0 when owned'),
    owned: yes('It is already owned'),
  })
  .meta({ id: 'Swap', description: 'Something lighter that leaves the kit exactly as good' });
