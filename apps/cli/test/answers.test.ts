import type { CardAnswer } from '@waymend/planner/answer/card-answer';
import type { GapAnswer, LoadAnswer, PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { ReadyAnswer } from '@waymend/planner/answer/ready-answer';
import type { SimulateAnswer } from '@waymend/planner/answer/simulate-answer';
import type { SureAnswer } from '@waymend/planner/answer/sure-answer';
import type { StowAnswer } from '@waymend/planner/answer/stow-answer';
import type { WhyAnswer } from '@waymend/planner/answer/why-answer';
import type { WireAnswer } from '@waymend/planner/answer/wire-answer';
import { beforeAll, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import type { AnswerName } from '../src/schemas/answers.ts';
import { ANSWERS, answersJsonSchema } from '../src/schemas/answers.ts';
import type { cardAnswer } from '../src/schemas/card-schema.ts';
import type { careAnswer } from '../src/schemas/care-schema.ts';
import type { gap } from '../src/schemas/gap-schema.ts';
import type { load } from '../src/schemas/load-schema.ts';
import { planAnswer } from '../src/schemas/plan-schema.ts';
import { simulateAnswer } from '../src/schemas/simulate-schema.ts';
import { sureAnswer } from '../src/schemas/sure-schema.ts';
import type { stowAnswer } from '../src/schemas/stow-schema.ts';
import type { whyAnswer } from '../src/schemas/why-schema.ts';
import type { wireAnswer } from '../src/schemas/wire-schema.ts';
import type { Ran } from './support/memory-io.ts';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE, wagonWith } from './support/wagon.ts';

/** A type with its parts read-only and its optional fields marked, so that only what it says is compared. */
type Plain<T> = T extends string | number | boolean | null
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Plain<Item>[]
    : {
        readonly [K in keyof T]-?: Partial<Pick<T, K>> extends Pick<T, K>
          ? { readonly optional: Plain<T[K]> }
          : Plain<T[K]>;
      };
/** Each fits the other: `true`, or this file does not compile. */
type Same<A, B> = [Plain<A>] extends [Plain<B>] ? ([Plain<B>] extends [Plain<A>] ? true : false) : false;

const SAME: readonly true[] = [
  true satisfies Same<z.output<typeof planAnswer>, PlanAnswer>,
  true satisfies Same<z.output<typeof whyAnswer>, WhyAnswer>,
  true satisfies Same<z.output<typeof simulateAnswer>, SimulateAnswer>,
  true satisfies Same<z.output<typeof sureAnswer>, SureAnswer>,
  true satisfies Same<z.output<typeof careAnswer>, ReadyAnswer>,
  true satisfies Same<z.output<typeof gap>, GapAnswer>,
  true satisfies Same<z.output<typeof load>, LoadAnswer>,
  true satisfies Same<z.output<typeof wireAnswer>, WireAnswer>,
  true satisfies Same<z.output<typeof cardAnswer>, CardAnswer>,
  true satisfies Same<z.output<typeof stowAnswer>, StowAnswer>,
];
// A type that lacks a field, has one more, or has an optional one that should not be, is not the same.
const DIFFERENT: readonly false[] = [
  false satisfies Same<{ a: string; b?: number }, { a: string }>,
  false satisfies Same<{ a: string; b?: number }, { a: string; b: number }>,
  false satisfies Same<{ a: readonly { c: 1 | 2 }[] }, { a: { c: 1 }[] }>,
];

function valid(name: AnswerName, ran: Ran): unknown {
  const value: unknown = JSON.parse(ran.out);
  const read = ANSWERS[name].safeParse(value);
  expect(read.error?.issues ?? []).toEqual([]);
  return value;
}

const files = { [WAGON_FILE]: WAGON };

describe('the schemas of the answers', () => {
  it('have the types of what the planner answers', () => {
    expect(SAME).not.toContain(false);
    expect(DIFFERENT).not.toContain(true);
  });

  it('describe every field, and only known fields, and compile to one JSON Schema', () => {
    const schema = JSON.stringify(answersJsonSchema());
    const undescribed: string[] = [];
    const open: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== 'object' || value === null) return;
      const fields = new Map<string, unknown>(Object.entries(value));
      const properties = fields.get('properties');
      if (typeof properties === 'object' && properties !== null) {
        if (fields.get('additionalProperties') !== false) open.push(path);
        for (const [name, field] of Object.entries(properties)) {
          const said: unknown = JSON.parse(JSON.stringify(field));
          const words = typeof said === 'object' && said !== null ? Object.keys(said) : [];
          if (!words.includes('description') && !words.includes('$ref')) undescribed.push(`${path}.${name}`);
        }
      }
      for (const [name, inner] of fields) walk(inner, `${path}/${name}`);
    };
    walk(JSON.parse(schema), '');
    expect(undescribed).toEqual([]);
    expect(open).toEqual([]);
    for (const name of Object.keys(ANSWERS)) expect(schema).toContain(`"#/$defs/${name}"`);
  });

  it('refuse a chance above certain, a broken gram, a field nobody knows', () => {
    expect(ANSWERS['no-plan'].safeParse({ schema: 'waymend.no-plan/1', clashes: [] }).success).toBe(false);
    const point = { massGrams: 10, pieces: 1, unaided: 0.5, proven: true, gap: 0 };
    const curve = (more: object) =>
      ANSWERS.curve.safeParse({
        schema: 'waymend.curve/1',
        trip: 'a',
        complete: true,
        points: [{ ...point, ...more }],
      }).success;
    expect(curve({})).toBe(true);
    expect(curve({ unaided: 1.5 })).toBe(false);
    expect(curve({ massGrams: 10.5 })).toBe(false);
    expect(curve({ colour: 'red' })).toBe(false);
  });
});

