import { readFileSync } from 'node:fs';
import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { answerOf } from '@waymend/planner/plan/answer';
import type { Question } from '@waymend/planner/plan/plan-trip';
import { prepare, solve } from '@waymend/planner/plan/plan-trip';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { loadView } from '@waymend/planner/views/load-view';
import { sizeRail } from '@waymend/planner/views/size-rail';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';

const solver = await createHighsSolver();

function demo(): Garage {
  const read = readGarage(
    readFileSync(new URL('../examples/demo.garage.yaml', import.meta.url), 'utf8'),
    'demo',
  );
  if (!read.ok) throw new Error(read.error.map((e) => e.message).join('\n'));
  return read.value;
}

/** The kit that is shown at once; the pictures draw it while the proof runs. */
function firstKit(garage: Garage): PlanAnswer {
  const question: Question = { aim: { kind: 'best-chance' } };
  const prepared = prepare(garage, 'loop', SHIPPED_TRADE, question);
  if (!prepared.ok) throw new Error(prepared.error.message);
  const found = solve(prepared.value, question, solver, { timeLimit: 0, clock: () => 0 });
  if (found.kind !== 'solved') throw new Error(found.kind);
  const answer = answerOf(prepared.value, question, found.solved, SHIPPED_TRADE);
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

describe('the pictures of the vehicle', () => {
  const garage = demo();
  const answer = firstKit(garage);

  it('[M13] draw the kilograms of the plan itself', () => {
    const view = loadView(garage, 'loop', answer.kit.items, SHIPPED_TRADE.loadIndex);
    if (!view.ok) throw new Error(view.error.message);
    expect(view.value.load).toEqual(answer.load);
  });

  it('draw every piece of the plan, and of what stays home every copy', () => {
    const rail = sizeRail(garage, 'loop', answer.kit.items, SHIPPED_TRADE);
    if (!rail.ok) throw new Error(rail.error.message);
    const comes = new Set(answer.kit.items.map((i) => i.id));
    const drawn = rail.value.sizes.flatMap((s) => s.cells.flatMap((c) => c.pieces));
    expect(drawn.length).toBeGreaterThan(100);
    for (const { id, along } of drawn) expect(along && !comes.has(id.split('#')[0] ?? id)).toBe(false);
    const rings = drawn.filter(({ id, along }) => along && garage.belongings[id]?.is?.startsWith('CW-'));
    const carried = answer.kit.items.filter((i) => garage.belongings[i.id]?.is?.startsWith('CW-'));
    expect(new Set(rings.map((r) => r.id)).size).toBe(carried.length);
  });
});
