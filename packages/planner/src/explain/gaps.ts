import type { Failure } from '@waymend/catalogue/shape/failure';
import type { KitState } from '@waymend/core/choosing/kit-state';
import type { NeedIndex, PieceIndex } from '@waymend/core/choosing/problem';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import type { SceneJob, Trouble } from '@waymend/core/repairing/scene';
import type { CureAnswer, GapAnswer } from '../answer/plan-answer.ts';
import type { Trade } from '../trade.ts';
import { companyIn, costsOf, cures, marked } from './cures.ts';
import type { Blocked, Reading } from './reading.ts';
import { chanceOfLoss } from './reading.ts';

/** A gap smaller than this many expected events on the trip is not worth a line (1 in 10,000 trips). */
const LEAST_EXPECTED = 1e-4;

/** Every failure that stops the drive and that this kit leaves without any answer, worst first (M10). */
export function gapsOf(
  reading: Reading,
  state: KitState,
  trade: Trade,
): { readonly gaps: readonly GapAnswer[]; readonly company: ReadonlyMap<PieceIndex, readonly PieceIndex[]> } {
  const costs = costsOf(reading);
  const company = new Map<PieceIndex, readonly PieceIndex[]>();
  const failures = new Map(trade.failures.map((f) => [f.id, f]));
  const jobs = new Map(reading.scene.jobs.map((j) => [j.id, j]));
  const eventOf = new Map<string, number>();
  reading.troubles.forEach((merged, event) => {
    for (const t of merged) eventOf.set(t.id, event);
  });

  const open = new Map<string, Open>();
  for (const trouble of reading.scene.trouble) {
    const event = eventOf.get(trouble.id);
    if (event !== undefined && state.gainOf(event) > 0) continue;
    const one = open.get(trouble.failure) ?? {
      failure: trouble.failure,
      troubles: [],
      events: new Set<number>(),
      expected: 0,
    };
    one.troubles.push(trouble);
    if (event !== undefined) one.events.add(event);
    one.expected += trouble.expected;
    open.set(trouble.failure, one);
  }

  const gaps: GapAnswer[] = [];
  for (const one of open.values()) {
    if (one.expected < LEAST_EXPECTED) continue;
    const [worst] = [...one.troubles].sort((a, b) => b.expected - a.expected);
    const failure = failures.get(one.failure);
    if (worst === undefined || failure === undefined) continue;
    const choices = choicesOf(reading, state, one.events);
    const found = cures(reading, state, choices, costs);
    companyIn(
      found.map((c) => c.items.flatMap((id) => reading.indexOf.get(id) ?? [])),
      company,
    );
    const candidates = worst.jobs.flatMap((id) => jobs.get(id) ?? []);
    const blocked = one.troubles.flatMap((t) => reading.blocked.get(t.id) ?? []);
    const reason = reasonOf(
      choices.length > 0,
      candidates,
      blocked.map((b) => b.why),
    );
    const all = [...found, ...otherCures(reason, failure, candidates, trade)];
    gaps.push({
      failure: one.failure,
      title: failure.title,
      group: failure.group,
      reason,
      words: wordsOf(reason, candidates),
      expected: one.expected,
      worth: closingWorth(reading, state, one, candidates),
      cures: marked(all),
    });
  }
  gaps.sort((a, b) => b.worth - a.worth || b.expected - a.expected || (a.failure < b.failure ? -1 : 1));
  return { gaps, company };
}

interface Open {
  readonly failure: string;
  readonly troubles: Trouble[];
  readonly events: Set<number>;
  expected: number;
}

/** The weakest form of each job that could answer the biggest of these events: the cheapest cure is always among them. */
function choicesOf(
  reading: Reading,
  state: KitState,
  events: ReadonlySet<number>,
): readonly (readonly NeedIndex[])[] {
  const { compiled } = reading;
  const [biggest] = [...events].sort(
    (a, b) => (compiled.problem.events[b]?.loss ?? 0) - (compiled.problem.events[a]?.loss ?? 0),
  );
  const event = biggest === undefined ? undefined : compiled.problem.events[biggest];
  if (biggest === undefined || event === undefined) return [];
  const weakest = new Map<string, { needs: readonly NeedIndex[]; gain: number }>();
  event.options.forEach((option, i) => {
    const job = reading.options[(compiled.eventStart[biggest] ?? 0) + i]?.job;
    if (
      job === undefined ||
      option.gain <= 0 ||
      state.optionComplete((compiled.eventStart[biggest] ?? 0) + i)
    )
      return;
    const known = weakest.get(job.id);
    if (known === undefined || option.gain < known.gain) weakest.set(job.id, option);
  });
  return [...weakest.values()].map((o) => o.needs);
}

