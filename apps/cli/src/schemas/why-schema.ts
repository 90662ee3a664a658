import { z } from 'zod';
import {
  cents,
  chance,
  count,
  events,
  grams,
  id,
  jobRef,
  orNull,
  share,
  skill,
  text,
  yes,
} from './fields.ts';
import { cure } from './gap-schema.ts';

const schema = z.literal('waymend.why/1').describe('Which answer this is');

const belongingWhy = z
  .strictObject({
    schema,
    kind: z.literal('belonging').describe('The story of a belonging'),
    id: id('Belonging id of the garage'),
    name: text('Belonging in words'),
    grams: grams('Its copies that come, or else all of them'),
    comes: yes('It comes along'),
    worth: chance('Chance lost without it when it comes; chance it would add when it stays'),
    jobs: z.array(jobRef).describe('Jobs, or better grades of jobs, that need it'),
    substitutes: z
      .array(
        z.strictObject({
          id: id('Belonging id, or `buy:` and a catalogue id'),
          name: text('Substitute in words'),
          grams: grams('Its mass'),
          owned: yes('It is already owned'),
          cents: cents('Price; 0 when owned'),
          chanceLost: chance('Chance lost with it in the place of the belonging'),
        }),
      )
      .describe('What would do its work, best first; only when it comes'),
    words: text('The story in a sentence'),
  })
  .meta({ id: 'BelongingWhy', description: 'Why a belonging comes or stays (M10)' });

const jobWhy = z
  .strictObject({
    schema,
    kind: z.literal('job').describe('The story of a job'),
    id: id('Job id'),
    title: text('Job in words'),
    possible: yes('It can be done with this kit and crew (M4)'),
    grade: z
      .enum(['proper', 'with-care', 'last-resort'])
      .nullable()
      .describe('Grade the tools aboard allow; null when a need is not met'),
    skill: skill('Skill the job asks; 0 when the vehicle has no such job'),
    bestSkill: skill('Best skill aboard for its system; 0 when the vehicle has no such job'),
    people: count('People the job takes'),
    needs: z
      .array(
        z.strictObject({
          need: text('What must be done, with size and torque'),
          met: yes('Something aboard does it'),
          grade: orNull(text('`proper`, `with-care` or `last-resort`; null when not met')),
          with: z.array(text('Belonging in words')).describe('The lightest way aboard'),
        }),
      )
      .describe('Every need of the job (M2, M3)'),
    uses: z
      .array(
        z.strictObject({
          of: id('Stock id'),
          aboard: z.number().min(0).describe("Aboard: jobs' worth, or litres for fluids, 0 or more"),
          each: z.number().min(0).describe('What the job uses up, in the same unit, 0 or more'),
        }),
      )
      .describe('Parts and fluids the job uses up'),
    cautions: z.array(text('A sentence')).describe('What can hurt, and how not to be hurt'),
    after: z.array(text('A sentence')).describe('What to check afterwards'),
  })
  .meta({ id: 'JobWhy', description: 'What a job needs and what meets it (M4)' });

const failureWhy = z
  .strictObject({
    schema,
    kind: z.literal('failure').describe('The story of a failure'),
    id: id('Failure id'),
    title: text('Failure in words'),
    group: id('Failure group id'),
    expected: events('How often it happens'),
    stopping: events('How often it happens so that it stops the drive'),
    parts: z
      .array(
        z.strictObject({
          on: text('Leg, or the whole trip'),
          title: text('What is counted'),
          base: events("The group's rate on this part"),
          share: share('The part of the group that this failure is'),
          events: events('Base times share times all factors'),
          basis: text('Where the base is from'),
          factors: z
            .array(
              z.strictObject({
                title: text('The factor in words'),
                factor: z.number().min(0).describe('Multiplies the rate, 0 or more'),
                basis: text('Where it is from'),
                mark: text('How sure it is: source, computed, common practice, estimate or recalled'),
              }),
            )
            .describe('Every factor'),
        }),
      )
      .describe('How the rate is made up (M1)'),
    answers: z
      .array(
        z.strictObject({
          job: id('Job id'),
          title: text('Job in words'),
          grade: text('`proper`, `with-care` or `last-resort`'),
          chance: chance('Chance that the job restores the drive'),
        }),
      )
      .describe('Jobs that this kit can answer it with, best first'),
    cures: z.array(cure).describe('When it is a gap: its cures'),
  })
  .meta({ id: 'FailureWhy', description: 'How likely a failure is and what answers it (M1, M5)' });

export const whyAnswer = z
  .discriminatedUnion('kind', [belongingWhy, jobWhy, failureWhy])
  .meta({ id: 'why', description: 'What `waymend why FILE WHAT --json` prints' });
