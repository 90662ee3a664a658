import { KitState } from '@waymend/core/choosing/kit-state';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type {
  BuyAnswer,
  ComparisonAnswer,
  GapAnswer,
  KitAnswer,
  PlanAnswer,
  TripAnswer,
  UnaidedAnswer,
} from '../answer/plan-answer.ts';
import { atRealMass } from '../explain/at-real-mass.ts';
import { casesCarried, gramsOf } from '../explain/cases.ts';
import { comparisons } from '../explain/comparisons.ts';
import { gapsOf } from '../explain/gaps.ts';
import { stayHome } from '../explain/home.ts';
import { kitItems } from '../explain/kit-items.ts';
import { brokenLimits, loadAnswer } from '../explain/load-answer.ts';
import type { Reading } from '../explain/reading.ts';
import { standing } from '../explain/standing.ts';
import { buyAnswer, shopAnswer } from '../explain/shop.ts';
import { lighterSwaps } from '../explain/swaps.ts';
import { legsOf } from '../scene/rate-input.ts';
import { spreadOf } from '../sureness/spread.ts';
import type { Trade } from '../trade.ts';
import { aboutOneIn } from '../words/chance.ts';
import { massText } from '../words/mass.ts';
import { moneyText } from '../words/money.ts';
import type { Prepared, Question, Solved } from './plan-trip.ts';
import { warningsOf } from './warnings.ts';

/** The whole answer to a question about a trip (docs/answers.md), every number from the checked kit. */
export function answerOf(
  prepared: Prepared,
  question: Question,
  solved: Solved,
  trade: Trade,
): Result<PlanAnswer> {
  const { reading, built, stated } = prepared;
  const { state, outcome, choice } = solved;
  const { garage } = built;
  const items = kitItems(reading, state, new Set(choice.bought), garage);
  const carried = choice.carried.flatMap((p) => reading.pieces[p] ?? []);
  const cases = casesCarried(built.scene, choice.bundles);
  const kit: KitAnswer = {
    massGrams: outcome.grams,
    volumeMl: solved.report.figures.millilitres,
    estimatedGrams: items.reduce((sum, i) => sum + (i.weighed ? 0 : i.grams), 0),
    items,
  };
  const { gaps: found, company } = gapsOf(reading, state, trade);
  const gaps = [...floorGaps(reading), ...found];
  const buy = buyAnswer(reading, state, choice, built, trade);
  const home = stayHome(reading, state, company, garage);
  const scratch = new KitState(reading.compiled);
  const rows = comparisons(reading, state, scratch, built, trade, cases, buy);
  if (!rows.ok) return rows;
  const load = loadAnswer(built, trade, [...carried, ...cases]);
  if (!load.ok) return load;
  const real = atRealMass(reading, state, built, trade, gramsOf(cases));
  if (!real.ok) return real;
  const spread = spreadOf(prepared, solved, trade);
  if (!spread.ok) return spread;
  const chance = (kind: string) => rows.value.find((r) => r.kind === kind)?.unaided ?? 0;
  const { chance: stated_, chanceExactStock } = solved.report.figures;
  const unaided: UnaidedAnswer = {
    empty: chance('nothing'),
    everything: chance('everything'),
    kit: real.value,
    low: spread.value.low,
    high: spread.value.high,
    sparesBound: Math.max(0, chanceExactStock - stated_),
    words: sentence(outcome.grams, real.value, rows.value, buy, garage.currency),
  };
  const { bound } = outcome.kind === 'within' ? outcome : { bound: outcome.loss };
  const measured = question.aim.kind === 'best-chance' ? outcome.loss : outcome.grams;
  return ok({
    schema: 'waymend.plan/1',
    trip: tripAnswer(prepared),
    aim: aimAnswer(prepared, question),
    status: outcome.kind,
    gap: measured > 0 ? Math.min(1, Math.max(0, (measured - bound) / measured)) : 0,
    ...(outcome.kind === 'within' ? { stoppedBy: outcome.stoppedBy } : {}),
    kit,
    stayHome: home,
    gaps,
    buy,
    shop: shopAnswer(reading, state, company, buy, built),
    swaps: lighterSwaps(reading, state),
    unaided,
    comparisons: rows.value,
    load: load.value,
    standing: standing(reading, garage, kit, home, gaps, unaided),
    warnings: warningsOf(prepared, state, load.value, brokenLimits(load.value), stated),
  });
}

/** The answer in a breath: this kit, then what most people do instead, on the same scale. */
function sentence(
  grams: number,
  kit: number,
  rows: readonly ComparisonAnswer[],
  buy: readonly BuyAnswer[],
  currency: string,
): string {
  const spent = buy.reduce((sum, b) => sum + b.cents, 0);
  const bought = buy.length === 0 ? '' : ` (${moneyText(spent, currency)} of it still to be bought)`;
  const others = rows.flatMap(({ kind, massGrams, unaided, breaks }) => {
    if (kind === 'kit' || kind === 'boxed-set') return [];
    const what =
      kind === 'nothing'
        ? 'nothing aboard'
        : `everything you own (${massText(massGrams)}${breaks.length > 0 ? ', over its limits' : ''})`;
    return [`with ${what}, on ${aboutOneIn(1 - unaided)}`];
  });
  return `With this kit of ${massText(grams)}${bought} you would need outside help on ${aboutOneIn(1 - kit)} trips like this one; ${others.reverse().join('; ')}.`;
}

function tripAnswer({ built }: Prepared): TripAnswer {
  const { trip, tripId, garage, vehicle, rates } = built;
  return {
    id: tripId,
    name: trip.name,
    vehicle: vehicle.name,
    km: legsOf(garage, tripId).reduce((sum, [, leg]) => sum + leg.km, 0),
    days: trip.days,
    people: trip.people.flatMap((id) => {
      const person = garage.people[id];
      return person === undefined ? [] : [{ name: person.name, skill: person.skill }];
    }),
    expected: rates.groups.map((g) => ({
      group: g.group,
      title: g.title,
      failures: g.events,
      stopping: g.immobilising,
    })),
  };
}

function aimAnswer({ built }: Prepared, question: Question): PlanAnswer['aim'] {
  switch (question.aim.kind) {
    case 'best-chance':
      return { kind: 'best-chance', limitGrams: built.scene.limits.grams };
    case 'least-mass':
      return { kind: 'least-mass', chance: question.aim.chance };
    case 'must-do':
      return { kind: 'must-do', jobs: built.scene.mustDo };
  }
}

function floorGaps(reading: Reading): readonly GapAnswer[] {
  return reading.unmetFloor.map(({ fn }) => ({
    failure: `floor-${fn}`,
    title: `No ${fn}`,
    group: 'floor',
    reason: 'floor',
    words: 'every trip needs it, and nothing owned or affordable gives it.',
    expected: 0,
    worth: 0,
    cures: cheapestOffer(reading, fn),
  }));
}

function cheapestOffer(reading: Reading, fn: string): GapAnswer['cures'] {
  const [best] = reading.pieces
    .filter(
      (p) =>
        !p.owned &&
        p.cents !== null &&
        p.offers.some((o) => o.kind === 'does' && o.fn === fn && o.grade === 'proper'),
    )
    .sort((a, b) => (a.cents ?? 0) - (b.cents ?? 0) || a.grams - b.grams);
  if (best === undefined) return [];
  return [
    {
      kind: 'buy',
      words: `Buy ${best.name}`,
      items: [best.id],
      grams: best.grams,
      cents: best.cents ?? 0,
      best: ['grams', 'money'],
    },
  ];
}
