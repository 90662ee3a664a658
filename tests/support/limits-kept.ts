import type { Scene, ScenePiece } from '@waymend/core/repairing/scene';
import type { Garage } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';

/** A kit and how it was come by, as pieces and set ids. */
export interface Chosen {
  readonly carried: readonly ScenePiece[];
  readonly bought: readonly ScenePiece[];
  readonly bundles: readonly string[];
}

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/**
 * Every limit of docs/model.md M6, M7 and M13 that this kit breaks, in words, worked out from the garage file as it was written
 * and not from anything the planner made of it.
 */
export function broken(garage: Garage, scene: Scene, question: Question, chosen: Chosen): readonly string[] {
  const { carried, bought, bundles } = chosen;
  const out: string[] = [];
  const trip = garage.trips['t'] ?? garage.trips['trip'];
  const vehicle = trip === undefined ? undefined : garage.vehicles[trip.vehicle];
  if (trip === undefined || vehicle === undefined) throw new Error('no trip');
  const sets = scene.bundles.filter((b) => bundles.includes(b.id));
  const cases = sets.filter((b) => b.carry === 'whole');

  const grams = sum(carried.map((p) => p.grams)) + sum(cases.map((b) => b.caseGrams));
  const millilitres = sum(carried.map((p) => p.millilitres)) + sum(cases.map((b) => b.caseMillilitres));
  const cents = sum(bought.map((p) => p.cents ?? Number.NaN)) + sum(sets.map((b) => (b.owned ? 0 : b.cents)));
  if (grams > (question.limitGrams ?? Number.POSITIVE_INFINITY)) out.push(`${grams} g`);
  if (millilitres > (question.limitMl ?? Number.POSITIVE_INFINITY)) out.push(`${millilitres} ml`);
  if (!(cents <= (question.budgetCents ?? 0))) out.push(`${cents} cents`);

  // M13: a mass m at x puts m x / L on the rear axle and the rest on the front.
  const riding = [
    ...trip.people.flatMap((id) => {
      const person = garage.people[id];
      return person === undefined ? [] : [{ kg: person.massKg, berth: person.berth ?? trip.kitBerth }];
    }),
    ...carried.map((p) => ({ kg: p.grams / 1000, berth: p.berth ?? trip.kitBerth })),
    ...cases.map((b) => ({ kg: b.caseGrams / 1000, berth: trip.kitBerth })),
  ].map(({ kg, berth }) => ({ kg, berth, at: garage.berths[berth ?? ''] }));
  const onRear = sum(riding.map(({ kg, at }) => (kg * (at?.xMm ?? Number.NaN)) / vehicle.wheelbaseMm));
  const all = sum(riding.map(({ kg }) => kg));
  const tolerance = 1e-6;
  if (!(vehicle.emptyRearKg + onRear <= vehicle.ratedRearKg + tolerance)) out.push('rear axle');
  if (!(vehicle.emptyFrontKg + all - onRear <= vehicle.ratedFrontKg + tolerance)) out.push('front axle');
  if (!(vehicle.emptyFrontKg + vehicle.emptyRearKg + all <= vehicle.ratedGrossKg + tolerance))
    out.push('gross');
  const roof = sum(riding.map(({ kg, at }) => (at?.roof === true ? kg : 0)));
  if (roof > (vehicle.ratedRoofKg ?? Number.POSITIVE_INFINITY) + tolerance) out.push('roof');
  for (const [id, berth] of Object.entries(garage.berths)) {
    const here = sum(riding.map((r) => (r.berth === id ? r.kg : 0)));
    if (here > (berth.limitKg ?? Number.POSITIVE_INFINITY) + tolerance) out.push(`berth ${id}`);
  }

  const ids = carried.map((p) => p.id);
  if (new Set(ids).size < ids.length) out.push('a piece twice');
  for (const piece of scene.pieces) {
    const pin = garage.belongings[piece.belonging]?.pin;
    if (piece.id.startsWith('ready:')) {
      if (ids.includes(piece.id)) out.push(`${piece.id} is not ready`);
    } else if (pin !== undefined && ids.includes(piece.id) !== (pin === 'always'))
      out.push(`pin of ${piece.id}`);
  }
  for (const set of scene.bundles) {
    const members = scene.pieces.filter((p) => p.bundles.includes(set.id));
    const come = members.filter((p) => ids.includes(p.id));
    const chosenSet = bundles.includes(set.id);
    if (set.carry === 'whole' && chosenSet && come.length < members.length) out.push(`torn set ${set.id}`);
    for (const piece of come) {
      const own = piece.owned && set.carry !== 'whole';
      if (!own && !chosenSet && !bought.some((b) => b.id === piece.id)) out.push(`${piece.id} from nowhere`);
    }
  }
  for (const piece of carried) {
    if (!piece.owned && piece.bundles.length === 0 && !bought.some((b) => b.id === piece.id))
      out.push(`${piece.id} unpaid`);
  }
  return out;
}
