import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { why } from '@waymend/planner/explain/why';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { garageOf, owned, planned, tradeOf } from './support/yaml-garage.ts';

/** Where a trip may buy, what is bought, and what stays in the shop. Small enough to be worked out in the head. */

const solver = await createHighsSolver();
const best = { kind: 'best-chance' } as const;

/** A 14 mm belt tensioner, open: any 14 mm wrench and a belt put it right. */
const BELT = 'b: { vehicle: rig, place: belt-tensioner, size: 14 mm, torqueNm: 30, access: open }';
const belt = tradeOf('multi-rib-belt-broken');

/** What every trip carries, so that no money goes on it. */
const FLOOR = ['WC-2', 'HL-1', 'GL-M', 'EY-1', 'FB-1', 'HV-1', 'ST-1'];

const garage = (more: readonly string[], trip: Readonly<Record<string, string>>) =>
  garageOf({ fittings: [BELT], belongings: [...FLOOR, owned('P-BELT', 'pin: always'), ...more], trip });

describe('where a trip buys', () => {
  const listed = 'cw: { is: CW-14, name: the wrench I saw, forSale: true, price: 25 }';

  it('[M6] takes the cheaper guide price of the catalogue unless the trip buys only what is listed', () => {
    const anywhere = planned(garage([listed], { budget: '30' }), { aim: best }, solver, belt).answer;
    expect(anywhere.shop.from).toBe('catalogue');
    expect(anywhere.buy.map((b) => b.id)).toContain('buy:CW-14');
    expect(anywhere.buy.every((b) => b.id.startsWith('buy:'))).toBe(true);
    expect(anywhere.shop.spentCents).toBe(anywhere.buy.reduce((sum, b) => sum + b.cents, 0));
    const only = planned(garage([listed], { budget: '30', buyFrom: 'listed' }), { aim: best }, solver, belt);
    expect(only.answer.buy.map((b) => [b.id, b.cents])).toEqual([['cw', 2500]]);
    expect(only.answer.shop).toMatchObject({ from: 'listed', budgetCents: 3000, spentCents: 2500, left: [] });
    // The same work, wherever it was bought.
    expect(only.answer.unaided.kit).toBeCloseTo(anywhere.unaided.kit, 5);
  });

  it('[M6] buys nothing where nothing is listed, and still names what the catalogue has as a cure', () => {
    const { answer } = planned(garage([], { budget: '500', buyFrom: 'listed' }), { aim: best }, solver, belt);
    expect(answer.buy).toEqual([]);
    const [gap] = answer.gaps.filter((g) => g.failure === 'multi-rib-belt-broken');
    const buys = gap?.cures.filter((cure) => cure.kind === 'buy').flatMap((cure) => cure.items) ?? [];
    expect(buys.some((id) => id.startsWith('buy:'))).toBe(true);
  });

  it('[M7] what only the catalogue gives is no floor for a trip that does not buy there', () => {
    const floor = (buyFrom: string) =>
      planned(garageOf({ trip: { budget: '500', buyFrom } }), { aim: best }, solver, belt)
        .answer.gaps.filter((g) => g.reason === 'floor')
        .map((g) => g.failure);
    expect(floor('catalogue')).toEqual([]);
    expect(floor('listed')).toHaveLength(7);
  });

  it('[M10] never names what the owner says never, although it is for sale', () => {
    const never = 'cw: { is: CW-14, name: cursed wrench, grams: 1, forSale: true, price: 0.01, pin: never }';
    const { answer } = planned(garage([never], { buyFrom: 'listed' }), { aim: best }, solver, belt);
    const items = answer.gaps.flatMap((g) => g.cures.flatMap((cure) => cure.items));
    expect(items).not.toContain('cw');
    expect(items.length).toBeGreaterThan(0);
  });
});

describe('what stays in the shop', () => {
  const list = [
    'cheap: { is: CW-14, forSale: true, price: 9 }',
    'dear: { is: CW-14, name: shining wrench, forSale: true, price: 40 }',
    'winch: { is: P-WINCH, forSale: true, price: 12 }',
    'roll: { name: roll, forSale: true, price: 30, set: { caseGrams: 250 } }',
    owned('CW-13', 'inside: roll'),
    owned('CW-10', 'inside: roll'),
  ];

  it('[M10] says of each thing listed whether it helps beside this kit, and a set is one thing', () => {
    const { answer } = planned(
      garage(list, { budget: '20', buyFrom: 'listed' }),
      { aim: best },
      solver,
      belt,
    );
    expect(answer.buy.map((b) => b.id)).toEqual(['cheap']);
    expect(answer.shop.left.map((l) => [l.id, l.cents, l.why])).toEqual([
      ['dear', 4000, 'adds-nothing-here'],
      ['roll', 3000, 'no-job-needs-it'],
      ['winch', 1200, 'no-job-needs-it'],
    ]);
    expect(answer.shop.left.every((l) => l.couldAdd === 0)).toBe(true);
  });

  it('[M10] over the budget it says what would be saved, which is what buying it then saves', () => {
    const short = planned(
      garage(list, { budget: '8', buyFrom: 'listed' }),
      { aim: best },
      solver,
      belt,
    ).answer;
    const bought = planned(
      garage(list, { budget: '9', buyFrom: 'listed' }),
      { aim: best },
      solver,
      belt,
    ).answer;
    const left = short.shop.left.find((l) => l.id === 'cheap');
    expect(left?.why).toBe('over-a-limit');
    expect(left?.couldAdd).toBeGreaterThan(0);
    expect(bought.buy[0]?.worth).toBeCloseTo(left?.couldAdd ?? 0, 9);
  });

  it('[M6] two copies bought cost twice their price, and a set its own', () => {
    const fittings = [
      'u: { vehicle: rig, place: prop-flange-rear, size: 14 mm, torqueNm: 45 }',
      'f: { vehicle: rig, place: prop-flange-front, size: 14 mm, torqueNm: 45 }',
    ];
    const pair = garageOf({
      fittings,
      belongings: [...FLOOR, 'two: { is: CW-14, copies: 2, forSale: true, price: 9 }', 'P-FBOLT', 'BN-F'],
      trip: { budget: '18', buyFrom: 'listed' },
    });
    const { answer } = planned(pair, { aim: best }, solver, tradeOf('flange-bolts-lost'));
    expect(answer.buy.map((b) => [b.id, b.cents])).toEqual([['two', 1800]]);
    expect(answer.shop.spentCents).toBe(1800);
  });
});

it('[M10] why answers for what is for sale, bought or left', () => {
  const question = { aim: best };
  const shop = garage(
    [
      'cheap: { is: CW-14, name: thin wrench, forSale: true, price: 9 }',
      'winch: { is: P-WINCH, forSale: true, price: 12 }',
    ],
    { budget: '10', buyFrom: 'listed' },
  );
  const prepared = prepare(shop, 'trip', SHIPPED_TRADE);
  if (!prepared.ok) throw new Error(prepared.error.message);
  const solved = solve(prepared.value, question, solver);
  if (solved.kind !== 'solved') throw new Error(solved.kind);
  const { answer } = planned(shop, question, solver);
  const words = (id: string) => {
    const told = why(prepared.value, solved.solved, answer, SHIPPED_TRADE, id);
    return told.ok && told.value.kind === 'belonging' ? told.value.words : null;
  };
  expect(words('cheap')).toMatch(/is bought and comes/);
  expect(words('winch')).toMatch(/stays in the shop/);
});
