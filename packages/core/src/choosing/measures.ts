import type { ChoiceModel } from './model.ts';
import type { Aim } from './problem.ts';
import type { Reduced } from './reduce/reduce.ts';
import type { Found } from './workbench.ts';

/** What one solve minimises. `tie` is grams first and pieces second in one whole number. */
export type Measure = 'loss' | 'grams' | 'pieces' | 'tie' | 'cents';

/**
 * What each aim minimises, first things first (M6). Grams and pieces become one whole number, grams x (greatest number of
 * pieces + 1) + pieces, where that stays exact in a solver's tolerances: an exact ranking, not a weighting.
 */
export function measuresOf(aim: Aim, model: ChoiceModel): readonly Measure[] {
  const priced = model.cost.cents.some((cost) => cost !== 0) ? (['cents'] as const) : [];
  const ties = model.tieFactor > 0 ? (['tie'] as const) : (['grams', 'pieces'] as const);
  switch (aim.kind) {
    case 'best-chance':
      return ['loss', ...ties, ...priced];
    case 'least-mass':
      return ['grams', 'loss', 'pieces', ...priced];
    case 'must-do':
      return [...ties, ...priced];
  }
}

/** Value of a plan in the units of the measure's own cost vector: what is constant taken off. */
export function valueOf(measure: Measure, found: Found, model: ChoiceModel, { settled }: Reduced): number {
  switch (measure) {
    case 'loss':
      return found.loss - model.constantLoss;
    case 'tie':
      return (found.grams - settled.grams) * model.tieFactor + (found.pieces - settled.pieces);
    default:
      return found[measure] - settled[measure];
  }
}

/**
 * Values by `row` of a plan that may not be one of this model's. Whoever comes before it comes before these values, and the
 * other way round. `tie` ranks grams before pieces only for numbers of pieces below its factor, so others are moved to the
 * nearest end; what is equal then is no better, whatever the later measures say.
 */
export function valuesToBeat(
  row: readonly Measure[],
  found: Found,
  model: ChoiceModel,
  reduced: Reduced,
): number[] {
  let moved = false;
  return row.map((measure) => {
    if (moved) return -Infinity;
    if (measure !== 'tie') return valueOf(measure, found, model, reduced);
    const pieces = found.pieces - reduced.settled.pieces;
    moved = pieces < 0 || pieces >= model.tieFactor;
    const within = Math.min(Math.max(pieces, 0), model.tieFactor);
    return (found.grams - reduced.settled.grams) * model.tieFactor + within;
  });
}

/** Back from a cost vector's units to loss or grams; for bounds that people read. */
export function constantOf(measure: Measure, model: ChoiceModel, { settled }: Reduced): number {
  if (measure === 'loss') return model.constantLoss;
  return measure === 'tie' ? 0 : settled[measure];
}
