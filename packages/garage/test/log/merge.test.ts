import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change } from '../../src/log/change.ts';
import { changeId, EXISTS } from '../../src/log/change.ts';
import { fold } from '../../src/log/fold.ts';
import { Log } from '../../src/log/log.ts';
import { clockOf, nextStamp } from '../../src/log/stamp.ts';
import { anyGarage } from '../garage-arbitrary.ts';
import { Device, meet, stepOf } from './device.ts';

const DAY_MS = 86_400_000;
const bag = (name: string, grams = 0) => ({ name, grams });

/** What devices do in a random history. */
const act = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant('edit' as const), who: fc.nat(4), to: anyGarage }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('hear' as const), who: fc.nat(4), from: fc.nat(4) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('undo' as const), who: fc.nat(4), step: fc.nat(30) }) },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant('settle' as const), who: fc.nat(4), nth: fc.nat(30) }),
  },
);

/** Five devices whose clocks are up to a day off, mostly out of touch. */
function live(acts: readonly (typeof act extends fc.Arbitrary<infer T> ? T : never)[]): readonly Device[] {
  const clock = { now: 1_700_000_000_000 };
  const devices = [0, DAY_MS, -DAY_MS, 1000, -5].map((skew, i) => new Device(`d${i}.1`, skew, clock));
  for (const one of acts) {
    const device = devices[one.who];
    if (device === undefined) continue;
    if (one.do === 'edit') device.edit(() => one.to);
    else if (one.do === 'hear') device.hear(devices[one.from] ?? device);
    else if (one.do === 'undo') {
      const step = device.log.steps[one.step % Math.max(1, device.log.steps.length)];
      if (step !== undefined) device.undo(step.id);
    } else {
      const conflict = device.log.conflicts[one.nth % Math.max(1, device.log.conflicts.length)];
      const value = conflict?.values[0]?.value;
      if (conflict !== undefined) device.settle(conflict, value);
    }
  }
  return devices;
}

const history = fc.array(act, { minLength: 1, maxLength: 14 });

