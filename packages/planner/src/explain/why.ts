import type { PieceIndex } from '@waymend/core/choosing/problem';
import { gainOfAdding, worthOf } from '@waymend/core/explaining/worth';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { PlanAnswer } from '../answer/plan-answer.ts';
import type { BelongingWhy, FailureWhy, WhyAnswer } from '../answer/why-answer.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import type { Trade } from '../trade.ts';
import { massText } from '../words/mass.ts';
import { byBelonging, chanceLost, chanceOfLoss, jobsOf, ownerSaysNever } from './reading.ts';
import { related } from './swaps.ts';
import { whyJob } from './why-job.ts';

/** Explains the belonging, job or failure that `what` names by id, or by words that only one of them matches. */
export function why(
  prepared: Prepared,
  solved: Solved,
  answer: PlanAnswer,
  trade: Trade,
  what: string,
): Result<WhyAnswer> {
  const found = candidates(prepared, solved, what);
  const [first] = found;
  if (first === undefined) {
    return refuse(
      'why-unknown',
      `Nothing in this plan is called "${what.slice(0, 60)}"; give the id of a belonging, job or failure (waymend plan --json shows them)`,
    );
  }
  if (found.length > 1) {
    const some = found.slice(0, 8).map((f) => `${f.id} (${f.title})`);
    return refuse(
      'why-unclear',
      `"${what.slice(0, 60)}" could be ${some.join(', ')}${found.length > 8 ? ' and more' : ''}; give one id`,
    );
  }
  switch (first.kind) {
    case 'belonging':
      return ok(whyBelonging(prepared, solved, first.id));
    case 'job':
      return ok(whyJob(prepared, solved, trade, first.id));
    case 'failure':
      return ok(whyFailure(prepared, solved, answer, first.id));
  }
}

interface Candidate {
  readonly kind: 'belonging' | 'job' | 'failure';
  readonly id: string;
  readonly title: string;
}

function candidates({ reading, built }: Prepared, { state }: Solved, what: string): readonly Candidate[] {
  const all: Candidate[] = [];
  for (const [id, [first]] of byBelonging(reading)) {
    const piece = first === undefined ? undefined : reading.pieces[first];
    const listed =
      built.garage.belongings[id] !== undefined || (first !== undefined && state.carried[first] === 1);
    if (piece !== undefined && listed) all.push({ kind: 'belonging', id, title: piece.name });
  }
  for (const job of built.scene.jobs) all.push({ kind: 'job', id: job.id, title: job.title });
  for (const f of built.rates.failures) all.push({ kind: 'failure', id: f.failure, title: f.title });
  const plain = what.trim().toLowerCase();
  const exact = all.filter((c) => c.id.toLowerCase() === plain);
  if (exact.length > 0) return exact.slice(0, 1);
  const titled = all.filter((c) => c.title.toLowerCase() === plain);
  if (titled.length > 0) return titled.slice(0, 1);
  return plain.length < 3
    ? []
    : all.filter((c) => c.title.toLowerCase().includes(plain) || c.id.toLowerCase().startsWith(`${plain}@`));
}

function whyBelonging({ reading }: Prepared, { state }: Solved, id: string): BelongingWhy {
  const pieces = byBelonging(reading).get(id) ?? [];
  const carried = pieces.filter((p) => state.carried[p] === 1);
  const [any] = carried.length > 0 ? carried : pieces;
  const piece = any === undefined ? undefined : reading.pieces[any];
  const comes = carried.length > 0;
  const grams = (comes ? carried : pieces).reduce((sum, p) => sum + (reading.pieces[p]?.grams ?? 0), 0);
  const lost = worthOf(state, carried);
  const gain = comes ? 0 : gainOfAdding(state, pieces);
  const worth = comes
    ? chanceLost(state.loss, lost.loss)
    : chanceOfLoss(state.loss - gain) - chanceOfLoss(state.loss);
  const name = piece?.name ?? id;
  return {
    schema: 'waymend.why/1',
    kind: 'belonging',
    id,
    name,
    grams,
    comes,
    worth,
    jobs: jobsOf(reading, lost.optionsLost),
    substitutes: comes ? substitutes(reading, state, carried) : [],
    words: words(name, grams, comes, worth, lost.breaksMust, piece?.owned ?? true),
  };
}

