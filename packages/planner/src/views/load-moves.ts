import { axleShare } from '@waymend/core/loading/axle-share';
import { millimetres } from '@waymend/core/quantity/units';
import type { LoadSpot, LoadView } from './load-view.ts';

/** What would change its place. `kit`: everything that rides where the trip's kit rides. `ten`: any 10 kg, to try out. */
export type Mover =
  | { readonly kind: 'load' | 'belonging'; readonly id: string }
  | { readonly kind: 'kit' }
  | { readonly kind: 'ten' };

/** One thing going from one berth to another, with what that does to every limit (M13). */
export interface LoadMove {
  readonly mover: Mover;
  readonly name: string;
  readonly kg: number;
  readonly from: string;
  readonly to: string;
  readonly toName: string;
  /** Towards the front axle; negative is backwards. */
  readonly forwardMm: number;
  /** Kilograms more on each axle; negative is relief. */
  readonly frontKg: number;
  readonly rearKg: number;
  /** Relief of the limit that moving can help (`LoadView.helped`); null without one. */
  readonly reliefKg: number | null;
  /** The limit that would then be passed, or passed by more. */
  readonly blocked: { readonly what: 'front' | 'rear' | 'roof' | 'berth'; readonly overKg: number } | null;
}

/** Lighter single things are not worth a line. */
const LEAST_KG = 1;
const TEN_KG = 10;

/** Every move of one thing, the trip's kit or any 10 kg from where it rides to each other berth, best relief first. */
export function loadMoves(view: LoadView): readonly LoadMove[] {
  const moves: LoadMove[] = [];
  for (const from of view.spots)
    for (const what of moversIn(from))
      for (const to of view.spots)
        if (to.berth && to.id !== from.id) moves.push(move(view, from, to, what.mover, what.name, what.kg));
  return moves.sort(
    (a, b) =>
      Number(a.blocked !== null) - Number(b.blocked !== null) ||
      (b.reliefKg ?? 0) - (a.reliefKg ?? 0) ||
      b.kg - a.kg ||
      (a.name + a.to < b.name + b.to ? -1 : 1),
  );
}

interface Moving {
  readonly mover: Mover;
  readonly name: string;
  readonly kg: number;
}

function moversIn(spot: LoadSpot): readonly Moving[] {
  const movers: Moving[] = spot.aboard.flatMap(({ kind, id, name, kg, movable }): Moving[] =>
    movable && kg >= LEAST_KG
      ? [{ mover: { kind: kind === 'kit' ? 'belonging' : 'load', id }, name, kg }]
      : [],
  );
  const kit = spot.aboard.filter((t) => t.withKit);
  if (kit.length > 1)
    movers.push({
      mover: { kind: 'kit' },
      name: 'the kit',
      kg: kit.reduce((sum, t) => sum + t.kg, 0),
    });
  if (spot.berth) movers.push({ mover: { kind: 'ten' }, name: '10 kg', kg: TEN_KG });
  return movers;
}

function move(
  view: LoadView,
  from: LoadSpot,
  to: LoadSpot,
  mover: Mover,
  name: string,
  kg: number,
): LoadMove {
  const wheelbase = millimetres(view.wheelbaseMm);
  // What it weighs acts where it really rides: a load may have a distance of its own within its berth.
  const now = ownX(from, mover);
  const before = axleShare(millimetres(now), wheelbase);
  const after = axleShare(millimetres(to.xMm), wheelbase);
  const frontKg = kg * (after.front - before.front);
  const rearKg = kg * (after.rear - before.rear);
  const onRoof = to.roof && !from.roof ? kg : 0;
  return {
    mover,
    name,
    kg,
    from: from.id,
    to: to.id,
    toName: to.name,
    forwardMm: now - to.xMm,
    frontKg,
    rearKg,
    reliefKg: relief(view, { frontKg, rearKg }, from, kg, from.roof && !to.roof ? kg : 0),
    blocked: blockedBy(view, to, { frontKg, rearKg }, kg, onRoof),
  };
}

function ownX(from: LoadSpot, mover: Mover): number {
  if (mover.kind !== 'load' && mover.kind !== 'belonging') return from.xMm;
  return from.aboard.find((t) => t.id === mover.id)?.xMm ?? from.xMm;
}

interface OnAxles {
  readonly frontKg: number;
  readonly rearKg: number;
}

function relief(
  { helped }: LoadView,
  { frontKg, rearKg }: OnAxles,
  from: LoadSpot,
  kg: number,
  offRoof: number,
): number | null {
  switch (helped?.of) {
    case 'front':
    case 'tyres-front':
      return -frontKg;
    case 'rear':
    case 'tyres-rear':
      return -rearKg;
    case 'roof':
      return offRoof;
    case 'berth':
      return helped.name === from.name ? kg : 0;
    case 'gross':
    case undefined:
      return null;
  }
}

/** The limit a move breaks by most; one that was over and gets better is not broken by it. */
function blockedBy(
  { load }: LoadView,
  to: LoadSpot,
  { frontKg, rearKg }: OnAxles,
  kg: number,
  onRoof: number,
): LoadMove['blocked'] {
  const over = (margins: readonly (number | null | undefined)[], more: number) =>
    more <= 0 ? 0 : Math.max(0, ...margins.map((m) => more - (m ?? Number.POSITIVE_INFINITY)));
  const broken = [
    { what: 'berth', overKg: over([to.marginKg], kg) },
    { what: 'roof', overKg: over([load.roof?.marginKg], onRoof) },
    { what: 'front', overKg: over([load.front.marginKg, load.tyres?.front.marginKg], frontKg) },
    { what: 'rear', overKg: over([load.rear.marginKg, load.tyres?.rear.marginKg], rearKg) },
  ] as const;
  // A thousandth of a kilogram is what scales round away.
  return broken.find(({ overKg }) => overKg > 0.0005) ?? null;
}
