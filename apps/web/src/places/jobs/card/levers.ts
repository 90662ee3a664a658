import type { JobCard, Pull } from '@waymend/planner/answer/card-answer';

/** Standard gravity, m/s2 (the 3rd General Conference on Weights and Measures, 1901): a pull as a mass on the bar's end. */
const GRAVITY = 9.80665;

export interface LeverRow {
  readonly what: string;
  /** The tool that is pulled. */
  readonly tool: string;
  readonly pull: Pull;
  /** To do it up again: torque and the pull on the same lever; null where nothing is said. */
  readonly tighten: { readonly nm: number; readonly kg: number } | null;
}

/** The nuts of a card that take more than fingers, the hardest first. */
export function leverRows({ needs, torques }: Pick<JobCard, 'needs' | 'torques'>): readonly LeverRow[] {
  return needs
    .flatMap(({ what, best }): LeverRow[] => {
      if (best?.pull == null) return [];
      const { pull } = best;
      const again = torques.find(({ place }) => what.startsWith(place));
      const kg = again === undefined ? 0 : Math.round(again.nm / (pull.leverMm / 1000) / GRAVITY);
      return [
        {
          what,
          tool: best.pieces.map(({ name }) => name).join(' + '),
          pull,
          tighten: again === undefined ? null : { nm: again.nm, kg },
        },
      ];
    })
    .sort((a, b) => b.pull.kg - a.pull.kg);
}

/** Lengths of the figure in its own px: the lever to scale, and the pulls by one scale beside each other. */
export interface LeverSizes {
  readonly pxPerMm: number;
  readonly barPx: number;
  readonly undoPx: number;
  readonly tightenPx: number;
}

const MOST_BAR = 262;
/** Levers up to this long are drawn to the same scale, so that a short bar looks short, mm. */
const USUAL_MM = 700;
const LONGEST_ARROW = 64;
const SHORTEST_ARROW = 14;

export function leverSizes({ pull, tighten }: Pick<LeverRow, 'pull' | 'tighten'>): LeverSizes {
  const pxPerMm = MOST_BAR / Math.max(USUAL_MM, pull.leverMm);
  const most = Math.max(pull.kg, tighten?.kg ?? 0, 1);
  const arrow = (kg: number) => Math.max(SHORTEST_ARROW, (kg / most) * LONGEST_ARROW);
  return {
    pxPerMm,
    barPx: pull.leverMm * pxPerMm,
    undoPx: arrow(pull.kg),
    tightenPx: tighten === null ? 0 : arrow(tighten.kg),
  };
}
