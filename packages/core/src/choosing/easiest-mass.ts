import { wholeAbove } from './bound.ts';
import { Hunt } from './hunt.ts';
import type { Control, Ground } from './hunt.ts';
import { roundToPlan } from './rounding.ts';
import type { Found } from './workbench.ts';

/** What a proof takes however small the gap, in the measure of gaps. */
const LEAST_STEPS = 3;

/** Caps looked at between two points. */
const SAMPLES = 12;

/**
 * A plan between two masses that will be easy to prove. A cap on mass leaves a gap that depends on where it lies: almost none
 * just above a supported plan, a wide one far from any. So a few caps are relaxed and rounded (each goes on from the last
 * basis), and the plan nearest its own bound is taken; the point drawn is then a true one all the same, only better
 * chosen. Null when no rounding lands strictly between.
 */
export function easiestMass(
  ground: Ground,
  above: number,
  heavy: Found,
  light: Found,
  control: Control,
): Found | null {
  const { model, session, bench } = ground;
  let best: Found | null = null;
  let least = Infinity;
  for (let k = 1; k <= SAMPLES; k++) {
    const cap = heavy.grams - 1 - Math.floor(((heavy.grams - 1 - above) * (k - 0.5)) / SAMPLES);
    const hunt = new Hunt(ground, ['loss'], { grams: cap }, control);
    if (hunt.stopReason()) return best;
    session.setCost(model.cost.loss);
    const relaxed = session.solve(hunt.limits());
    if (relaxed.kind !== 'optimal') continue;
    const bound = wholeAbove(hunt.certify('loss', relaxed.rowDual).bound) + model.constantLoss;
    for (const found of roundToPlan(bench, model, 'loss', relaxed, { grams: cap }, false)) {
      if (found.grams <= light.grams || found.grams >= heavy.grams || found.loss >= light.loss) continue;
      // Proving takes about as many steps as the gap is wide, and a few at least; a point near an end says little.
      const across = (heavy.grams - found.grams) / (heavy.grams - light.grams);
      const up = (found.loss - heavy.loss) / (light.loss - heavy.loss);
      const middle = (across + up) / 2;
      const effort = (found.loss - bound + LEAST_STEPS) / Math.max(1e-6, middle * (1 - middle));
      if (effort >= least) continue;
      least = effort;
      best = found;
    }
  }
  return best;
}
