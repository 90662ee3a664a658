import type { Workbench } from './workbench.ts';

/** Candidates whose true worth is measured in each step; the rest are ranked by estimate only. */
const MEASURED = 3;

/**
 * Completes open `must` needs, each by its cheapest way at the given prices. Limits are not looked at: without these needs
 * nothing is feasible.
 */
export function meetMust(bench: Workbench, price: Float64Array): void {
  const { must } = bench.reduced.problem;
  for (const n of must) {
    if (bench.state.mustOpen === 0) return;
    if (bench.state.needMet(n)) continue;
    bench.priceNeeds(price);
    const missing = new Set<number>();
    bench.collect(n, price, missing);
    for (const p of missing) bench.carry(p);
  }
}

/**
 * Adds whole jobs, never single pieces (a lone socket is worth nothing without its handle): in each step the option whose
 * missing pieces gain most per price, as long as it fits and the loss is above `untilLoss`.
 */
export function addJobs(bench: Workbench, price: Float64Array, untilLoss = -Infinity): void {
  const { compiled, state, optionPrice } = bench;
  const { optionEvent, optionGain } = compiled;
  const blocked = new Uint8Array(optionGain.length);
  const bestOption = new Int32Array(MEASURED);
  const bestRatio = new Float64Array(MEASURED);
  bench.priceNeeds(price);
  while (state.loss > untilLoss) {
    let candidates = 0;
    for (let o = 0; o < optionGain.length; o++) {
      if (blocked[o] === 1) continue;
      const gain = (optionGain[o] ?? 0) - state.gainOf(optionEvent[o] ?? 0);
      if (gain <= 0) continue;
      const cost = 1e-9 + (optionPrice[o] ?? 0);
      if (cost === Infinity) continue;
      let ratio = gain / cost;
      let option = o;
      // Insertion into a short list of the best.
      for (let k = 0; k < MEASURED; k++) {
        if (k < candidates && ratio <= (bestRatio[k] ?? 0)) continue;
        const [heldRatio, heldOption] = [bestRatio[k] ?? 0, bestOption[k] ?? 0];
        bestRatio[k] = ratio;
        bestOption[k] = option;
        if (k >= candidates) {
          candidates++;
          break;
        }
        ratio = heldRatio;
        option = heldOption;
      }
    }
    if (candidates === 0) return;
    const taken = takeBest(bench, price, bestOption.subarray(0, candidates), blocked);
    if (taken) bench.repriceNeeds(price, taken);
  }
}

/**
 * Measures the candidates by really adding them; keeps the best that fits and blocks those that do not. Returns the pieces
 * that came along.
 */
function takeBest(
  bench: Workbench,
  price: Float64Array,
  candidates: Int32Array,
  blocked: Uint8Array,
): ReadonlySet<number> | null {
  const { state, optionNeedStart, optionNeed } = bench;
  let best: Set<number> | null = null;
  let bestRatio = 0;
  for (const o of candidates) {
    const missing = new Set<number>();
    for (let i = optionNeedStart[o] ?? 0, end = optionNeedStart[o + 1] ?? 0; i < end; i++) {
      bench.collect(optionNeed[i] ?? 0, price, missing);
    }
    const before = state.loss;
    let cost = 1e-9;
    for (const p of missing) {
      bench.carry(p);
      cost += price[p] ?? 0;
    }
    const ratio = bench.fits() ? (before - state.loss) / cost : -1;
    for (const p of missing) bench.leave(p);
    if (ratio <= 0) blocked[o] = 1;
    else if (ratio > bestRatio) {
      bestRatio = ratio;
      best = missing;
    }
  }
  for (const p of best ?? []) bench.carry(p);
  return best;
}

/** Leaves pieces, heaviest first, as long as `must` and all limits hold and the loss stays at or below `keepLoss`. */
export function prune(bench: Workbench, keepLoss: number): void {
  const { state, reduced } = bench;
  const { pieces } = reduced.problem;
  const order = pieces.map((_, p) => p).filter((p) => state.carried[p] === 1 && pieces[p]?.pin !== 'always');
  order.sort((a, b) => (pieces[b]?.grams ?? 0) - (pieces[a]?.grams ?? 0));
  for (const p of order) {
    const must = state.mustOpen;
    const fitted = bench.fits();
    bench.leave(p);
    if (state.loss > keepLoss || state.mustOpen > must || (fitted && !bench.fits())) bench.carry(p);
  }
}
