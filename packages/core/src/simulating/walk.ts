import type { SimulatedKit } from './trip-law.ts';

/** One drawn trip; only the first entries, as many as it has failures, belong to it. */
export interface DrawnTrip {
  readonly kinds: Int32Array;
  readonly fate: Float64Array;
  readonly luck: Float64Array;
}

/** Told of each failure that happens: its trouble, the answer tried (-1 when none lasts any more), and whether it held. */
export type OnFailure = (trouble: number, answer: number, held: boolean) => void;

/**
 * Walks trips with one kit. A trip is drawn before anybody looks at the kit: `kinds` are its troubles in time order, `fate`
 * says for each whether it happens with this kit's mass and `luck` whether the repair holds (one uniform number each), so
 * that two kits meet the same trip with the same luck. Answers with the position of the failure that strands the vehicle
 * among the trip's failures, or -1 when it gets home.
 */
export function walker(
  kit: SimulatedKit,
): (trip: DrawnTrip, failures: number, onFailure: OnFailure) => number {
  const left = Float64Array.from(kit.stock);
  const touched: number[] = [];
  const lasts = (uses: readonly { readonly stock: number; readonly units: number }[]): boolean =>
    uses.every(({ stock, units }) => (left[stock] ?? 0) >= units);
  return ({ kinds, fate, luck }, failures, onFailure) => {
    for (const stock of touched) left[stock] = kit.stock[stock] ?? 0;
    touched.length = 0;
    for (let at = 0; at < failures; at++) {
      const trouble = kinds[at] ?? 0;
      if (!((fate[at] ?? 1) < (kit.share[trouble] ?? 0))) continue;
      const answers = kit.answers[trouble] ?? [];
      const chosen = answers.findIndex(({ uses }) => lasts(uses));
      const answer = answers[chosen];
      const held = answer !== undefined && (luck[at] ?? 1) < answer.chance;
      onFailure(trouble, chosen, held);
      if (!held) return at;
      for (const { stock, units } of answer.uses) {
        left[stock] = (left[stock] ?? 0) - units;
        touched.push(stock);
      }
    }
    return -1;
  };
}
