import { BOXED_SET_BY_ID } from '@waymend/catalogue/boxed-sets';
import { emptyGarage } from '@waymend/garage/log/empty-garage';
import { DOUBTFUL } from '@waymend/garage/import/reading';
import { describe, expect, it } from 'vitest';
import { addAll } from '../../src/places/garage/belongings/add-all.ts';
import type { Decision, SetMaker } from '../../src/places/garage/belongings/paste/paper-lines.ts';
import { paperLines } from '../../src/places/garage/belongings/paste/paper-lines.ts';
import { runOfSizes } from '../../src/places/garage/belongings/paste/run-words.ts';
import { tallyOf } from '../../src/places/garage/belongings/paste/tally.ts';
import { answerBelongings } from '../../src/worker/belongings/answer-belongings.ts';

const makeSet: SetMaker = (id) => {
  const set = BOXED_SET_BY_ID.get(id);
  return set === undefined
    ? null
    : { setId: id, title: set.title, caseGrams: set.caseGrams, contents: set.contents };
};

async function read(text: string, words = {}) {
  const reply = await answerBelongings({ kind: 'belongings/read', text, words });
  if (reply.kind !== 'belongings/reading') throw new Error(JSON.stringify(reply));
  return reply;
}

async function papered(text: string, decisions: readonly (readonly [string, Decision])[] = []) {
  const { reading, suggested } = await read(text);
  return paperLines(reading, suggested, new Map(decisions), makeSet);
}

const LIST = `# drawer
combination wrenches 8-10
frobnicator
3/8 ratchet 180 g`;

describe('a list as it is understood', () => {
  it('has every line that is not blank, in order, headings apart', async () => {
    const lines = await papered(LIST);
    expect(lines.map(({ number, heading }) => [number, heading])).toEqual([
      [1, true],
      [2, false],
      [3, false],
      [4, false],
    ]);
    expect(lines.map(({ parts }) => parts.length)).toEqual([0, 3, 1, 1]);
  });

  it('what is read with little confidence is doubtful', async () => {
    const { reading } = await read('3/8 ratchet');
    const [first] = reading.matches;
    if (first === undefined) throw new Error('nothing was read');
    const at = (confidence: number) =>
      paperLines({ ...reading, matches: [{ ...first, confidence }] }, {}, new Map(), makeSet)[0]?.parts[0]
        ?.state;
    expect([at(DOUBTFUL - 0.01), at(DOUBTFUL)]).toEqual(['doubtful', 'understood']);
  });

  it('a decision stays with its line when lines are typed above it', async () => {
    const [, , line] = await papered(LIST);
    const key = line?.parts[0]?.key ?? '';
    const lines = await papered(`2x locking pliers\n${LIST}`, [[key, { kind: 'own' }]]);
    expect(lines[3]?.parts[0]).toMatchObject({ text: 'frobnicator', state: 'own' });
  });

  it('decides for one of two equal lines only', async () => {
    const text = '3/8 ratchet\nfrobnicator\nfrobnicator';
    const lines = await papered(text);
    const second = lines[2]?.parts[0]?.key ?? '';
    const after = await papered(text, [[second, { kind: 'strike' }]]);
    expect(after.map(({ parts }) => parts[0]?.state)).toEqual(['understood', 'unknown', 'struck']);
  });

  it('another choice keeps the count and the weighed mass, and drops a size worked out for the first', async () => {
    const lines = await papered('2x 3/8 ratchet 180 g');
    const key = lines[0]?.parts[0]?.key ?? '';
    const after = await papered('2x 3/8 ratchet 180 g', [[key, { kind: 'thing', id: 'RT-2' }]]);
    expect(after[0]?.parts[0]?.match).toMatchObject({
      catalogueId: 'RT-2',
      copies: 2,
      grams: 180,
      weighed: true,
    });
    const own = await papered('38.5 mm combination wrench');
    const match = own[0]?.parts[0]?.match;
    if (match?.kind === 'thing' && match.size !== undefined) {
      const changed = await papered('38.5 mm combination wrench', [
        [own[0]?.parts[0]?.key ?? '', { kind: 'thing', id: 'CW-17' }],
      ]);
      expect(changed[0]?.parts[0]?.match).not.toHaveProperty('size');
    }
  });

  it('a set of a number of pieces nobody knows is answered by the nearest one', async () => {
    const lines = await papered('100 piece socket set');
    const part = lines[0]?.parts[0];
    expect(part?.nearest).toMatchObject({ kind: 'set' });
    const after = await papered('100 piece socket set', [
      [part?.key ?? '', part?.nearest ?? { kind: 'own' }],
    ]);
    expect(after[0]?.parts[0]?.match).toMatchObject({ kind: 'set', setId: part?.nearest?.id });
  });

  it('counts what the button adds; what is not understood stays on the paper', async () => {
    const lines = await papered(LIST);
    const tally = tallyOf(lines);
    expect(tally).toMatchObject({ adds: 4, unknown: 1, left: ['frobnicator'] });
    const key = lines[2]?.parts[0]?.key ?? '';
    expect(tallyOf(await papered(LIST, [[key, { kind: 'own' }]]))).toMatchObject({
      adds: 5,
      unknown: 0,
      left: [],
      own: ['frobnicator'],
    });
  });
});

