/** A height for each chance of needing help; upward is better, and nothing is stretched. */
export interface ChanceScale {
  readonly y: (help: number) => number;
  readonly ticks: readonly { readonly help: number; readonly y: number }[];
}

/** One trip in so many, finest first; above one half in tenths. */
const ONE_IN = [10000, 5000, 2000, 1000, 500, 200, 100, 50, 30, 20, 15, 10, 8, 6, 5, 4, 3] as const;
const SHARES = [...ONE_IN.map((n) => 1 / n), 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
/** Pixels between two words of the axis. */
const APART = 22;

/** @param worst Greatest chance of needing help that has to be shown, 0..1. */
export function chanceScale(worst: number, top: number, bottom: number): ChanceScale {
  const most = Math.min(1, Math.max(worst, 1e-5) * 1.04);
  const y = (help: number): number => top + (Math.min(help, most) / most) * (bottom - top);
  const ticks: { help: number; y: number }[] = [];
  let last = bottom + APART * 0.4;
  for (const help of [...SHARES].reverse()) {
    if (help > most) continue;
    const at = y(help);
    if (last - at < APART || at - top < APART) continue;
    ticks.push({ help, y: at });
    last = at;
  }
  return { y, ticks };
}
