import { SYMPTOM_AREAS } from '@waymend/catalogue/shape/symptom';
import { z } from 'zod';
import { count, id, kilometres, orNull, share, skill, text, yes } from './fields.ts';

const schema = z.literal('waymend.card/1').describe('Which answer this is');
const grade = z.enum(['proper', 'with-care', 'last-resort']);
const gradeOrNull = (means: string) => grade.nullable().describe(means);
const sentences = (means: string) => z.array(text('A sentence')).describe(means);
const quantity = (means: string, unit: string) => z.number().min(0).describe(`${means}, ${unit}, 0 or more`);

const pieceRef = z
  .strictObject({
    id: id('Belonging id, or the catalogue id of what is still to be bought'),
    name: text('Belonging in words'),
    where: text('Bag and pocket, box or berth; `kit` when nobody recorded a place'),
  })
  .meta({ id: 'PieceRef', description: 'A piece that is here, and where' });

const pull = z
  .strictObject({
    torqueNm: quantity('Torque to undo', 'N m'),
    leverMm: quantity('From the fastener to the hand', 'mm'),
    newtons: quantity('Force at the hand', 'N'),
    kg: quantity('The same as a mass hung on the end', 'kg'),
    how: z
      .enum(['easy', 'hard', 'body', 'strike'])
      .describe('By arm with ease, by arm hard, with body weight, or struck'),
    words: text('The same in a sentence'),
  })
  .meta({ id: 'Pull', description: 'How hard somebody must pull (M2)' });

const way = z
  .strictObject({
    grade: grade.describe('Worst of its parts (M2)'),
    pieces: z.array(pieceRef).describe('All of them, at the same moment'),
    pull: orNull(pull.describe('How hard to pull; null where fingers do or nothing is pulled')),
  })
  .meta({ id: 'WayCard', description: 'One way to meet a need with what is here, re-checked (M2, M3)' });

const need = z
  .strictObject({
    what: text('What must be done, with size and torque'),
    kind: z.enum(['turn', 'function']).describe('A fastener, or anything else'),
    size: z
      .enum(['assumed', 'read', 'measured'])
      .nullable()
      .describe('How the size is known; null where none is asked'),
    best: orNull(way.describe('The best way here; null when nothing here does it')),
    others: z.array(way).describe('The next-best ways here, best first'),
    doNot: sentences('What must not be used for it'),
    wanted: z
      .array(text('Pieces in words'))
      .describe('When nothing here does it: what would, cheapest first'),
  })
  .meta({ id: 'NeedCard', description: 'One need of a job' });

const torque = z
  .strictObject({
    place: text('The fasteners'),
    nm: quantity('Torque', 'N m'),
    from: quantity('Least', 'N m'),
    to: quantity('Greatest', 'N m'),
    recorded: yes('Recorded for this vehicle; otherwise typical of such places'),
    basis: text('Where it is from'),
    sentences: sentences('How to come by it with what is here'),
    setting: z
      .strictObject({
        wrench: pieceRef,
        nm: quantity('To be set on the scale', 'N m'),
        extensionMm: orNull(quantity('Crow-foot in line, middle to middle; null: none', 'mm')),
      })
      .nullable()
      .describe('On the torque wrench here; null when none covers it'),
  })
  .meta({ id: 'TorqueCard', description: 'What a joint is done up to' });

const expedient = z
  .strictObject({
    id: id('Expedient id'),
    title: text('Expedient in words'),
    possible: yes('Everything it needs is here'),
    grade: gradeOrNull('Grade with what is here; null when not possible'),
    trustedKm: orNull(kilometres('How far it may be trusted; null: to the end of the trip')),
    reachesHelp: yes('It is trusted as far as help is'),
    speedKmh: orNull(quantity('At no more than; null: no limit given', 'km/h')),
    lookAgainKm: orNull(kilometres('Look at it again every; null: not given')),
    missing: z.array(text('A need, stock or person')).describe('What stands in the way'),
    with: z.array(pieceRef).describe('The best pieces here'),
    steps: sentences('How it is done'),
    limits: text('What it does not do'),
  })
  .meta({ id: 'ExpedientCard', description: 'A weaker way through the same trouble (M4)' });

