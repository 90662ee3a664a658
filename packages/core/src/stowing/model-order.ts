import type { Layout } from './lay-out.ts';
import type { StowBag } from './stow-problem.ts';
import type { Draft, Term } from './model-draft.ts';

/**
 * Of two bags, or pockets of a bag, that are alike in everything the model knows, the first holds the greater mass: the
 * exchange of all they hold changes no score, so only one of the two orders is looked at.
 */
export function orderEqualBags(draft: Draft): void {
  const { layout, builder, inBag, liesIn } = draft;
  const { problem } = layout;
  const named = namedBags(layout);
  const pieces = [...problem.pieces.keys()];
  const heavier = (one: readonly Term[], other: readonly Term[]): void => {
    if (one.length === 0 && other.length === 0) return;
    builder.row(0, Infinity, [...one, ...other.map(([column, grams]): Term => [column, -grams])]);
  };
  const bagTerms = (b: number): Term[] =>
    pieces.flatMap((p) => inBag(p, b).map(({ column, piece }): Term => [column, piece.grams]));
  const spotTerms = (s: number): Term[] =>
    (liesIn[s] ?? []).map(({ column, piece }): Term => [column, piece.grams]);
  const first = new Map<string, number>();
  for (const [b, bag] of problem.bags.entries()) {
    if (named.has(b)) continue;
    const key = JSON.stringify([withoutName(bag), layout.homes[b]]);
    const before = first.get(key);
    if (before !== undefined) heavier(bagTerms(before), bagTerms(b));
    first.set(key, b);
  }
  const pockets = new Map<string, number>();
  for (const [s, spot] of layout.spots.entries()) {
    const pocket = problem.bags[spot.bag]?.pockets[spot.pocket];
    if (pocket === undefined || named.has(spot.bag)) continue;
    const key = JSON.stringify([spot.bag, { ...pocket, id: '', name: '' }]);
    const before = pockets.get(key);
    if (before !== undefined) heavier(spotTerms(before), spotTerms(s));
    pockets.set(key, s);
  }
}

/** Bags that something was put in by hand, or lies in now: no exchange of all they hold leaves every score as it is. */
function namedBags({ problem }: Layout): ReadonlySet<number> {
  const named = new Set(
    problem.pieces.flatMap(({ byHand, now }) => [
      ...(byHand?.kind === 'bag' ? [byHand.bag] : []),
      ...(now === undefined ? [] : [now.bag]),
    ]),
  );
  return new Set(problem.bags.flatMap((bag, b) => (named.has(bag.id) ? [b] : [])));
}

function withoutName(bag: StowBag): unknown {
  const pockets = bag.pockets.map((pocket) => ({ ...pocket, id: '', name: '' }));
  return { ...bag, id: '', name: '', berth: '', pockets };
}