function reasonOf(
  curable: boolean,
  candidates: readonly SceneJob[],
  blocked: readonly Blocked[],
): GapAnswer['reason'] {
  if (curable) return candidates.every((j) => j.uses.length > 0) ? 'parts' : 'tools';
  return (
    blocked.find((b) => b === 'skill') ??
    blocked.find((b) => b === 'people') ??
    blocked[0] ??
    (candidates.length === 0 ? 'nothing-helps' : 'tools')
  );
}

function wordsOf(reason: GapAnswer['reason'], candidates: readonly SceneJob[]): string {
  const [easiest] = [...candidates].sort((a, b) => a.skill - b.skill);
  switch (reason) {
    case 'tools':
      return 'not everything the repair needs is in the kit.';
    case 'parts':
      return 'the part, or something the repair needs, is not in the kit.';
    case 'skill':
      return `needs skill ${easiest?.skill ?? 5}; the best aboard is ${easiest?.bestSkill ?? 0}.`;
    case 'people':
      return `takes ${easiest?.people ?? 2} people.`;
    case 'trust':
      return 'the repair may not be trusted as far as help is.';
    case 'nothing-helps':
      return 'nothing at the roadside mends it.';
    case 'floor':
      return 'every trip needs it and nothing on the table gives it.';
  }
}

/** Chance added if the best job that exists were possible on all of the open troubles. */
function closingWorth(reading: Reading, state: KitState, one: Open, candidates: readonly SceneJob[]): number {
  let gain = 0;
  for (const event of one.events) {
    const best = Math.max(0, ...(reading.compiled.problem.events[event]?.options ?? []).map((o) => o.gain));
    gain += best - state.gainOf(event);
  }
  if (gain === 0 && candidates.length > 0) {
    const [worst] = one.troubles;
    const chance = Math.max(...candidates.map((j) => j.chanceFactor)) * (worst?.restored ?? 0);
    gain = (one.expected * chance) / SCORE_UNIT;
  }
  return chanceOfLoss(state.loss - gain) - chanceOfLoss(state.loss);
}

function otherCures(
  reason: GapAnswer['reason'],
  failure: Failure,
  candidates: readonly SceneJob[],
  trade: Trade,
): readonly CureAnswer[] {
  const out: CureAnswer[] = [];
  const [easiest] = [...candidates].sort((a, b) => a.skill - b.skill);
  if (reason === 'skill' && easiest !== undefined) {
    const system = easiest.system.replaceAll('-', ' and ');
    out.push({
      kind: 'learn',
      words: `Learn it: do "${easiest.title}" at home first, with somebody who knows`,
      items: [],
      grams: 0,
      cents: 0,
      best: [],
    });
    out.push({
      kind: 'bring-a-person',
      words: `Bring somebody of skill ${easiest.skill} in ${system}`,
      items: [],
      grams: 0,
      cents: 0,
      best: [],
    });
  }
  if (reason === 'people')
    out.push({
      kind: 'bring-a-person',
      words: 'Travel with one more person, or in company',
      items: [],
      grams: 0,
      cents: 0,
      best: [],
    });
  if (failure.renew !== undefined) {
    const { what, rateFactor, price } = failure.renew;
    const times = Math.round(1 / Math.max(rateFactor, 0.05));
    out.push({
      kind: 'renew-at-home',
      words: `${what.charAt(0).toUpperCase()}${what.slice(1)}${what.includes('before leaving') ? '' : ' before leaving'}, then about ${times} times rarer`,
      items: [],
      grams: 0,
      cents: trade.bandCents(price),
      best: [],
    });
  }
  return out;
}
