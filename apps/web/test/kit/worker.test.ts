import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { garageText } from '../../../../tests/support/yaml-garage.ts';
import { answer } from '../../src/worker/answer.ts';
import type { Reply, Request } from '../../src/worker/protocol.ts';

const solver = await createHighsSolver();

/** Every reply to a request, as the page would get them. */
async function replies(request: Request, stopAsked = () => false): Promise<readonly Reply[]> {
  const said: Reply[] = [];
  await answer(request, {
    solver,
    clock: () => performance.now() / 1000,
    stopAsked,
    say: (reply) => said.push(reply),
  });
  return said;
}

function garage(change: Parameters<typeof garageText>[0] = {}): Garage {
  const read = readGarage(
    garageText({
      fittings: ['b: { vehicle: rig, place: belt-tensioner, size: 14 mm, torqueNm: 30, access: open }'],
      belongings: ['WC-2', 'HL-1', 'GL-M', 'EY-1', 'FB-1', 'HV-1', 'ST-1', 'P-BELT', 'CW-14'],
      ...change,
    }),
    'test.yaml',
    { for: 'plan' },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

const best = { aim: { kind: 'best-chance' } } as const;

describe('the worker on a small garage', () => {
  it('[M9] the point of the curve at the mass of the plan says what the plan says', async () => {
    const made = garage();
    const plan = (await replies({ kind: 'plan', garage: made, trip: 'trip', question: best })).at(-1);
    if (plan?.kind !== 'plan') throw new Error(plan?.kind);
    expect(plan.answer.status).toBe('proven');
    const drawn = await replies({ kind: 'curve', garage: made, trip: 'trip', question: best, points: 30 });
    const last = drawn.at(-1);
    if (last?.kind !== 'curve') throw new Error(last?.kind);
    const same = last.points.find(({ grams }) => grams === plan.answer.kit.massGrams);
    expect(same?.unaided).toBeCloseTo(plan.answer.unaided.kit, 12);
    expect([...(same?.belongings ?? [])].sort()).toEqual(plan.answer.kit.items.map(({ id }) => id).sort());
  });

  it('[M9] draws past the trip limit on mass, which the plan keeps', async () => {
    const free = garage();
    const heavy = (
      await replies({ kind: 'curve', garage: free, trip: 'trip', question: best, points: 30 })
    ).at(-1);
    if (heavy?.kind !== 'curve') throw new Error(heavy?.kind);
    const floor = heavy.points[0]?.grams ?? 0;
    const tight = garage({ trip: { limitKg: String(floor / 1000) } });
    const plan = (await replies({ kind: 'plan', garage: tight, trip: 'trip', question: best })).at(-1);
    if (plan?.kind !== 'plan') throw new Error(plan?.kind);
    expect(plan.answer.kit.massGrams).toBe(floor);
    const drawn = (
      await replies({ kind: 'curve', garage: tight, trip: 'trip', question: best, points: 30 })
    ).at(-1);
    if (drawn?.kind !== 'curve') throw new Error(drawn?.kind);
    expect(drawn.points.at(-1)?.grams).toBe(heavy.points.at(-1)?.grams);
  });

  it('[M11] says each step of how sure it is, then the answer; a plan nobody made is refused, a stop is said', async () => {
    const made = garage();
    const ask = { kind: 'kit/sure', garage: made, trip: 'trip', question: best, draws: 5, sizes: 1 } as const;
    await replies({ kind: 'plan', garage: made, trip: 'trip', question: best });
    const said = await replies(ask);
    const steps = said.filter((reply) => reply.kind === 'kit/sure-step');
    expect(steps.map(({ done }) => done)).toEqual(steps.map((_, n) => n + 1));
    const last = said.at(-1);
    if (last?.kind !== 'kit/sure') throw new Error(last?.kind);
    expect(last.answer.planned).toBe(5);
    expect(last.answer.chance.low).toBeLessThan(last.answer.chance.high);
    expect((await replies(ask, () => true)).at(-1)).toEqual({ kind: 'stopped' });
    const other = { ...ask, garage: garage({ trip: { limitKg: '40' } }) };
    expect((await replies(other)).at(-1)).toMatchObject({
      kind: 'refused',
      refusals: [{ id: 'plan-missing' }],
    });
  });

  it('[M6] says which limit clashes and by how much, and giving way by that is enough', async () => {
    const tight = garage({ trip: { limitKg: '0.5' } });
    const none = (await replies({ kind: 'plan', garage: tight, trip: 'trip', question: best })).at(-1);
    if (none?.kind !== 'no-plan') throw new Error(none?.kind);
    const mass = none.clashes.find(({ limit }) => limit === 'mass');
    expect(mass?.shortBy).toBeGreaterThan(0);
    const given = garage({ trip: { limitKg: String((500 + (mass?.shortBy ?? 0)) / 1000) } });
    const plan = (await replies({ kind: 'plan', garage: given, trip: 'trip', question: best })).at(-1);
    expect(plan?.kind).toBe('plan');
    const less = garage({ trip: { limitKg: String((499 + (mass?.shortBy ?? 0)) / 1000) } });
    expect((await replies({ kind: 'plan', garage: less, trip: 'trip', question: best })).at(-1)?.kind).toBe(
      'no-plan',
    );
  });

  it('[M2] the size table says what aboard undoes a place, and what nothing does', async () => {
    const made = garage();
    await replies({ kind: 'plan', garage: made, trip: 'trip', question: best });
    const [sizes] = await replies({ kind: 'kit/sizes', garage: made, trip: 'trip', question: best });
    if (sizes?.kind !== 'kit/sizes') throw new Error(sizes?.kind);
    const belt = sizes.rows.find(({ id }) => id === 'b');
    expect(belt).toMatchObject({ size: '14 mm', torqueNm: 30, grade: 'proper' });
    expect(belt?.with).toHaveLength(1);
    const open = sizes.rows.filter(({ grade }) => grade === null);
    expect(open.length).toBeGreaterThan(0);
    expect(open.every((row) => row.with.length === 0)).toBe(true);
  });

  it('refuses a size table of a kit that is not planned', async () => {
    const [reply] = await replies({
      kind: 'kit/sizes',
      garage: garage({ trip: { limitKg: '77' } }),
      trip: 'trip',
      question: best,
    });
    expect(reply?.kind).toBe('refused');
  });

  it('prices what is sold singly, and nothing else', async () => {
    const [reply] = await replies({
      kind: 'kit/shop',
      items: ['buy:CW-14', 'buy:no-such-thing', 'cw', 'set:x'],
    });
    if (reply?.kind !== 'kit/shop') throw new Error(reply?.kind);
    expect(reply.items.map(({ is }) => is)).toEqual(['CW-14']);
    expect(reply.items[0]?.cents).toBeGreaterThan(0);
  });

  it('knows what renewing does, and refuses what it does not know', async () => {
    const [known] = await replies({ kind: 'kit/renewal', failure: 'multi-rib-belt-broken' });
    if (known?.kind !== 'kit/renewal') throw new Error(known?.kind);
    expect(known.rateFactor).toBeGreaterThan(0);
    expect(known.rateFactor).toBeLessThan(1);
    expect((await replies({ kind: 'kit/renewal', failure: 'no-such-failure' }))[0]?.kind).toBe('refused');
  });

  it('[M8] goes back to a proven plan without proving it again', async () => {
    const made = garage({ trip: { limitKg: '60' } });
    const first = (await replies({ kind: 'plan', garage: made, trip: 'trip', question: best })).at(-1);
    const again = await replies({ kind: 'plan', garage: made, trip: 'trip', question: best });
    expect(again).toHaveLength(1);
    const [only] = again;
    if (first?.kind !== 'plan' || only?.kind !== 'plan') throw new Error(only?.kind);
    expect(only.answer).toEqual(first.answer);
  });
});
