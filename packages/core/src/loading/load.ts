import type { Result } from '../result.ts';
import { ok, refuse } from '../result.ts';
import { axleShare } from './axle-share.ts';
import type { LoadInput } from './load-input.ts';
import type { Spot } from './place-of.ts';
import { spotOfFixed, spotOfKit } from './place-of.ts';
import { axleTyresKg } from './tyres.ts';

/** A load against its limit, kg. `marginKg` is negative when over; both are null where there is no limit. */
export interface LoadLine {
  readonly kg: number;
  readonly limitKg: number | null;
  readonly marginKg: number | null;
}

/** Static loads of the vehicle as it sets out (M13). */
export interface LoadResult {
  readonly front: LoadLine;
  readonly rear: LoadLine;
  readonly gross: LoadLine;
  readonly roof: LoadLine;
  /** The axle loads once more, against the two tyres of the axle; null when the tyre's load index is not recorded. */
  readonly tyresFront: LoadLine | null;
  readonly tyresRear: LoadLine | null;
  readonly berths: readonly (LoadLine & { readonly id: string; readonly name: string })[];
  /** Names of what has no recorded place, so that its place was assumed. */
  readonly assumed: readonly string[];
}

interface Placed {
  readonly name: string;
  readonly kg: number;
  readonly spot: Spot;
}

/**
 * Axle, gross, roof, berth and tyre loads by moments about the front axle (M13). Refuses a wheelbase that is not
 * positive, a negative mass, a berth that is not there, and a load index outside the table.
 */
export function loadOf(input: LoadInput): Result<LoadResult> {
  const placed = placeAll(input);
  if (!placed.ok) return placed;
  const tyresKg = input.tyre === undefined ? ok(null) : axleTyresKg(input.tyre, input.loadIndexTable);
  if (!tyresKg.ok) return tyresKg;

  let front: number = input.emptyFront;
  let rear: number = input.emptyRear;
  let added = 0;
  let roof = 0;
  const byBerth = new Map<string, number>();
  for (const { kg, spot } of placed.value) {
    const share = axleShare(spot.x, input.wheelbase);
    front += kg * share.front;
    rear += kg * share.rear;
    added += kg;
    if (spot.berth === null) continue;
    if (spot.berth.roof) roof += kg;
    byBerth.set(spot.berth.id, (byBerth.get(spot.berth.id) ?? 0) + kg);
  }
  return ok({
    front: line(front, input.ratedFront),
    rear: line(rear, input.ratedRear),
    gross: line(input.emptyFront + input.emptyRear + added, input.ratedGross),
    roof: line(roof, input.ratedRoof),
    tyresFront: tyresKg.value === null ? null : line(front, tyresKg.value),
    tyresRear: tyresKg.value === null ? null : line(rear, tyresKg.value),
    berths: input.berths.map((b) => ({ id: b.id, name: b.name, ...line(byBerth.get(b.id) ?? 0, b.limit) })),
    assumed: placed.value.flatMap((p) => (p.spot.assumed && p.kg > 0 ? [p.name] : [])),
  });
}

/** Axle and gross masses over their ratings, for the load factor of the rates (M1). */
export interface LoadRatios {
  readonly front: number;
  readonly rear: number;
  readonly gross: number;
}

export function loadRatios(load: LoadResult): LoadRatios {
  return { front: ratio(load.front), rear: ratio(load.rear), gross: ratio(load.gross) };
}

function ratio(l: LoadLine): number {
  return l.limitKg === null || l.limitKg <= 0 ? 1 : l.kg / l.limitKg;
}

function line(kg: number, limit: number | undefined): LoadLine {
  return limit === undefined
    ? { kg, limitKg: null, marginKg: null }
    : { kg, limitKg: limit, marginKg: limit - kg };
}

function placeAll(input: LoadInput): Result<readonly Placed[]> {
  if (!(input.wheelbase > 0)) {
    return refuse('wheelbase-not-positive', 'The wheelbase must be more than nothing; measure hub to hub', {
      path: 'wheelbase',
    });
  }
  const placed: Placed[] = [];
  for (const load of input.fixed) {
    if (load.mass < 0) return negative(load.name, `loads.${load.id}`);
    const spot = spotOfFixed(input, load);
    if (!spot.ok) return spot;
    placed.push({ name: load.name, kg: load.mass, spot: spot.value });
  }
  for (const piece of input.kit) {
    if (piece.grams < 0) return negative(piece.id, `belongings.${piece.id}`);
    const spot = spotOfKit(input, piece.berth, `belongings.${piece.id}.berth`);
    if (!spot.ok) return spot;
    placed.push({ name: piece.id, kg: piece.grams / 1000, spot: spot.value });
  }
  return ok(placed);
}

function negative(name: string, path: string): Result<never> {
  return refuse('mass-negative', `"${name}" weighs less than nothing; correct its mass`, { path });
}
