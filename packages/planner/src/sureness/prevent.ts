import type { KitState } from '@waymend/core/choosing/kit-state';
import type { Prevention } from '../answer/sure-answer.ts';
import { stillLost } from '../explain/at-real-mass.ts';
import type { Reading } from '../explain/reading.ts';
import type { Trade } from '../trade.ts';

/** Less than 1 in 10,000 trips is not worth a line. */
const LEAST = 1e-4;

/** What renewing or checking at home before leaving adds to the chance of this kit, most first: no grams at all. */
export function preventions(reading: Reading, state: KitState, trade: Trade): readonly Prevention[] {
  const open = new Map<string, number>();
  let loss = 0;
  for (const { trouble, share } of stillLost(reading, state)) {
    open.set(trouble.failure, (open.get(trouble.failure) ?? 0) + trouble.expected * share);
    loss += trouble.expected * share;
  }
  const now = Math.exp(-loss);
  return trade.failures
    .flatMap(({ id, title, renew }) => {
      if (renew === undefined) return [];
      const gain = now * Math.expm1((open.get(id) ?? 0) * (1 - renew.rateFactor));
      return gain < LEAST
        ? []
        : [{ failure: id, title, what: renew.what, cents: trade.bandCents(renew.price), gain }];
    })
    .sort((a, b) => b.gain - a.gain || (a.failure < b.failure ? -1 : 1));
}
