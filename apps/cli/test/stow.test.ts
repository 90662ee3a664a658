import type { StowAnswer } from '@waymend/planner/answer/stow-answer';
import { musterOrder, pocketMap } from '@waymend/planner/views/pocket-map';
import { beforeAll, describe, expect, it } from 'vitest';
import { ANSWERS } from '../src/schemas/answers.ts';
import { stowAnswer } from '../src/schemas/stow-schema.ts';
import type { Ran } from './support/memory-io.ts';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE } from './support/wagon.ts';

const BAGS = `bags:
  grab:
    name: grab pouch
    kind: pouch
    grams: 300
    lengthMm: 320
    widthMm: 240
    heightMm: 140
    firstGrab: true
  roll:
    name: wrench roll
    kind: roll
    grams: 700
  crate:
    name: crate
    kind: box
    grams: 1200
    lengthMm: 600
    widthMm: 400
    heightMm: 300
    limitKg: 22
    spillproof: true
pockets:
  one: { bag: roll, name: slot 1, order: 1, widthMm: 60, lengthMm: 220, openEnded: true }
  two: { bag: roll, name: slot 2, order: 2, widthMm: 50, lengthMm: 200, openEnded: true }
`;
/** Long enough for a stowage, too short for every proof. */
const QUICK = ['--stow-seconds', '0.5'];
const PACKED = 'packed.garage.yaml';
const files = { [WAGON_FILE]: WAGON, [PACKED]: `${WAGON}\n${BAGS}` };

function answer(ran: Ran): StowAnswer {
  expect(ran.err).toBe('');
  expect(ran.code).toBe(0);
  const value: unknown = JSON.parse(ran.out);
  expect(ANSWERS.stow.safeParse(value).error?.issues ?? []).toEqual([]);
  return stowAnswer.parse(value);
}

function everyId({ bags, berths, unplaced }: StowAnswer): readonly string[] {
  const inBags = bags.flatMap((bag) => [...bag.items, ...bag.pockets.flatMap(({ items }) => items)]);
  return [...inBags, ...berths.flatMap(({ loose }) => loose), ...unplaced].map(({ id }) => id).sort();
}

