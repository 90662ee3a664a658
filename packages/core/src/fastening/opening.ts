import type { Metres } from '../quantity/units.ts';
import { inches, metres, millimetres } from '../quantity/units.ts';
import type { Flats } from './size.ts';

/** The narrowest and the widest that a tool of a nominal size may be. */
export interface Opening {
  readonly least: Metres;
  readonly greatest: Metres;
}

/** A list of openings (M2). Whoever owns the standards can pass the real one; the default is remembered. */
export interface OpeningList {
  /** Rising nominal sizes. */
  readonly metric: readonly (Opening & { readonly nominal: Metres })[];
  /** Least = factor x W + plus; greatest = least + spreadFactor x W + spreadPlus. */
  readonly inch: {
    readonly factor: number;
    readonly plus: Metres;
    readonly spreadFactor: number;
    readonly spreadPlus: Metres;
  };
  /** Recalled lists decide nothing silently: see `Fit.rests`. */
  readonly status: 'read' | 'recalled';
}

function listed(nominal: number, least: number, greatest: number): OpeningList['metric'][number] {
  return { nominal: millimetres(nominal), least: millimetres(least), greatest: millimetres(greatest) };
}

/**
 * ISO 691 openings (recalled, not re-read) and the formula of the ASME B18.2.2 appendix (recalled; a general
 * encyclopaedia's article on widths across flats gives 1.508 to 1.520 in for 1-1/2 in, which it reproduces).
 */
export const RECALLED_OPENINGS: OpeningList = {
  metric: [
    listed(8, 8.03, 8.15),
    listed(10, 10.04, 10.19),
    listed(13, 13.04, 13.24),
    listed(16, 16.05, 16.27),
    listed(17, 17.05, 17.3),
    listed(19, 19.06, 19.36),
    listed(22, 22.06, 22.36),
    listed(24, 24.06, 24.36),
    listed(27, 27.08, 27.48),
    listed(30, 30.08, 30.48),
  ],
  inch: { factor: 1.005, plus: inches(0.001), spreadFactor: 0.005, spreadPlus: inches(0.004) },
  status: 'recalled',
};

/** A hair's breadth, m: nominal widths in mm and in inches are compared within it. */
const SAME = 1e-9;

/**
 * Least and greatest opening of a tool by its nominal width, m. Between two listed metric sizes the smaller of their
 * deviations holds, outside the list the nearest size's: both err towards a tool that does not go on.
 */
export function openingOf(tool: Flats, list: OpeningList = RECALLED_OPENINGS): Opening {
  const { width } = tool;
  if (tool.system === 'inch') {
    const { factor, plus, spreadFactor, spreadPlus } = list.inch;
    const least = factor * width + plus;
    return { least: metres(least), greatest: metres(least + spreadFactor * width + spreadPlus) };
  }
  const below = list.metric.filter((row) => row.nominal <= width + SAME).at(-1);
  const above = list.metric.find((row) => row.nominal >= width - SAME);
  const near = [below, above].filter((row) => row !== undefined);
  if (near.length === 0) return { least: width, greatest: width };
  const over = (limit: 'least' | 'greatest') => Math.min(...near.map((row) => row[limit] - row.nominal));
  return { least: metres(width + over('least')), greatest: metres(width + over('greatest')) };
}
