import { addJobs, meetMust, prune } from './greedy.ts';
import type { ChoiceModel } from './model.ts';
import type { Caps } from './hunt.ts';
import type { Measure } from './measures.ts';
import type { SolverAnswer } from './solver-port.ts';
import type { Found, Workbench } from './workbench.ts';

type Relaxed = Extract<SolverAnswer, { kind: 'optimal' }>;

/**
 * Plans made from a relaxed solution: pieces the relaxation carries (almost) whole are taken, `must` is met, whole jobs
 * are added at the relaxation's own prices for what is scarce, and what turns out useless is left. Two roundings,
 * because neither is always better; only the second unless `thorough`.
 */
export function roundToPlan(
  bench: Workbench,
  model: ChoiceModel,
  measure: Measure,
  relaxed: Relaxed,
  caps: Caps,
  thorough = true,
): Found[] {
  const price = prices(bench, model, measure, relaxed.rowDual);
  const plans: Found[] = [];
  for (const threshold of thorough ? [0.95, 0.5] : [0.5]) {
    const found = assemble(bench, model, measure, relaxed.x, price, threshold, caps);
    if (found) plans.push(found);
  }
  return plans;
}

/** A plan without any relaxation, at the price of mass alone: what there is to show when the first one was not waited for. */
export function greedyPlan(bench: Workbench, measure: Measure, caps: Caps): Found | null {
  const price = Float64Array.from(bench.reduced.problem.pieces, ({ grams }) => grams + 1);
  bench.clear();
  return complete(bench, measure, price, price, caps);
}

/** What a piece costs at the relaxation's row prices; grams where mass is what is saved or nothing is scarce. */
function prices(
  bench: Workbench,
  model: ChoiceModel,
  measure: Measure,
  rowDual: Float64Array | undefined,
): Float64Array {
  const { pieceCount, rows, weight } = bench;
  const { pieces } = bench.reduced.problem;
  const price = Float64Array.from(pieces, ({ grams }) =>
    measure === 'loss' ? 1e-6 * (grams + 1) : grams + 1,
  );
  if (measure !== 'loss' || !rowDual) return price;
  const dualOf = [...model.limitRows, model.row.grams].map((row) => Math.max(0, -(rowDual[row] ?? 0)));
  for (let row = 0; row < rows; row++) {
    const dual = dualOf[row] ?? 0;
    if (dual === 0) continue;
    for (let p = 0; p < pieceCount; p++) {
      price[p] = Math.max(0, (price[p] ?? 0) + dual * (weight[row * pieceCount + p] ?? 0));
    }
  }
  return price;
}

function assemble(
  bench: Workbench,
  model: ChoiceModel,
  measure: Measure,
  x: Float64Array,
  price: Float64Array,
  threshold: number,
  caps: Caps,
): Found | null {
  const share = (p: number): number => x[model.pieceColumn[p] ?? 0] ?? 0;
  bench.clear();
  const wanted = bench.reduced.problem.pieces.map((_, p) => p).filter((p) => share(p) >= threshold);
  wanted.sort((a, b) => share(b) - share(a));
  for (const p of wanted) if (bench.wouldFit(p)) bench.carry(p);
  // Pieces the relaxation half wants are cheaper than those it does not want at all.
  const leaning = price.map((value, p) => value * (1.02 - share(p)));
  return complete(bench, measure, leaning, price, caps);
}

/** From the pieces on the bench to a plan that fits, is complete and carries nothing useless. */
function complete(
  bench: Workbench,
  measure: Measure,
  leaning: Float64Array,
  price: Float64Array,
  caps: Caps,
): Found | null {
  const goal = caps.loss ?? Infinity;
  meetMust(bench, leaning);
  if (measure === 'loss') {
    addJobs(bench, leaning);
    prune(bench, bench.state.loss);
    addJobs(bench, price);
    prune(bench, bench.state.loss);
  } else {
    addJobs(bench, leaning, goal);
    prune(bench, goal);
  }
  return bench.found();
}
