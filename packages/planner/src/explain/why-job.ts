import type { KitState } from '@waymend/core/choosing/kit-state';
import type { NeedIndex, PieceIndex } from '@waymend/core/choosing/problem';
import type { JobWhy } from '../answer/why-answer.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import type { Trade } from '../trade.ts';

const GRADES = ['proper', 'with-care', 'last-resort'] as const;

/** Each need of a job with the pieces aboard that meet it best. */
export function whyJob(
  { built, stated, reading }: Prepared,
  { state }: Solved,
  trade: Trade,
  id: string,
): JobWhy {
  const job = built.scene.jobs.find((j) => j.id === id);
  const record = trade.jobs.find((j) => j.id === job?.job);
  const graded = stated.jobNeeds.get(id) ?? [];
  const needs = graded.map((need) => {
    const grade = GRADES.find((g) => need[g] !== null && state.needMet(need[g])) ?? null;
    const index = grade === null ? GRADES.map((g) => need[g]).find((n) => n !== null) : need[grade];
    const pieces = grade === null || index === null || index === undefined ? [] : lightestWay(state, index);
    return {
      need:
        index === null || index === undefined
          ? 'nothing on the table does this'
          : (stated.needWords[index] ?? ''),
      met: grade !== null,
      grade,
      with: pieces.flatMap((p) => reading.pieces[p]?.name ?? []),
    };
  });
  const uses = (job?.uses ?? []).map(({ of, units }) => ({
    of,
    aboard: aboard(reading, state, of),
    each: units,
  }));
  const tools = needs.every((n) => n.met)
    ? (GRADES.findLast((g) => needs.some((n) => n.grade === g)) ?? 'proper')
    : null;
  const reachable = job !== undefined && job.bestSkill >= job.skill && built.scene.crew.count >= job.people;
  return {
    schema: 'waymend.why/1',
    kind: 'job',
    id,
    title: job?.title ?? id,
    possible: tools !== null && reachable && uses.every((u) => u.aboard >= u.each),
    grade: tools,
    skill: job?.skill ?? 0,
    bestSkill: job?.bestSkill ?? 0,
    people: job?.people ?? 0,
    needs,
    uses,
    cautions: record?.cautions ?? [],
    after: (record?.after ?? []).map((a) => (a.km === undefined ? a.check : `${a.check} (after ${a.km} km)`)),
  };
}

function aboard(reading: Prepared['reading'], state: KitState, of: string): number {
  return reading.pieces.reduce((sum, piece, p) => {
    if (state.carried[p] !== 1) return sum;
    return sum + piece.stock.filter((s) => s.of === of).reduce((n, s) => n + s.units, 0);
  }, 0);
}

/** The carried pieces of the lightest complete way of a met need. */
function lightestWay(state: KitState, need: NeedIndex): readonly PieceIndex[] {
  const node = state.compiled.problem.needs[need];
  if (node === undefined) return [];
  const mass = (pieces: readonly PieceIndex[]) =>
    pieces.reduce((sum, p) => sum + (state.compiled.grams[p] ?? 0), 0);
  if (node.kind === 'enough')
    return node.from.filter((f) => state.carried[f.piece] === 1).map((f) => f.piece);
  const complete = node.ways
    .filter((w) => w.pieces.every((p) => state.carried[p] === 1) && w.needs.every((n) => state.needMet(n)))
    .map((w) => [...new Set([...w.pieces, ...w.needs.flatMap((n) => lightestWay(state, n))])]);
  return complete.sort((a, b) => mass(a) - mass(b))[0] ?? [];
}