describe('a run of sizes in words', () => {
  it('names what they share once', () => {
    expect(runOfSizes(['8 mm, 1/2 in drive', '10 mm, 1/2 in drive'])).toBe('8, 10 mm, 1/2 in drive');
  });
  it('keeps apart what differs', () => {
    expect(runOfSizes(['8 mm', 'T30'])).toBe('8 mm; T30');
    expect(runOfSizes(['170 mm'])).toBe('170 mm');
    expect(runOfSizes([])).toBe('');
  });
});

describe('adding to a garage', () => {
  it('gives another id where another tab has taken one, and what is inside follows its set', async () => {
    const { reading } = await read('94 piece socket set');
    const made = await answerBelongings({
      kind: 'belongings/make',
      into: emptyGarage(),
      matches: reading.matches,
    });
    if (made.kind !== 'belongings/made') throw new Error(made.kind);
    const taken = addAll(emptyGarage(), made.added);
    const twice = addAll(taken, made.added);
    const boxes = Object.entries(twice.belongings).filter(([, { set }]) => set !== undefined);
    expect(boxes).toHaveLength(2);
    const inside = (id: string) => Object.values(twice.belongings).filter((one) => one.inside === id).length;
    expect(inside(boxes[0]?.[0] ?? '')).toBe(inside(boxes[1]?.[0] ?? ''));
    expect(Object.keys(twice.belongings)).toHaveLength(2 * Object.keys(made.added).length);
  });

  it('an own thing is its words and nothing more, markup and all', () => {
    const garage = addAll(emptyGarage(), {}, ['<script>alert(1)</script>']);
    expect(Object.values(garage.belongings)).toEqual([
      expect.objectContaining({ name: '<script>alert(1)</script>', line: '<script>alert(1)</script>' }),
    ]);
  });
});

describe('the reader', () => {
  it('says which things the garage has from the same line already', async () => {
    const { reading } = await read('3/8 ratchet\n2x locking pliers');
    const make = (into: ReturnType<typeof emptyGarage>) =>
      answerBelongings({ kind: 'belongings/make', into, matches: reading.matches });
    const first = await make(emptyGarage());
    if (first.kind !== 'belongings/made') throw new Error(first.kind);
    expect(first.repeated).toEqual([]);
    const again = await make(addAll(emptyGarage(), first.added));
    expect(again.kind === 'belongings/made' && again.repeated).toEqual([0, 1]);
  });

  it('says which masses it left out, and adds the things without them', async () => {
    const { reading } = await read('1/2 drive socket 19 mm 40 kg\n3/8 ratchet 180 g');
    const made = await answerBelongings({
      kind: 'belongings/make',
      into: emptyGarage(),
      matches: reading.matches,
    });
    if (made.kind !== 'belongings/made') throw new Error(made.kind);
    expect(made.unbelieved).toHaveLength(1);
    expect(made.unbelieved[0]).toContain('40 kg');
    expect(Object.values(made.added).map(({ grams }) => grams)).toEqual([undefined, 180]);
  });

  it('a taught word is understood at once', async () => {
    const taught = await answerBelongings({
      kind: 'belongings/teach',
      words: {},
      word: 'frobnicator',
      means: 'locking pliers',
    });
    if (taught.kind !== 'belongings/taught') throw new Error(taught.kind);
    const { reading } = await read('2x frobnicator', taught.words);
    expect(reading.notUnderstood).toEqual([]);
    expect(reading.matches).toHaveLength(1);
  });

  it('refuses with one sentence what is no list: binary, too many lines, a garage', async () => {
    const file = (text: string, name: string) =>
      answerBelongings({
        kind: 'belongings/read-file',
        bytes: new TextEncoder().encode(text),
        name,
        words: {},
      });
    for (const [text, name] of [
      ['\u0000\u0001binary', 'x.txt'],
      ['a\n'.repeat(6_000), 'long.txt'],
      ['waymend: 1\nname: x\n', 'x.yaml'],
    ] as const) {
      const reply = await file(text, name);
      expect(reply.kind).toBe('refused');
      expect(reply.kind === 'refused' && reply.refusals).toHaveLength(1);
    }
  });

  it('a formula in a table is text, and leaves as text no program computes', async () => {
    const reply = await answerBelongings({
      kind: 'belongings/read-file',
      bytes: new TextEncoder().encode('item,qty,note\n3/8 ratchet,1,"=HYPERLINK(""x"")"\n'),
      name: 'x.csv',
      words: {},
    });
    if (reply.kind !== 'belongings/reading') throw new Error(reply.kind);
    expect(reply.reading.matches[0]).toMatchObject({ note: '=HYPERLINK("x")' });
    const made = await answerBelongings({
      kind: 'belongings/make',
      into: emptyGarage(),
      matches: reply.reading.matches,
    });
    if (made.kind !== 'belongings/made') throw new Error(made.kind);
    const csv = await answerBelongings({
      kind: 'belongings/csv',
      garage: addAll(emptyGarage(), made.added),
    });
    expect(csv.kind === 'text' && csv.text).toContain("'=HYPERLINK");
  });

  it('reads a size, and says when it is in no standard', async () => {
    const size = (text: string) => answerBelongings({ kind: 'belongings/size', text });
    expect(await size('17 mm')).toMatchObject({ label: '17 mm', odd: false, nearest: null });
    expect(await size('26.5 mm')).toMatchObject({ odd: true });
    expect((await size('M10')).kind).toBe('refused');
  });
});
