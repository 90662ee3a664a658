import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import type { Prepared, Solved } from '@waymend/planner/plan/plan-trip';
import { casesOwned, gramsOf } from '@waymend/planner/explain/cases';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { KitToWalk } from '@waymend/planner/simulate/simulate-trip';
import { simulateTrip } from '@waymend/planner/simulate/simulate-trip';
import { massText } from '@waymend/planner/words/mass';
import type { Garage } from '@waymend/garage/record/schema';
import type { Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { asked } from '../text/ask.ts';
import { paintFor } from '../text/paint.ts';
import { simulateText } from '../text/simulate-text.ts';
import { wholeNumber } from '../text/whole-number.ts';
import { refuse } from './garage-at.ts';
import { planned } from './planned.ts';

const LEAST_TRIPS = 100;
const MOST_TRIPS = 10_000_000;

/** Trips drawn failure by failure, the planned kit walked through them, and another kit beside it if asked (M12). */
export async function simulateCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const trips = wholeNumber(options['trips'], 'trips', LEAST_TRIPS, MOST_TRIPS);
  const seed = wholeNumber(options['seed'], 'seed', 0, 2 ** 31 - 1);
  for (const number of [trips, seed]) {
    if (number.ok) continue;
    refuse(io, [number.error]);
    return EXIT.refused;
  }
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { prepared, solved, answer, asked: how, garage } = made.planned;
  const kit = kitOf('the planned kit', prepared, solved);
  const other = await otherKit(io, garage, prepared, options);
  if (!other.ok) {
    refuse(io, [other.error]);
    return EXIT.refused;
  }
  const outcome = simulateTrip(prepared, kit, SHIPPED_TRADE, {
    trips: trips.ok ? trips.value : LEAST_TRIPS,
    seed: seed.ok ? seed.value : 1,
    ...(other.value === null ? {} : { against: other.value }),
    shouldStop: io.stopAsked,
    onProgress: (done, of) => {
      if (io.interactive) io.err(`\r\u001b[K${done} of ${of} trips ...`);
    },
  });
  if (io.interactive) io.err('\r\u001b[K');
  if (!outcome.ok) {
    refuse(io, [outcome.error]);
    return EXIT.refused;
  }
  if (outcome.value.kind === 'stopped') {
    refuse(io, [
      { id: 'simulation-stopped', message: 'Stopped: half a simulation is no answer; ask for fewer --trips' },
    ]);
    return EXIT.refused;
  }
  if (how.json) io.out(`${JSON.stringify(outcome.value.answer, null, 2)}\n`);
  else
    io.out(
      simulateText(outcome.value.answer, {
        units: how.units,
        grams: answer.kit.massGrams,
        paint: paintFor(io.colour),
      }),
    );
  return EXIT.done;
}

function kitOf(title: string, { built }: Prepared, { choice, outcome }: Solved): KitToWalk {
  const carried = new Set(choice.carried.flatMap((p) => built.scene.pieces[p]?.id ?? []));
  return { title, carried, grams: outcome.grams };
}

/** What `--against` names: everything owned, nothing, or the best kit within another mass. */
async function otherKit(
  io: Io,
  garage: Garage,
  prepared: Prepared,
  options: Readonly<Record<string, unknown>>,
): Promise<Result<KitToWalk | null>> {
  const against = options['against'];
  if (typeof against !== 'string') return ok(null);
  const { scene } = prepared.built;
  if (against === 'nothing') return ok({ title: 'nothing', carried: new Set(), grams: 0 });
  if (against === 'everything') {
    const owned = scene.pieces.filter((p) => p.owned);
    return ok({
      title: 'everything you own',
      carried: new Set(owned.map((p) => p.id)),
      grams: gramsOf(owned) + gramsOf(casesOwned(garage)),
    });
  }
  const how = asked(garage, { ...options, limit: against });
  if (!how.ok)
    return refusal(
      'against-unclear',
      `--against wants "everything", "nothing" or a mass such as "40 kg", not "${against.slice(0, 20)}"`,
    );
  const made = prepare(garage, how.value.tripId, SHIPPED_TRADE, how.value.question);
  if (!made.ok) return made;
  const outcome = solve(made.value, how.value.question, await createHighsSolver(), {
    clock: () => io.clock() / 1000,
    shouldStop: io.stopAsked,
    ...(how.value.seconds === null ? {} : { timeLimit: how.value.seconds }),
  });
  if (outcome.kind === 'no-plan')
    return refusal('against-no-plan', `No kit fits within ${against}: ${outcome.sentences.join(' ')}`);
  if (outcome.kind === 'refused') return { ok: false, error: outcome.refusal };
  const { grams } = outcome.solved.outcome;
  return ok(kitOf(`the best kit of ${massText(grams)}`, made.value, outcome.solved));
}
