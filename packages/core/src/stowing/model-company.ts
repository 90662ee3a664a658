import { AT } from './piece-costs.ts';
import type { StowPiece } from './stow-problem.ts';
import type { Draft, Lies, Term } from './model-draft.ts';
import { isElectric, isFlammable, isLithium, isSharp, isWet } from './stow-rules.ts';

/** What must not share a bag, or a place in one; and what belongs in one bag. */
export function companyRows(draft: Draft): void {
  const { layout } = draft;
  for (const b of layout.problem.bags.keys()) {
    const inside = (p: number): readonly Lies[] => draft.inBag(p, b);
    apart(draft, isWet, isElectric, inside);
    apart(draft, isLithium, isFlammable, inside);
  }
  for (const [s, spot] of layout.spots.entries()) {
    if (spot.bag < 0) continue;
    apart(draft, isSharp, isElectric, (p) => (draft.liesIn[s] ?? []).filter((lie) => lie.p === p));
  }
  together(draft);
}

type Kind = (piece: StowPiece) => boolean;

/** One danger where both kinds are there. */
function apart(
  { layout, builder, charge }: Draft,
  one: Kind,
  other: Kind,
  here: (p: number) => readonly Lies[],
): void {
  const of = (kind: Kind): readonly (readonly Lies[])[] =>
    layout.problem.pieces.flatMap((piece, p) => (kind(piece) && here(p).length > 0 ? [here(p)] : []));
  const ones = of(one);
  const others = of(other);
  if (ones.length === 0 || others.length === 0) return;
  const there = (list: readonly (readonly Lies[])[]): number => {
    const any = builder.column(0, 1, false);
    for (const lies of list)
      builder.row(0, Infinity, [[any, 1], ...lies.map(({ column }): Term => [column, -1])]);
    return any;
  };
  const both = builder.column(0, 1, false);
  builder.row(-1, Infinity, [
    [both, 1],
    [there(ones), -1],
    [there(others), -1],
  ]);
  charge(AT.danger, both, 1);
}

/** One breach of order for every bag or berth beyond the first that a group lies in. */
function together({ layout, builder, liesOf, inBag, charge }: Draft): void {
  const { problem, groups } = layout;
  for (const members of groups) {
    const units: Term[] = [];
    const unit = (lies: readonly (readonly Lies[])[]): void => {
      const rows = lies.filter((list) => list.length > 0);
      if (rows.length === 0) return;
      const used = builder.column(0, 1, false);
      for (const list of rows)
        builder.row(0, Infinity, [[used, 1], ...list.map(({ column }): Term => [column, -1])]);
      units.push([used, -1]);
    };
    for (const b of problem.bags.keys()) unit(members.map((p) => inBag(p, b)));
    for (const h of problem.berths.keys())
      unit(
        members.map((p) =>
          (liesOf[p] ?? []).filter(({ s }) => {
            const spot = layout.spots[s];
            return spot?.bag === -1 && spot.berth === h;
          }),
        ),
      );
    if (units.length < 2) continue;
    const beyond = builder.column(0, units.length, false);
    builder.row(-1, Infinity, [[beyond, 1], ...units]);
    charge(AT.order, beyond, 1);
  }
}
