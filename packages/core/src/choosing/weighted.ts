import type { Control, Ground } from './hunt.ts';
import type { Found } from './workbench.ts';

/** A mass at which the relaxation is (nearly) whole, and the plan there when it is. */
export interface SupportedMass {
  readonly grams: number;
  readonly found: Found | null;
}

/** Grams. */
const HAIR = 1e-3;

/**
 * Where a gram is worth `price` score units: the relaxation of loss + price x grams. With limits slack its points are nearly
 * always whole, because only the cap on mass makes the tight model fractional. Null when it shows that no plan lies below
 * the line through the two given plans, so that between them there is no supported point.
 */
export function supportedMass(
  { model, bench, session, reduced }: Ground,
  price: number,
  heavy: Found,
  light: Found,
  { until, clock, shouldStop }: Control,
): SupportedMass | null {
  const { cost, linear } = model;
  bench.capGrams(Infinity);
  session.setColumnBounds(linear.lower, linear.upper);
  for (const row of Object.values(model.row)) if (row >= 0) session.setRowBounds(row, -Infinity, Infinity);
  // Of equal copies the first is a hair cheaper, or the relaxation would carry each in part.
  const priced = cost.loss.map((loss, j) => loss + price * (cost.grams[j] ?? 0));
  model.pieceColumn.forEach((j, p) => {
    priced[j] = (priced[j] ?? 0) + (price * HAIR * p) / model.pieceColumn.length;
  });
  session.setCost(priced);
  const relaxed = session.solve({
    ...(until !== undefined && clock ? { timeLimit: Math.max(0.001, until - clock()) } : {}),
    ...(shouldStop ? { shouldStop } : {}),
  });
  if (relaxed.kind !== 'optimal') return null;
  const constant = model.constantLoss + price * reduced.settled.grams;
  const line = Math.min(heavy.loss + price * heavy.grams, light.loss + price * light.grams);
  if (relaxed.objective + constant >= line - 0.5) return null;

  const { x } = relaxed;
  const whole = model.pieceColumn.every((j) => (x[j] ?? 0) < 1e-6 || (x[j] ?? 0) > 1 - 1e-6);
  const found = whole ? bench.measure(model.choiceOf(x)) : null;
  if (found) return { grams: found.grams, found };
  const grams = cost.grams.reduce((sum, of, j) => sum + of * (x[j] ?? 0), reduced.settled.grams);
  return { grams: Math.round(grams), found: null };
}
