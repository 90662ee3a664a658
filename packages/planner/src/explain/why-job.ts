import type { KitState } from '@waymend/core/choosing/kit-state';
import { FUNCTIONS } from '@waymend/catalogue/shape/words';
import type { SceneNeed } from '@waymend/core/repairing/scene';
import { waysOf } from '@waymend/core/repairing/ways-of';
import type { JobWhy } from '../answer/why-answer.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import type { Trade } from '../trade.ts';

const GRADES = ['proper', 'with-care', 'last-resort'] as const;

/** Each need of a job with the lightest pieces aboard that meet it. */
export function whyJob({ built, reading }: Prepared, { state }: Solved, trade: Trade, id: string): JobWhy {
  const { scene } = built;
  const job = scene.jobs.find((j) => j.id === id);
  const record = trade.jobs.find((j) => j.id === job?.job);
  const names = new Map(scene.pieces.map((p) => [p.id, p.name]));
  const aboardOnly = { ...scene, pieces: scene.pieces.filter((_, p) => state.carried[p] === 1) };
  const needs = (job?.needs ?? []).map((need) => {
    const [way] = waysOf(aboardOnly, need, 1);
    return {
      need: needWords(need, built),
      met: way !== undefined,
      grade: way?.grade ?? null,
      with: (way?.pieces ?? []).flatMap((p) => names.get(p) ?? []),
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
  const reachable = job !== undefined && job.bestSkill >= job.skill && scene.crew.count >= job.people;
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

/** A need as a list shows it: the place with size and torque, or the function in plain words. */
export function needWords(need: SceneNeed, built: Pick<Prepared['built'], 'scene'>): string {
  if (need.kind === 'turn') {
    const joint = built.scene.joints.find((j) => j.id === need.joint);
    if (joint === undefined) return need.joint;
    const assumed = joint.status === 'assumed' ? ', size assumed' : '';
    return `${joint.title}, ${joint.size.label}, ${Math.round(joint.torque)} N m${joint.hold === undefined ? '' : ', held on the other side'}${assumed}`;
  }
  const [fn = '', apart] = need.fn.split(' ');
  const words = isFunction(fn) ? FUNCTIONS[fn].words : fn;
  const of = need.of ?? apart;
  return of === undefined ? words : `${words} (${of.replaceAll('-', ' ')})`;
}

function isFunction(word: string): word is keyof typeof FUNCTIONS {
  return Object.hasOwn(FUNCTIONS, word);
}

function aboard(reading: Prepared['reading'], state: KitState, of: string): number {
  return reading.pieces.reduce((sum, piece, p) => {
    if (state.carried[p] !== 1) return sum;
    return sum + piece.stock.filter((s) => s.of === of).reduce((n, s) => n + s.units, 0);
  }, 0);
}
