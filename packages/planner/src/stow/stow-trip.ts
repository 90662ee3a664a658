import type { Solver } from '@waymend/core/choosing/solver-port';
import { loadOf } from '@waymend/core/loading/load';
import type { KitLoad } from '@waymend/core/loading/load-input';
import { grams } from '@waymend/core/quantity/units';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { StowPatience } from '@waymend/core/stowing/stow';
import { stow } from '@waymend/core/stowing/stow';
import type { StowProblem, Stowage } from '@waymend/core/stowing/stow-problem';
import type { StowAnswer, StowLevel } from '../answer/stow-answer.ts';
import type { LoadAnswer } from '../answer/plan-answer.ts';
import { checkStowage } from '../checking/stowage/check-stowage.ts';
import { asLoadAnswer, loadAnswer } from '../explain/load-answer.ts';
import type { Solved } from '../plan/plan-trip.ts';
import { casesCarried } from '../explain/cases.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import { loadInput } from '../scene/load.ts';
import type { Trade } from '../trade.ts';
import { brokenSentences } from './broken-sentences.ts';
import { firstThings } from './first-things.ts';
import { NO_BERTH } from './stow-bags.ts';
import type { KitToStow } from './stow-pieces.ts';
import { stowProblemOf } from './stow-problem-of.ts';
import { bagsAnswer, berthsAnswer, emptyBags, unplaced } from './stowed.ts';

const LEVEL_WORDS: Readonly<Record<StowLevel['level'], string>> = {
  unplaced: 'things without a place',
  danger: 'rules broken that can hurt or spoil',
  order: 'rules of order broken',
  reach: 'seconds to reach things, each times its uses in 100,000 trips',
  height: 'grams times millimetres above the lowest berth',
  behind: 'grams times millimetres behind the rear axle',
  moved: 'things that change their place',
};

/** The kit that a plan chose, for `stowTrip`. */
export function kitOf(built: BuiltScene, { choice }: Pick<Solved, 'choice'>): KitToStow {
  const { scene } = built;
  return {
    carried: choice.carried.flatMap((p) => scene.pieces[p]?.id ?? []),
    wholeSets: casesCarried(scene, choice.bundles).map(({ id }) => id),
  };
}

/**
 * Stows a kit into the garage's bags, or into typical ones where it has none, has the independent checker look at the
 * result (one it rejects is a bug: it throws), and says what that does to the axles (M13, M14). Refuses what the load
 * rules refuse, and sizes no bag can have.
 */
export function stowTrip(
  built: BuiltScene,
  kit: KitToStow,
  trade: Trade,
  solver: Solver,
  patience: StowPatience = {},
): Result<StowAnswer> {
  const asked = stowProblemOf(built, kit, trade, solver);
  if (!asked.ok) return asked;
  const { problem, proposed } = asked.value;
  const outcome = stow(problem, solver, patience);
  const { stowage, levels, broken } = outcome;
  const report = checkStowage(problem, stowage, { levels, broken: broken.map(({ rule }) => rule) });
  if (!report.ok)
    throw new Error(
      `The stowage did not pass its check and is not shown: ${report.faults.slice(0, 5).join(' ')}`,
    );
  const load = stowedLoad(built, problem, stowage, trade);
  if (!load.ok) return load;
  const carried = new Set(kit.carried);
  const planned = loadAnswer(built, trade, [
    ...built.scene.pieces.filter(({ id }) => carried.has(id)),
    ...built.scene.bundles.flatMap((b) =>
      kit.wholeSets.includes(b.id) ? [{ id: b.id, grams: b.caseGrams, berth: null }] : [],
    ),
  ]);
  if (!planned.ok) return planned;
  const sentences = brokenSentences(problem, broken);
  const bags = bagsAnswer(built, problem, stowage);
  const homeless = unplaced(problem, stowage);
  return ok({
    schema: 'waymend.stow/1',
    trip: { id: built.tripId, name: built.trip.name, vehicle: built.vehicle.name },
    status: outcome.status,
    gap: outcome.gap,
    stoppedBy: outcome.stoppedBy,
    levels: levels.map((level) => ({ ...level, words: LEVEL_WORDS[level.level] })),
    proposed,
    berths: berthsAnswer(problem, stowage),
    bags,
    emptyBags: proposed ? [] : emptyBags(problem, stowage),
    unplaced: homeless,
    first: firstThings({ proposed, bags, broken: sentences, unplaced: homeless }),
    broken: sentences,
    load: load.value,
    loadAsPlanned: planned.value,
  });
}

/** Axles with everything where it is stowed, the bags themselves included. */
function stowedLoad(
  built: BuiltScene,
  problem: StowProblem,
  stowage: Stowage,
  trade: Trade,
): Result<LoadAnswer> {
  const berth = (id: string | null): string | null => (id === NO_BERTH ? null : id);
  const mass = new Map(problem.pieces.map((piece) => [piece.id, piece.grams]));
  const things: KitLoad[] = [
    ...stowage.places.flatMap((place) =>
      place.berth === null
        ? []
        : [{ id: place.piece, grams: mass.get(place.piece) ?? grams(0), berth: berth(place.berth) }],
    ),
    ...stowage.bags.map((at) => ({
      id: at.bag,
      grams: problem.bags.find(({ id }) => id === at.bag)?.grams ?? grams(0),
      berth: berth(at.berth),
    })),
  ];
  const load = loadOf(loadInput(built.garage, built.trip, built.vehicle, things, trade.loadIndex));
  return load.ok ? ok(asLoadAnswer(load.value)) : load;
}