const jobCard = z
  .strictObject({
    schema,
    kind: z.literal('job').describe('The card of a job'),
    id: id('Job id, with @position where the vehicle has several'),
    title: text('Job in words'),
    trip: text('Trip in words'),
    vehicle: text('Vehicle in words'),
    with: z.enum(['kit', 'everything', 'list']).describe('What counts as here'),
    now: yes('It can be done now, with what and who is here'),
    grade: gradeOrNull('The worst of its best ways; null when it cannot be done now'),
    why: sentences('What stands in the way, or what to know first'),
    outcome: z.enum(['drive-on', 'limp', 'made-safe']).describe('What it leads to'),
    trustedKm: orNull(kilometres('How far the result is trusted; null: to the end of the trip')),
    minutes: z.array(count('Minutes')).length(2).describe('Least and most, longer in the dark'),
    dark: yes('It is dark'),
    people: z
      .strictObject({
        wanted: count('People it takes'),
        here: count('People here'),
        skill: skill('Skill it asks for'),
        bestSkill: skill('Best skill here for its system'),
        names: z.array(text('A name')).describe('Who is here'),
      })
      .describe('Who it takes, and who is here'),
    help: z
      .strictObject({
        km: kilometres('Distance to help'),
        from: z
          .enum(['said', 'worst-of-trip'])
          .describe('Given with the question, or the greatest of the trip'),
      })
      .describe('How far help is'),
    cautions: sentences('What can hurt, and how not to be hurt'),
    needs: z.array(need).describe('Every need of the job'),
    uses: z
      .array(
        z.strictObject({
          of: id('Stock id'),
          name: text('Part or fluid in words'),
          each: quantity('What the job uses up', "jobs' worth, or litres"),
          aboard: quantity('Here', 'in the same unit'),
          left: orNull(quantity('Left afterwards; null when there is not enough', 'in the same unit')),
        }),
      )
      .describe('Parts and fluids it uses up'),
    helps: z
      .array(z.strictObject({ what: text('What it is for'), with: pieceRef }))
      .describe('Not needed, but here and of use'),
    steps: sentences('How it is done'),
    torques: z.array(torque).describe('What is done up again'),
    doNot: sentences('What must not be done instead'),
    after: z
      .array(
        z.strictObject({
          check: text('What to look at'),
          km: orNull(kilometres('After this distance; null: before driving on')),
        }),
      )
      .describe('What to look at afterwards'),
    expedients: z.array(expedient).describe('Weaker ways: possible ones first, furthest trusted first'),
    wire: orNull(text('Where wire and fuse are worked out; null where no wire is made')),
    decision: z
      .strictObject({
        before: sentences('Before anything else'),
        courses: z
          .array(
            z.strictObject({
              course: z.enum(['fix', 'limp', 'wait', 'call']).describe('What one may do'),
              verdict: z.enum(['first', 'may', 'not']).describe('Suggested, possible, or not now'),
              reasons: sentences('Why'),
            }),
          )
          .describe('All four, the suggested one first'),
      })
      .describe('Fix, limp, wait or call'),
    closing: text('Who comes first'),
  })
  .meta({ id: 'JobCard', description: 'One job on this vehicle, with what and who is here (M2 to M4)' });

const symptomCard = z
  .strictObject({
    schema,
    kind: z.literal('symptom').describe('The suspects behind a symptom'),
    id: id('Symptom id'),
    title: text('What is noticed'),
    first: sentences('Before anything is looked at'),
    given: z
      .array(
        z.strictObject({
          question: id('Question id'),
          ask: text('Question in words'),
          answer: id('Answer id'),
          text: text('Answer in words'),
        }),
      )
      .describe('What has been answered'),
    next: z
      .strictObject({
        id: id('Question id'),
        ask: text('Question in words'),
        answers: z
          .array(z.strictObject({ id: id('Answer id'), text: text('Answer in words') }))
          .describe('What may be answered'),
      })
      .nullable()
      .describe('The question that parts what is left; null when none does'),
    suspects: z
      .array(
        z.strictObject({
          failure: id('Failure id'),
          title: text('Failure in words'),
          share: share('Of all suspects'),
          against: z.array(text('A question')).describe('Questions whose answer speaks against it'),
          jobs: z
            .array(
              z.strictObject({
                id: id('Job id'),
                title: text('Job in words'),
                grade: gradeOrNull('With what and who is here; null: not now'),
                inStock: yes('Its parts and fluids are here'),
              }),
            )
            .describe('What puts it right'),
          stop: orNull(text('Why nothing at the roadside does; null where jobs do')),
        }),
      )
      .describe('Most likely first'),
    stop: orNull(text('What to do when nothing fits, or the likeliest has no job')),
    basis: text('How the order was come by'),
  })
  .meta({ id: 'SymptomCard', description: 'What a symptom may be, and what puts it right (M1, M4)' });

const symptomList = z
  .strictObject({
    schema,
    kind: z.literal('symptoms').describe('Everything that may be noticed'),
    areas: z
      .array(
        z.strictObject({
          area: z.enum(SYMPTOM_AREAS).describe('Area in words'),
          symptoms: z
            .array(z.strictObject({ id: id('Symptom id'), title: text('What is noticed') }))
            .describe('Symptoms of the area'),
        }),
      )
      .describe('By area'),
  })
  .meta({ id: 'SymptomList', description: 'What a driver may notice on this vehicle' });

export const cardAnswer = z
  .discriminatedUnion('kind', [symptomList, symptomCard, jobCard])
  .meta({ id: 'card', description: 'What `waymend card FILE --json` prints' });
