import { KitState } from '@waymend/core/choosing/kit-state';
import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '@waymend/garage/record/schema';
import { checkPlan } from '../checking/check-plan.ts';
import type { CheckReport } from '../checking/report.ts';
import type { Prepared } from '../plan/plan-trip.ts';
import { prepare } from '../plan/plan-trip.ts';
import type { Ask } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import { aboutOneIn } from '../words/chance.ts';

/** A failure that is answered less well than before. */
export interface WeakerAnswer {
  readonly failure: string;
  readonly title: string;
  /** Chance that it is put right, before and after. 0 after: uncovered. */
  readonly before: number;
  readonly after: number;
  /** Job that answered it, and the one that does now; null when none does. */
  readonly job: string | null;
  readonly now: string | null;
  /** Events that stop the drive, expected on the trip. */
  readonly expected: number;
}

export interface ChangedChance {
  readonly before: number;
  readonly after: number;
  /** Worst first. */
  readonly weaker: readonly WeakerAnswer[];
  readonly words: string;
}

/**
 * What a closed muster changed: the same kit on the same trip with the record before and after, nothing chosen anew. What came of
 * splitting (a begun tin, damaged copies) is aboard too. Both are recomputed by the independent checker (M8), and refused to be
 * shown when it does not agree.
 *
 * @param carried Ids of the pieces of the kit, as the plan names them.
 */
export function changedChance(
  before: Garage,
  after: Garage,
  tripId: string,
  carried: readonly string[],
  trade: Trade,
  ask: Ask = {},
): Result<ChangedChance> {
  const was = prepare(before, tripId, trade, ask);
  if (!was.ok) return was;
  const is = prepare(after, tripId, trade, ask);
  if (!is.ok) return is;
  const born = Object.keys(after.belongings).filter((id) => !Object.hasOwn(before.belongings, id));
  const aboard = new Set([...carried, ...born]);
  const first = checked(was.value, aboard);
  const second = checked(is.value, aboard);
  const weaker = weakerAnswers(is.value, first, second);
  const chances = { before: first.figures.chance, after: second.figures.chance };
  return ok({ ...chances, weaker, words: wordsOf(chances, weaker) });
}

function checked({ built, reading }: Prepared, aboard: ReadonlySet<string>): CheckReport {
  const state = new KitState(reading.compiled);
  const carried = reading.pieces.flatMap((piece, p) => {
    if (!aboard.has(piece.id)) return [];
    state.carry(p);
    return [piece];
  });
  const bought = carried.filter((p) => !p.owned && p.bundles.length === 0).map((p) => p.id);
  const report = checkPlan(
    built.scene,
    carried.map((p) => p.id),
    bought,
    [],
    {
      lossUnits: state.loss,
      grams: state.grams,
    },
  );
  const wrong = report.violations.find((v) => v.id.startsWith('loss-'));
  if (wrong !== undefined)
    throw new Error(`The chance did not pass its check and is not shown: ${wrong.sentence}`);
  return report;
}

function weakerAnswers(
  { built }: Prepared,
  first: CheckReport,
  second: CheckReport,
): readonly WeakerAnswer[] {
  const before = new Map(first.figures.trouble.map((t) => [t.id, t]));
  const titles = new Map(built.scene.jobs.map((j) => [j.id, j.title]));
  const worst = new Map<string, WeakerAnswer>();
  for (const now of second.figures.trouble) {
    const then = before.get(now.id);
    const trouble = built.scene.trouble.find((t) => t.id === now.id);
    if (then === undefined || trouble === undefined || !(now.chance < then.chance - 1e-9)) continue;
    const same = worst.get(trouble.title);
    const one: WeakerAnswer = {
      failure: trouble.failure,
      title: trouble.title,
      before: Math.max(then.chance, same?.before ?? 0),
      after: Math.min(now.chance, same?.after ?? 1),
      job: then.job === null ? null : (titles.get(then.job) ?? then.job),
      now: now.job === null ? null : (titles.get(now.job) ?? now.job),
      expected: trouble.expected + (same?.expected ?? 0),
    };
    worst.set(trouble.title, one);
  }
  const lost = (w: WeakerAnswer) => w.expected * (w.before - w.after);
  return [...worst.values()].sort((a, b) => lost(b) - lost(a) || (a.title < b.title ? -1 : 1));
}

function wordsOf(
  chances: { readonly before: number; readonly after: number },
  weaker: readonly WeakerAnswer[],
): string {
  if (weaker.length === 0) return 'Nothing that was answered before is answered less well now.';
  const open = weaker.filter((w) => w.after === 0).length;
  const now = `you would need outside help on ${aboutOneIn(1 - chances.after)} trips like this one, ${aboutOneIn(1 - chances.before)} before`;
  const what =
    open === 0
      ? `${weaker.length === 1 ? 'one failure is' : `${weaker.length} failures are`} answered less well`
      : `${open === 1 ? 'one failure has' : `${open} failures have`} no answer any more`;
  return `Now ${what}; ${now}.`;
}