describe('stow', () => {
  let packed: StowAnswer;
  let bare: StowAnswer;
  beforeAll(async () => {
    packed = answer(await runOn({ files }, 'stow', PACKED, '--json', ...QUICK));
    bare = answer(await runOn({ files }, 'stow', WAGON_FILE, '--json', ...QUICK));
  }, 60_000);

  it('[M14] every piece of the plan has one place, and the plan is the same with bags and without', async () => {
    const plan = await runOn({ files }, 'plan', PACKED, '--json');
    const { kit } = ANSWERS.plan.parse(JSON.parse(plan.out));
    const copies = kit.items.reduce((sum, item) => sum + item.copies, 0);
    expect(everyId(packed)).toHaveLength(copies);
    expect(new Set(everyId(packed)).size).toBe(copies);
    expect(everyId(bare)).toEqual(everyId(packed));
    for (const item of kit.items) expect(everyId(packed)).toContain(item.id);
  });

  it('[M14] no level is worse than first-fit, and each bound is below its value', () => {
    for (const of of [packed, bare]) {
      const first = of.levels.find(({ value, firstFit }) => value !== firstFit);
      if (first !== undefined) expect(first.value).toBeLessThan(first.firstFit);
      for (const { value, bound } of of.levels) expect(bound).toBeLessThanOrEqual(value);
    }
  });

  it('[M14] without bags typical ones are proposed, and that is said first', () => {
    expect(packed.proposed).toBe(false);
    expect(bare.proposed).toBe(true);
    expect(bare.bags.length).toBeGreaterThan(2);
    for (const bag of bare.bags) expect(bag.proposed).toBe(true);
    expect(bare.first.join(' ')).toContain('typical ones are proposed');
  });

  it('[M13] the axles carry the kit where it is stowed and the bags themselves', async () => {
    const bags = packed.bags.reduce(
      (sum, { id }) => sum + ({ grab: 300, roll: 700, crate: 1200 }[id] ?? 0),
      0,
    );
    expect((packed.load.gross.kg - packed.loadAsPlanned.gross.kg) * 1000).toBeCloseTo(bags, 3);
    const { front, rear, gross } = packed.load;
    expect(front.kg + rear.kg).toBeCloseTo(gross.kg, 2);
    const load = await runOn({ files }, 'load', PACKED, '--json');
    const { stowed, load: planned } = ANSWERS.load.parse(JSON.parse(load.out));
    expect(stowed?.gross.kg ?? 0).toBeGreaterThan(planned.gross.kg);
    const text = await runOn({ files }, 'load', PACKED);
    expect(text.out).toContain('As stowed');
  });

  it('[M14] what was put by hand stays, and what that breaks is told in a sentence', async () => {
    const hand = WAGON.replace(
      'jack: { is: JB-4 }',
      'jack: { is: JB-4, bag: roll, pocket: two, fixed: true }',
    );
    expect(hand).not.toBe(WAGON);
    const of = answer(
      await runOn({ files: { [PACKED]: `${hand}\n${BAGS}` } }, 'stow', PACKED, '--json', ...QUICK),
    );
    const slot = of.bags.flatMap((bag) => bag.pockets).find(({ id }) => id === 'two');
    expect(slot?.items.map(({ id }) => id)).toContain('jack');
    const told = of.broken.find((b) => b.rule === 'does-not-fit');
    expect(told).toMatchObject({ class: 'by-hand', byHand: true, pieces: ['jack'] });
    expect(told?.sentence).toContain('too large or too heavy');
  });

  it('[M14] what only lies somewhere now moves where it is better, and is told to have moved', async () => {
    const now = WAGON.replace('jack: { is: JB-4 }', 'jack: { is: JB-4, bag: roll, pocket: two }');
    const moved = { [PACKED]: `${now}\n${BAGS}` };
    const of = answer(await runOn({ files: moved }, 'stow', PACKED, '--json', ...QUICK));
    const everything = [
      ...of.bags.flatMap((bag) => [...bag.items, ...bag.pockets.flatMap(({ items }) => items)]),
      ...of.berths.flatMap(({ loose }) => loose),
    ];
    expect(everything.find(({ id }) => id === 'jack')).toMatchObject({
      byHand: false,
      cameFrom: { bag: 'roll', pocket: 'two' },
    });
    expect(everything.filter(({ cameFrom }) => cameFrom !== null)).toHaveLength(1);
    expect(of.levels.find(({ level }) => level === 'moved')?.value).toBe(1);
    expect(of.broken.filter((b) => b.class === 'by-hand')).toEqual([]);
    const text = await runOn({ files: moved }, 'stow', PACKED, ...QUICK);
    expect(text.out).toContain('moved here');
  });

  it('[M14] the text is a map of 100 columns, and labels name each bag with its count', async () => {
    for (const more of [[], ['--labels']]) {
      const ran = await runOn({ files }, 'stow', PACKED, ...more, ...QUICK);
      expect(ran.code).toBe(0);
      for (const line of ran.out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
      for (const bag of packed.bags) expect(ran.out).toContain(bag.name);
    }
  });

  it.each([
    ['widthMm: 60', 'widthMm: -60', 'remove the minus'],
    ['limitKg: 22', 'limitKg: -1', 'remove the minus'],
    ['lengthMm: 200', 'lengthMm: 0', 'between 1 and 3000'],
    ['bag: roll, name: slot 2', 'bag: rool, name: slot 2', 'rool'],
  ])('[M14] %s written as %s is refused in one sentence', async (good, bad, says) => {
    const text = `${WAGON}\n${BAGS}`.replace(good, bad);
    const ran = await runOn({ files: { [PACKED]: text } }, 'stow', PACKED);
    expect(ran.code).toBe(1);
    expect(ran.out).toBe('');
    expect(ran.err).toContain(says);
    expect(ran.err).toContain('line');
  });

  it('[M14] a pocket of another bag is refused, and so is a time that is none', async () => {
    const text = `${WAGON.replace('jack: { is: JB-4 }', 'jack: { is: JB-4, bag: crate, pocket: two }')}\n${BAGS}`;
    const ran = await runOn({ files: { [PACKED]: text } }, 'stow', PACKED);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('take one of the two out');
    expect((await runOn({ files }, 'stow', PACKED, '--stow-seconds', 'soon')).code).toBe(1);
  });

  it('[M14] the map draws every piece once, to its length, inside its place or standing out of it', () => {
    for (const bag of packed.bags) {
      const map = pocketMap(bag, 30);
      const drawn = map.places.flatMap(({ pieces }) => pieces);
      const there = [...bag.items, ...bag.pockets.flatMap(({ items }) => items)];
      expect(drawn.map(({ item }) => item.id).sort()).toEqual(there.map(({ id }) => id).sort());
      for (const place of map.places) {
        expect(place.height).toBeGreaterThanOrEqual(30);
        for (const piece of place.pieces) {
          expect(piece.width).toBe(piece.item.lengthMm);
          expect(piece.y).toBeGreaterThanOrEqual(place.y);
          expect(piece.y + piece.height).toBeLessThanOrEqual(place.y + place.height);
          expect(piece.x + piece.width).toBeLessThanOrEqual(map.width);
        }
      }
    }
  });

  it('[M14] the order of a muster passes every piece once', () => {
    const steps = musterOrder(packed);
    expect(steps.flatMap(({ items }) => items.map(({ id }) => id)).sort()).toEqual(everyId(packed));
    for (const step of steps) expect(step.where).not.toBe('');
  });
});
