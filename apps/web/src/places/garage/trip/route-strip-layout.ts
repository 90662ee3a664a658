import type { Leg } from '@waymend/garage/record/schema';

/** A leg on the strip; pixels from the left edge and from the foot of the strip. */
export interface StripLeg {
  readonly id: string;
  readonly leg: Leg;
  readonly x: number;
  readonly width: number;
  /** Where its balloon stands: over the middle, moved aside where balloons would overlap. */
  readonly balloonX: number;
  /** Height of the step that says how far help is. */
  readonly help: number;
}

export interface Strip {
  readonly legs: readonly StripLeg[];
  readonly totalKm: number;
  /** Marks along the route, kilometres. */
  readonly ticks: readonly { readonly km: number; readonly x: number }[];
  /** Greatest distance to help the drawing has room for, km, and the heights of the trust limits within it. */
  readonly mostHelpKm: number;
  readonly limits: readonly { readonly km: number; readonly y: number }[];
}

const BALLOON = 30;
/** How far a temporary repair may be trusted (M4): beyond, it counts for nothing there. */
const TRUSTED_KM = [50, 300] as const;

/**
 * The route to scale: length by km, and above it how far help is, on a scale of its own. Marks are even in the owner's unit,
 * `kmPerMark` kilometres long.
 */
export function routeStrip(
  legs: readonly (readonly [string, Leg])[],
  width: number,
  helpHeight: number,
  kmPerMark = 1,
): Strip {
  const totalKm = legs.reduce((sum, [, { km }]) => sum + km, 0);
  const perKm = totalKm > 0 ? width / totalKm : 0;
  const farthest = Math.max(...legs.map(([, { helpKm }]) => helpKm), 0);
  const mostHelpKm = roundUp(Math.max(farthest, 60));
  const perHelp = helpHeight / mostHelpKm;
  let at = 0;
  const placed = legs.map(([id, leg]) => {
    const x = at;
    at += leg.km * perKm;
    return { id, leg, x, width: leg.km * perKm, help: leg.helpKm * perHelp };
  });
  const balloons = spread(
    placed.map(({ x, width: w }) => x + w / 2),
    width,
  );
  return {
    legs: placed.map((one, n) => ({ ...one, balloonX: balloons[n] ?? one.x })),
    totalKm,
    ticks: ticksOf(totalKm / kmPerMark).map((mark) => ({
      km: mark * kmPerMark,
      x: mark * kmPerMark * perKm,
    })),
    mostHelpKm,
    limits: TRUSTED_KM.filter((km) => km <= mostHelpKm).map((km) => ({ km, y: km * perHelp })),
  };
}

/** Moves marks apart until none covers another, inside 0..width; keeps their order. */
function spread(wished: readonly number[], width: number): readonly number[] {
  const out = [...wished];
  const half = BALLOON / 2;
  for (let n = 0; n < out.length; n++) {
    const least = n === 0 ? half : (out[n - 1] ?? 0) + BALLOON;
    out[n] = Math.max(out[n] ?? 0, least);
  }
  for (let n = out.length - 1; n >= 0; n--) {
    const most = n === out.length - 1 ? width - half : (out[n + 1] ?? width) - BALLOON;
    out[n] = Math.min(out[n] ?? 0, most);
  }
  return out;
}

/** Four to eight even marks. */
function ticksOf(total: number): readonly number[] {
  if (!(total > 0)) return [];
  const rough = total / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * power).find((n) => n >= rough) ?? rough;
  return Array.from({ length: Math.floor(total / step + 1e-9) + 1 }, (_, n) => n * step);
}

function roundUp(km: number): number {
  const step = km > 400 ? 100 : km > 100 ? 50 : 20;
  return Math.ceil((km * 1.08) / step) * step;
}