describe('any history', () => {
  it('[M15] five devices with clocks a day apart end equal, with every change kept', () => {
    fc.assert(
      fc.property(history, (acts) => {
        const devices = live(acts);
        const written = new Set(devices.flatMap(({ log }) => [...log.changes()].map(({ id }) => id)));
        meet(...devices);
        const [first, ...rest] = devices.map(({ log }) => log);
        for (const log of rest) {
          expect(log.garage).toEqual(first?.garage);
          expect(JSON.stringify(log.conflicts)).toBe(JSON.stringify(first?.conflicts));
          expect(log.size).toBe(written.size);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('[M15] the fold depends neither on the order nor on how often a change is there, down to the text written', () => {
    fc.assert(
      fc.property(history, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (acts, luck) => {
        const devices = live(acts);
        meet(...devices);
        const changes = [...(devices[0]?.log.changes() ?? [])];
        const once = fold(changes);
        const draw = (): number => {
          const next: IteratorResult<number, unknown> = luck.next();
          return next.done === true ? 0 : next.value;
        };
        const keyed = [...changes, ...changes].map((change) => ({ change, key: draw() }));
        const mixed = keyed.sort((a, b) => a.key - b.key).map(({ change }) => change);
        expect(JSON.stringify(fold(mixed))).toBe(JSON.stringify(once));
        // One by one, with the garage looked at in between, as screens do.
        const log = new Log();
        for (const change of mixed) {
          log.add([change]);
          expect(log.garage.waymend).toBe(1);
        }
        expect(JSON.stringify([log.garage, log.conflicts])).toBe(
          JSON.stringify([once.garage, once.conflicts]),
        );
      }),
      { numRuns: 200 },
    );
  });

  it('[M15] every value that nothing replaced is shown or stands in a conflict, and settling ends every conflict', () => {
    fc.assert(
      fc.property(history, (acts) => {
        const devices = live(acts);
        meet(...devices);
        const [device] = devices;
        if (device === undefined) return;
        const { log } = device;
        // Told from the raw changes alone: what no other change of the field names.
        const all = [...log.changes()];
        const replaced = new Set(
          all.flatMap((by) => by.replaces.map((id) => `${by.entity} ${by.field} ${id}`)),
        );
        const standing = new Map<string, Change[]>();
        for (const change of all) {
          const key = `${change.entity} ${change.field}`;
          if (replaced.has(`${key} ${change.id}`)) continue;
          standing.set(key, [...(standing.get(key) ?? []), change]);
        }
        const shown = new Set(log.conflicts.map(({ entity, field }) => `${entity} ${field}`));
        for (const [key, changes] of standing) {
          const [first] = changes;
          if (first === undefined || first.field === EXISTS) continue;
          const differ = changes.some(({ value }) => !isDeepStrictEqual(value, first.value));
          const [collection = '', id = ''] = first.entity.split(/\/(.*)/s);
          const table = Object.entries(log.garage).find(([name]) => name === collection)?.[1] as unknown;
          const visible =
            first.entity === 'garage' || (typeof table === 'object' && Object.hasOwn(table ?? {}, id));
          if (visible) expect(shown.has(key)).toBe(differ);
        }
        for (const conflict of log.conflicts)
          device.settle(conflict, conflict.field === EXISTS ? true : conflict.values[0]?.value);
        expect(log.conflicts).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

describe('two devices apart', () => {
  /** Both know a bag. */
  function pair(): [Device, Device] {
    const devices: [Device, Device] = [new Device('a.1'), new Device('b.1', DAY_MS)];
    devices[0].edit((g) => ({ ...g, bags: { x: bag('Blue', 100) } }));
    meet(...devices);
    return devices;
  }
  const weigh = (grams: number) => (g: Device['log']['garage']) => ({
    ...g,
    bags: { x: bag('Blue', grams) },
  });

  it('[M15] two values of one field are both kept, the later shown, until one change settles them', () => {
    const [a, b] = pair();
    a.edit(weigh(200));
    b.edit(weigh(300));
    meet(a, b);
    expect(a.log.garage.bags['x']).toEqual(bag('Blue', 300));
    expect(a.log.conflicts).toMatchObject([
      { entity: 'bags/x', field: 'grams', values: [{ value: 200 }, { value: 300 }] },
    ]);
    const settled = stepOf(a.settle({ entity: 'bags/x', field: 'grams' }, 250));
    meet(a, b);
    expect([b.log.garage.bags['x'], b.log.conflicts]).toEqual([bag('Blue', 250), []]);
    a.undo(settled);
    expect(a.log.conflicts[0]?.values.map(({ value }) => value)).toEqual([200, 300]);
  });

  it('[M15] the same value from both is no conflict, and different fields go together', () => {
    const [a, b] = pair();
    a.edit(weigh(200));
    b.edit((g) => ({ ...g, bags: { x: bag('Navy', 200) } }));
    meet(a, b);
    expect([a.log.garage.bags['x'], a.log.conflicts]).toEqual([bag('Navy', 200), []]);
  });

  it.each([
    ['kept', true],
    ['let go', false],
  ])('[M15] an edit apart from a deletion keeps the thing in sight until it is %s', (_, keep) => {
    const [a, b] = pair();
    a.edit((g) => ({ ...g, bags: {} }));
    b.edit(weigh(300));
    meet(a, b);
    for (const { log } of [a, b]) {
      expect(log.garage.bags['x']).toEqual(bag('Blue', 300));
      expect(log.conflicts).toMatchObject([
        { entity: 'bags/x', field: EXISTS, values: [{ value: false }, { value: true }] },
      ]);
    }
    b.settle({ entity: 'bags/x', field: EXISTS }, keep);
    meet(a, b);
    expect(a.log.conflicts).toEqual([]);
    expect(Object.keys(a.log.garage.bags)).toEqual(keep ? ['x'] : []);
  });

  it('[M15] a deletion that knew of every edit is no conflict', () => {
    const [a, b] = pair();
    b.edit(weigh(300));
    meet(a, b);
    a.edit((g) => ({ ...g, bags: {} }));
    meet(a, b);
    expect([b.log.garage.bags, b.log.conflicts]).toEqual([{}, []]);
  });

  it('[M15] an undo leaves alone what the other has written', () => {
    const [a, b] = pair();
    const mine = stepOf(a.edit(weigh(200)));
    b.edit(weigh(300));
    meet(a, b);
    a.undo(mine);
    expect([a.log.garage.bags['x'], a.log.conflicts]).toEqual([bag('Blue', 300), []]);
  });
});

it('[M15] a stamp is later than all that were seen, whatever the clock says, and remembers the clock', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(4_000_000_000_000), { minLength: 2, maxLength: 20 }), (clocks) => {
      let last: string | null = null;
      for (const now of clocks) {
        const next = nextStamp(last, now);
        if (last !== null) expect(next > last).toBe(true);
        expect(clockOf(next)).toBe(now);
        last = next;
      }
    }),
  );
  // After the last of the counter comes the next millisecond.
  expect(nextStamp('000000001-zzzz-000000001', 0)).toBe('000000002-0000-000000000');
  expect(changeId('d.1', 9) < changeId('d.1', 36)).toBe(true);
});
