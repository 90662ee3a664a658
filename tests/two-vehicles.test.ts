import { patternOf } from '@waymend/catalogue/patterns/all';
import { readGarage } from '@waymend/garage/file/read-garage';
import { startFromPattern } from '@waymend/garage/start/from-pattern';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { answerOf } from '@waymend/planner/plan/answer';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { expect, it } from 'vitest';

const solver = await createHighsSolver();
const NAMES = { person: 'Driver', trip: 'Trip', leg: 'There', nose: 'Nose' };

function twoVehicles() {
  const read = readGarage('waymend: 1\nname: two', 'two.yaml', { for: 'edit' });
  const wagon = patternOf('live-axle-wagon');
  const van = patternOf('van');
  if (!read.ok || wagon === null || van === null) throw new Error('nothing to start from');
  const first = startFromPattern(read.value, wagon, { ...NAMES, vehicle: 'Wagon' });
  return startFromPattern(first.garage, van, { ...NAMES, vehicle: 'Van' }).garage;
}

function planned(trip: string) {
  const prepared = prepare(twoVehicles(), trip, SHIPPED_TRADE);
  if (!prepared.ok) throw new Error(prepared.error.message);
  const question = { aim: { kind: 'best-chance' } } as const;
  const solved = solve(prepared.value, question, solver);
  if (solved.kind !== 'solved') throw new Error('no plan');
  const answer = answerOf(prepared.value, question, solved.solved, SHIPPED_TRADE);
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

it('[M13] a person whose seat is in another vehicle still travels in this one', () => {
  const wagon = planned('trip');
  const van = planned('trip-2');
  // The driver, 78 kg, sits in the wagon's own seat, and in the van where people usually sit.
  const empty = (id: string) => {
    const found = patternOf(id);
    return (found?.emptyFrontKg ?? 0) + (found?.emptyRearKg ?? 0);
  };
  expect(wagon.load.gross.kg).toBeCloseTo(empty('live-axle-wagon') + 78, 6);
  expect(van.load.gross.kg).toBeCloseTo(empty('van') + 78, 6);
});

it('says that the ratings are only typical until somebody has read the plate', () => {
  expect(planned('trip').warnings.filter((w) => w.includes('plate'))).toEqual([
    'The ratings of Wagon are typical of its kind: read them off its plate before you trust what the load says.',
  ]);
});