function words(
  name: string,
  grams: number,
  comes: boolean,
  worth: number,
  floor: boolean,
  owned: boolean,
): string {
  const trips =
    worth > 1e-6 ? `1 trip in ${Math.round(1 / worth).toLocaleString('en')}` : 'no trip that can be counted';
  const where = owned ? 'stays home' : 'stays in the shop';
  if (!comes) return `${name} (${massText(grams)}) ${where}: added to this kit it would save ${trips}.`;
  if (!owned && !floor)
    return `${name} (${massText(grams)}) is bought and comes: without it ${trips} more would need outside help.`;
  if (floor)
    return `${name} (${massText(grams)}) comes because safety asks for it on every trip; beyond that it saves ${trips}.`;
  return `${name} (${massText(grams)}) comes: without it ${trips} more would need outside help.`;
}

/** What, put in its place, loses least; lightest first among the five best. */
function substitutes(
  reading: Prepared['reading'],
  state: Solved['state'],
  carried: readonly PieceIndex[],
): BelongingWhy['substitutes'] {
  const before = state.loss;
  for (const p of carried) state.leave(p);
  const without = state.loss;
  const found = reading.pieces
    .map((piece, p) => ({ piece, p }))
    .filter(
      ({ piece, p }) =>
        state.carried[p] !== 1 &&
        !carried.includes(p) &&
        !ownerSaysNever(piece) &&
        carried.some((c) => related(reading, c, p)) &&
        (piece.owned || piece.cents !== null),
    )
    .map(({ piece, p }) => ({ piece, loss: state.with(p) }))
    .filter(({ loss }) => loss < without)
    .sort((a, b) => a.loss - b.loss || a.piece.grams - b.piece.grams)
    .slice(0, 5);
  for (const p of carried) state.carry(p);
  return found.map(({ piece, loss }) => ({
    id: piece.id,
    name: piece.name,
    grams: piece.grams,
    owned: piece.owned,
    cents: piece.owned ? 0 : (piece.cents ?? 0),
    chanceLost: Math.max(0, chanceLost(before, loss - before)),
  }));
}

function whyFailure(
  { built, reading }: Prepared,
  { state }: Solved,
  answer: PlanAnswer,
  id: string,
): FailureWhy {
  const rate = built.rates.failures.find((f) => f.failure === id);
  const legs = new Map(Object.entries(built.garage.legs).map(([leg, l]) => [leg, l.name ?? leg]));
  const answers = new Map<string, FailureWhy['answers'][number]>();
  reading.troubles.forEach((merged, event) => {
    if (!merged.some((t) => t.failure === id)) return;
    const from = reading.compiled.eventStart[event] ?? 0;
    const to = reading.compiled.eventStart[event + 1] ?? from;
    for (let o = from; o < to; o++) {
      const meaning = reading.options[o];
      if (meaning === undefined || !state.optionComplete(o)) continue;
      const known = answers.get(meaning.job.id);
      if (known === undefined || meaning.chance > known.chance) {
        answers.set(meaning.job.id, {
          job: meaning.job.id,
          title: meaning.job.title,
          grade: meaning.grade,
          chance: meaning.chance,
        });
      }
    }
  });
  return {
    schema: 'waymend.why/1',
    kind: 'failure',
    id,
    title: rate?.title ?? id,
    group: rate?.group ?? '',
    expected: rate?.events ?? 0,
    stopping: rate?.immobilising ?? 0,
    parts: (rate?.parts ?? []).map((p) => ({
      on: p.leg === null ? 'the whole trip' : (legs.get(p.leg) ?? p.leg),
      title: PART_WORDS[p.kind],
      base: p.base,
      share: p.share,
      events: p.events,
      basis: p.basis,
      factors: p.factors.map(({ title, factor, basis, mark }) => ({ title, factor, basis, mark })),
    })),
    answers: [...answers.values()].sort((a, b) => b.chance - a.chance),
    cures: answer.gaps.find((g) => g.failure === id)?.cures ?? [],
  };
}

/** What a part of a rate counts. */
const PART_WORDS = {
  distance: 'distance driven',
  dust: 'dust',
  fills: 'doubtful fuel',
  crossings: 'water crossings',
  frost: 'nights of frost without winter fuel',
  days: 'time',
} as const;
