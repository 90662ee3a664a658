import type { CurvePoint } from '../../../worker/protocol.ts';

/** One step of the staircase: a kit that no lighter one here beats. */
export interface Step extends CurvePoint {
  /** The kit that is planned. */
  readonly kit: boolean;
}

/**
 * The points worth a step, light to heavy, with the planned kit among them. A heavier load raises the rates a little, so a
 * kit that is heavier and no better at the mass it really carries is left out; the planned kit never is.
 */
export function stepsOf(points: readonly CurvePoint[], kit: CurvePoint): readonly Step[] {
  const all = points
    .filter(({ grams }) => grams !== kit.grams)
    .map((point): Step => ({ ...point, kit: false }));
  const sorted = [...all, { ...kit, kit: true }].sort((a, b) => a.grams - b.grams || b.unaided - a.unaided);
  const steps: Step[] = [];
  for (const step of sorted) {
    const last = steps.at(-1);
    if (last === undefined || step.unaided > last.unaided) steps.push(step);
    else if (step.kit) {
      // The plan answers another aim than the best chance, or its curve is still of the record before.
      while ((steps.at(-1)?.unaided ?? -1) >= step.unaided) steps.pop();
      steps.push(step);
    }
  }
  return steps;
}

/** The step that stands nearest to a mass. */
export function nearestStep(steps: readonly Step[], grams: number): number {
  let best = 0;
  steps.forEach((step, i) => {
    if (Math.abs(step.grams - grams) < Math.abs((steps[best]?.grams ?? 0) - grams)) best = i;
  });
  return best;
}

/** What joins and what stays home when another step is taken instead, by belonging. */
export function exchange(
  from: Pick<Step, 'belongings'>,
  to: Pick<Step, 'belongings'>,
): { readonly joins: readonly string[]; readonly leaves: readonly string[] } {
  const before = new Set(from.belongings);
  const after = new Set(to.belongings);
  return {
    joins: to.belongings.filter((id) => !before.has(id)),
    leaves: from.belongings.filter((id) => !after.has(id)),
  };
}