describe('what the commands print with --json', () => {
  let planned: Ran;
  beforeAll(async () => {
    planned = await runOn({ files }, 'plan', WAGON_FILE, '--json');
  });

  it('plan: the kit, what stays, the gaps, the chances and the load, all in one value', () => {
    expect(planned.code).toBe(0);
    const value = planAnswer.parse(valid('plan', planned));
    expect(value.status).toBe('proven');
    expect(value.gap).toBe(0);
    expect(value.kit.items.map((item) => item.id)).toEqual(
      expect.arrayContaining(['wheel', 'brace', 'jack']),
    );
    expect(value.kit.massGrams).toBe(value.kit.items.reduce((sum, item) => sum + item.grams, 0));
    expect(value.kit.massGrams).toBeLessThanOrEqual(75_000);
    for (const item of value.kit.items) {
      if (item.reason === 'worth') expect(item.jobs.length, item.id).toBeGreaterThan(0);
    }
    const ids = [...value.kit.items, ...value.stayHome].map((item) => item.id);
    expect(ids).toContain('s17');
    expect(value.stayHome.find((item) => item.id === 'axe')?.why).toBe('never');
    expect(value.stayHome.find((item) => item.id === 'belt')?.why).toBe('does-not-fit');
    expect(value.stayHome.find((item) => item.id === 'booster')?.why).toBe('not-ready');
    expect(value.stayHome.find((item) => item.id === 'jar')?.why).toBe('not-understood');
    expect(value.gaps.length).toBeGreaterThan(0);
    for (const found of value.gaps) for (const cure of found.cures) expect(cure.words).not.toBe('');
    expect(value.unaided.empty).toBeLessThan(value.unaided.kit);
    expect(value.buy).toEqual([]);
    const { front, rear, gross } = value.load;
    expect(front.limitKg).toBe(1300);
    expect(rear.limitKg).toBe(1750);
    expect(gross.kg + (gross.marginKg ?? 0)).toBeCloseTo(2950, 3);
    expect(value.load.roof?.limitKg).toBe(100);
    expect(value.warnings.join(' ')).toContain('(lent)');
  });

  it('[M12] simulate: the stated chance, with spares counted out, lies in the interval of the drawn trips', async () => {
    const ran = await runOn(
      { files },
      'simulate',
      WAGON_FILE,
      '--trips',
      '50000',
      '--against',
      'nothing',
      '--json',
    );
    expect(ran.code).toBe(0);
    const value = simulateAnswer.parse(valid('simulate', ran));
    const stated = planAnswer.parse(JSON.parse(planned.out)).unaided;
    expect(value.stated).toBeCloseTo(stated.kit, 3);
    expect(value.statedExactStock).toBeGreaterThanOrEqual(value.stated - 1e-12);
    expect(value.unaided.high).toBeGreaterThan(value.stated);
    expect(value.unaided.low).toBeLessThanOrEqual(value.unaided.chance);
    // With nothing aboard nothing is repaired: the drawn trips must come home as often as the closed form says.
    expect(value.against?.unaided.low).toBeLessThan(stated.empty);
    expect(value.against?.unaided.high).toBeGreaterThan(stated.empty);
    expect(value.against?.onlyTheOther).toBeLessThan(0.02);
    expect(value.strands.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1 - value.unaided.chance, 6);
    expect(value.used.map((u) => u.id)).toContain('wheel');
    expect(value.stories.length).toBeGreaterThan(0);
  });

  it('[M11] sure: the band holds the chance that the plan states, and every kept piece has a share', async () => {
    const few = ['--draws', '5', '--sizes', '2', '--json'];
    const value = sureAnswer.parse(valid('sure', await runOn({ files }, 'sure', WAGON_FILE, ...few)));
    const plan = planAnswer.parse(valid('plan', await runOn({ files }, 'plan', WAGON_FILE, '--json')));
    expect(value.chance.chance).toBeCloseTo(plan.unaided.kit, 6);
    expect(value.chance.low).toBeLessThan(plan.unaided.kit);
    expect(value.chance.high).toBeGreaterThan(plan.unaided.kit);
    const inKit = value.items.filter((i) => i.inKit).map((i) => i.id);
    expect(new Set(inKit)).toEqual(new Set(plan.kit.items.map((i) => i.id)));
    expect(value.prevent.length).toBeGreaterThan(0);
  });

  it('[M12] simulate: the same seed gives the same bytes, another seed other trips', async () => {
    const say = (seed: string) =>
      runOn({ files }, 'simulate', WAGON_FILE, '--trips', '500', '--seed', seed, '--json');
    const [a, b, c] = [await say('7'), await say('7'), await say('8')];
    expect(a.out).toBe(b.out);
    expect(a.out).not.toBe(c.out);
  });

  it('gaps: the gaps of the plan', async () => {
    const ran = await runOn({ files }, 'gaps', WAGON_FILE, '--json');
    expect(ran.code).toBe(0);
    const value = ANSWERS.gaps.parse(valid('gaps', ran));
    expect(value.gaps).toEqual(planAnswer.parse(JSON.parse(planned.out)).gaps);
  });

  it.each([
    ['a belonging that comes', 'brace', 'belonging'],
    ['a belonging that stays', 'axe', 'belonging'],
    ['a job', 'WT-01', 'job'],
    ['a failure', 'tread-puncture', 'failure'],
  ])('why: %s', async (_, what, kind) => {
    const ran = await runOn({ files }, 'why', WAGON_FILE, what, '--json');
    expect(ran.err).toBe('');
    expect(ran.code).toBe(0);
    expect(valid('why', ran)).toMatchObject({ kind });
  });

  it('curve: heavier kits are better, the heaviest as good as the plan', async () => {
    const ran = await runOn({ files }, 'curve', WAGON_FILE, '--points', '4', '--json');
    expect(ran.code).toBe(0);
    const { points } = ANSWERS.curve.parse(valid('curve', ran));
    expect(points.length).toBeGreaterThanOrEqual(2);
    points.slice(1).forEach((point, i) => {
      expect(point.massGrams).toBeGreaterThan(points[i]?.massGrams ?? Number.POSITIVE_INFINITY);
      expect(point.unaided).toBeGreaterThan(points[i]?.unaided ?? 1);
    });
  });

  it('load: with the kit it is heavier than without by what the kit weighs', async () => {
    const without = await runOn({ files }, 'load', WAGON_FILE, '--without-kit', '--json');
    const withKit = await runOn({ files }, 'load', WAGON_FILE, '--json');
    const before = ANSWERS.load.parse(valid('load', without));
    const after = ANSWERS.load.parse(valid('load', withKit));
    expect(before.when).toBe('before the kit');
    const { kit } = planAnswer.parse(JSON.parse(planned.out));
    expect(after.load.gross.kg - before.load.gross.kg).toBeCloseTo(kit.massGrams / 1000, 3);
  });

  it('check: counts what the garage holds', async () => {
    const ran = await runOn({ files }, 'check', WAGON_FILE, '--json');
    expect(ran.code).toBe(0);
    const { counts } = ANSWERS.check.parse(valid('check', ran));
    expect(counts).toMatchObject({
      vehicles: 1,
      people: 2,
      trips: 1,
      legs: 3,
      fittings: 15,
      notUnderstood: 1,
    });
  });

  it('tables: every list and table that is named can be printed, and every table is sound', async () => {
    const all = await runOn({}, 'tables', '--json');
    const { lists, tables } = ANSWERS.tables.parse(valid('tables', all));
    expect(lists.length).toBeGreaterThan(8);
    expect(tables.length).toBeGreaterThan(50);
    for (const { id } of [...lists, ...tables]) {
      const one = await runOn({}, 'tables', id, '--json');
      expect(one.code, id).toBe(0);
      const value = ANSWERS.table.parse(valid('table', one));
      expect(value.id).toBe(id);
      if (value.kind === 'standard') expect(value.faults, id).toEqual([]);
      else for (const row of value.rows) expect(row, id).toHaveLength(value.columns.length);
    }
  });

  it('import: an absurd mass is asked about before anything is written, and written once confirmed', async () => {
    const machine = { files: { 'list.txt': '1/2 drive socket 19 mm 40 kg\n' } };
    const run = (...more: readonly string[]) =>
      runOn(machine, 'import', 'new.yaml', 'list.txt', '--new', 'Mine', ...more);
    const asked = await run('--write');
    expect(asked.out.replace(/\s+/g, ' ')).toContain('weighs 40 kg where about 90 g is usual');
    expect(asked.out).toContain('One mass is left out');
    expect(asked.written[0]?.data).toContain('SK2-19');
    expect(asked.written[0]?.data).not.toContain('grams');
    const json = ANSWERS.import.parse(valid('import', await run('--json')));
    expect(json.unbelieved).toHaveLength(1);
    expect(json.unbelieved[0]).toMatchObject({ line: 1, text: '1/2 drive socket 19 mm 40 kg' });
    expect(json.unbelieved[0]?.sentence).toContain('40 kg');
    const sure = await run('--write', '--confirm-masses');
    expect(sure.written[0]?.data).toContain('confirmed: true');
    expect(sure.out).not.toContain('left out');
  });

  it('import: what was read and what was not, and nothing is written unless asked', async () => {
    const list = '1/2 deep sockets 17 19 21\n2x locking pliers\nqwertyuiop asdf\n';
    const ran = await runOn(
      { files: { ...files, 'list.txt': list } },
      'import',
      WAGON_FILE,
      'list.txt',
      '--json',
    );
    expect(ran.code).toBe(0);
    const value = ANSWERS.import.parse(valid('import', ran));
    expect(value.matches.map((match) => match.is)).toEqual(
      expect.arrayContaining(['SD2-17', 'SD2-19', 'SD2-21']),
    );
    expect(value.notUnderstood.map((part) => part.line)).toEqual([3]);
    expect(value.written).toBe(false);
    expect(ran.written).toEqual([]);
  });

  it('no plan: which limits clash, by how much, with exit code 3', async () => {
    const ran = await runOn({ files }, 'plan', WAGON_FILE, '--limit', '5 kg', '--json');
    expect(ran.code).toBe(3);
    const { clashes } = ANSWERS['no-plan'].parse(valid('no-plan', ran));
    expect(clashes.join(' ')).toMatch(/weighs [\d.]+ kg more than the mass limit allows/);
  });

  it.each([
    ['plan', [], 'plan'],
    ['plan', ['--chance', '90%'], 'plan'],
    ['curve', [], 'curve'],
  ] as const)(
    '%s %j stopped at once: the best so far with what could still be won, never a number that is none',
    async (command, options, name) => {
      const ran = await runOn({ files, stopAfter: 0 }, command, WAGON_FILE, '--json', ...options);
      if (ran.code === 0) {
        const value = valid(name, ran);
        if (command === 'plan') expect(value).toMatchObject({ status: 'within', stoppedBy: 'cancel' });
        else expect(value).toMatchObject({ complete: false });
      } else {
        expect(ran.code).toBe(1);
        expect(ran.out).toBe('');
        expect(ran.err).toMatch(/before any plan was found|No point was found/);
      }
    },
  );

  it('least mass: the aim says what was asked, and the kit reaches it', async () => {
    const ran = await runOn({ files }, 'plan', WAGON_FILE, '--chance', '90%', '--json');
    const value = planAnswer.parse(valid('plan', ran));
    expect(value.aim).toEqual({ kind: 'least-mass', chance: 0.9 });
    expect(value.kit.massGrams).toBeLessThan(planAnswer.parse(JSON.parse(planned.out)).kit.massGrams);
  });

  it('must-do: the jobs asked for can be done', async () => {
    const ran = await runOn({ files }, 'plan', WAGON_FILE, '--must', 'WT-01', '--json');
    const value = planAnswer.parse(valid('plan', ran));
    expect(value.aim).toEqual({ kind: 'must-do', jobs: ['WT-01'] });
  });

  it('a plan with something to spend says what to buy', async () => {
    const rich = wagonWith('    limitKg: 75\n', '    limitKg: 75\n    budget: 60\n');
    const ran = await runOn(
      { files: { [WAGON_FILE]: rich } },
      'plan',
      WAGON_FILE,
      '--seconds',
      '2',
      '--json',
    );
    const value = planAnswer.parse(valid('plan', ran));
    expect(value.buy.length).toBeGreaterThan(0);
    expect(value.buy.reduce((sum, item) => sum + item.cents, 0)).toBeLessThanOrEqual(6000);
  });
});
