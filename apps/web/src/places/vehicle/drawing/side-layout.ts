import type { Shape } from './shapes.ts';

/** Something that acts at a distance along the vehicle. */
export interface Acting {
  readonly id: string;
  readonly xMm: number;
  readonly roof: boolean;
  readonly kg: number;
}

/** The sheet a side view is drawn on, px. */
export interface Paper {
  readonly width: number;
  readonly boxWidth: number;
  readonly boxHeight: number;
  readonly balloon: number;
  /** Room under the longest arrow. */
  readonly words: number;
  /** Longest arrow of an axle and of a berth. */
  readonly axleArrow: number;
  readonly berthArrow: number;
}

export const DESK: Paper = {
  width: 920,
  boxWidth: 38,
  boxHeight: 30,
  balloon: 13,
  words: 34,
  axleArrow: 150,
  berthArrow: 64,
};
export const PHONE: Paper = {
  width: 358,
  boxWidth: 22,
  boxHeight: 20,
  balloon: 12,
  words: 66,
  axleArrow: 92,
  berthArrow: 34,
};

export interface PlacedSpot {
  readonly id: string;
  readonly number: number;
  /** Where its mass acts, px. */
  readonly x: number;
  readonly y: number;
  /** Its balloon, px; beside its own place when there is no room above it. */
  readonly balloonX: number;
}

export interface SideLayout {
  readonly width: number;
  readonly height: number;
  readonly ground: number;
  readonly pxPerMm: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  readonly spots: readonly PlacedSpot[];
  readonly balloonY: number;
  /** px for a kilogram at an axle and in a berth. */
  readonly axleScale: number;
  readonly berthScale: number;
}

const MARGIN = 14;
const GAP = 6;

/**
 * Lays a side view out on its paper: one scale for lengths both ways, one for axle forces, a larger one for berths. Marks
 * that would cover each other stand in rows, one above the other; their distance along is always true.
 */
export function sideLayout(
  shape: Shape,
  spots: readonly Acting[],
  mostAxleKg: number,
  paper: Paper,
): SideLayout {
  const xs = [...shape.top.map(([x]) => x), ...spots.map((s) => s.xMm), shape.coupling ? -120 : 0];
  const least = Math.min(...xs);
  const most = Math.max(...xs);
  const pxPerMm = (paper.width - 2 * MARGIN - paper.boxWidth) / Math.max(1, most - least);
  const x = (mm: number) => MARGIN + paper.boxWidth / 2 + (mm - least) * pxPerMm;
  const balloonY = paper.balloon + 2;
  const onRoof = spots.some((s) => s.roof);
  const roofY = balloonY + paper.balloon + (onRoof ? paper.boxHeight + 2 * GAP : 0) + 20;
  const ground = roofY + shape.roof * pxPerMm;
  const y = (mm: number) => ground - mm * pxPerMm;
  return {
    width: paper.width,
    ground,
    height: ground + 4 + paper.axleArrow + paper.words,
    pxPerMm,
    x,
    y,
    balloonY,
    spots: placeSpots(spots, x, y, shape, paper, roofY),
    axleScale: paper.axleArrow / Math.max(1, mostAxleKg),
    berthScale: paper.berthArrow / Math.max(1, ...spots.map((s) => s.kg)),
  };
}

function placeSpots(
  spots: readonly Acting[],
  x: (mm: number) => number,
  y: (mm: number) => number,
  shape: Shape,
  paper: Paper,
  roofY: number,
): readonly PlacedSpot[] {
  const sorted = [...spots].sort((a, b) => a.xMm - b.xMm || (a.id < b.id ? -1 : 1));
  const rows: number[] = [];
  const floor = y(shape.sill + 60) - paper.boxHeight / 2;
  const placed = sorted.map((spot, n) => {
    const at = x(spot.xMm);
    if (spot.roof) return { id: spot.id, number: n + 1, x: at, y: roofY - GAP - paper.boxHeight / 2 };
    const free = rows.findIndex((taken) => at - paper.boxWidth / 2 >= taken + GAP);
    const row = free === -1 ? rows.length : free;
    rows[row] = at + paper.boxWidth / 2;
    return { id: spot.id, number: n + 1, x: at, y: floor - row * (paper.boxHeight + GAP) };
  });
  const balloons = spread(
    placed.map((p) => p.x),
    2 * paper.balloon + 4,
    paper.width - paper.balloon - 2,
  );
  return placed.map((p, n) => ({ ...p, balloonX: balloons[n] ?? p.x }));
}

/** Moves rising positions apart to a least distance, none beyond the end, each as near its own as that allows. */
export function spread(positions: readonly number[], apart: number, end: number): readonly number[] {
  const out = [...positions];
  for (let n = 1; n < out.length; n++) out[n] = Math.max(out[n] ?? 0, (out[n - 1] ?? 0) + apart);
  const last = out.length - 1;
  if (last >= 0) out[last] = Math.min(out[last] ?? 0, end);
  for (let n = last - 1; n >= 0; n--) out[n] = Math.min(out[n] ?? 0, (out[n + 1] ?? 0) - apart);
  return out;
}

/** A round number of kilograms whose arrow is about a third of the longest, for the key. */
export function keyKilograms(pxPerKg: number, longest: number): number {
  const wanted = longest / 3 / pxPerKg;
  const power = 10 ** Math.floor(Math.log10(Math.max(1, wanted)));
  return [5, 2, 1].map((n) => n * power).find((n) => n <= wanted) ?? power;
}
