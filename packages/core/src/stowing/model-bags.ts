import { AT } from './piece-costs.ts';
import { bagMillilitres, isRigid } from './spots.ts';
import type { Draft, Lies, Term } from './model-draft.ts';
import { atMost } from './model-draft.ts';
import { ONE_PERSON_GRAMS } from './stow-rules.ts';

/** Sums over what is in each berth, as terms of a row. */
interface InBerth {
  readonly mass: Term[];
  readonly room: Term[];
}

/** Limits of bags and berths, and axles. */
export function bagRows(draft: Draft): void {
  const { layout, builder } = draft;
  const { problem, berthRoom, berthLimit } = layout;
  const inBerth = problem.berths.map((): InBerth => ({ mass: [], room: [] }));
  for (const b of problem.bags.keys()) {
    const [home = -1] = layout.homes[b] ?? [];
    oneBag(draft, b, inBerth[home]);
  }
  for (const [s, spot] of layout.spots.entries()) {
    if (spot.bag >= 0) continue;
    for (const { column, piece } of draft.liesIn[s] ?? []) {
      inBerth[spot.berth]?.mass.push([column, piece.grams]);
      inBerth[spot.berth]?.room.push([column, piece.millilitres]);
    }
  }
  for (const [h, { mass, room }] of inBerth.entries()) {
    atMost(builder, mass, berthLimit[h] ?? 0);
    atMost(builder, room, berthRoom[h] ?? 0);
  }
  loadRows(draft, inBerth);
}

function oneBag(
  { layout, builder, inBag, charge, rides }: Draft,
  b: number,
  berth: InBerth | undefined,
): void {
  const { problem, bagRoom, bagLimit } = layout;
  const bag = problem.bags[b];
  const inside = problem.pieces.flatMap((_, p) => inBag(p, b));
  const used = rides[b] ?? -1;
  if (bag === undefined || inside.length === 0 || used < 0) return;
  const contents = inside.map(({ column, piece }): Term => [column, piece.grams]);
  const most = Math.min(bagLimit[b] ?? 0, gramsOf(inside));
  // Nothing lies in a bag that stays home.
  builder.row(-Infinity, 0, [...contents, [used, -most]]);
  const room = inside.map(({ column, piece }): Term => [column, piece.millilitres]);
  atMost(builder, room, bagRoom[b] ?? 0);
  const over = most + bag.grams - ONE_PERSON_GRAMS;
  if (over > 0) {
    const heavy = builder.column(0, 1, true);
    builder.row(-Infinity, ONE_PERSON_GRAMS - bag.grams, [...contents, [heavy, -over]]);
    charge(AT.danger, heavy, 1);
  }
  berth?.mass.push(...contents, [used, bag.grams]);
  berth?.room.push(...(isRigid(bag) ? ([[used, bagMillilitres(bag)]] as const) : room));
}

/** Each piece once, though it might lie in several places of the bag. */
function gramsOf(inside: readonly Lies[]): number {
  const each = new Map<number, number>(inside.map(({ p, piece }) => [p, piece.grams]));
  return [...each.values()].reduce((sum, n) => sum + n, 0);
}

/** An axle over its rating counts as one danger, however far over. */
function loadRows({ layout, builder, charge }: Draft, inBerth: readonly InBerth[]): void {
  const { problem } = layout;
  for (const row of problem.loads) {
    const terms = problem.berths.flatMap((berth, h): Term[] => {
      const factor = row.factor[berth.id] ?? 0;
      return factor === 0 ? [] : (inBerth[h]?.mass ?? []).map(([column, grams]) => [column, grams * factor]);
    });
    const most = terms.reduce((sum, [, n]) => sum + Math.max(0, n), 0);
    if (most <= row.grams) continue;
    const over = builder.column(0, 1, true);
    builder.row(-Infinity, row.grams, [...terms, [over, row.grams - most]]);
    charge(AT.danger, over, 1);
  }
}
