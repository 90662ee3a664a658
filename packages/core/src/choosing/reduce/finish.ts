import type { Bundle, Choice, Need, Piece, Problem } from '../problem.ts';
import { IN, OPEN, askedNeeds, isPinnedOn, resolve } from './draft.ts';
import type { Atom, Draft, DraftPiece } from './draft.ts';
import { orderedPairs } from './ordered-pieces.ts';
import type { Reduced } from './reduce.ts';

/** Writes what is left of a draft as a problem of its own, with the way back to the unreduced one. */
export function finish(draft: Draft): Reduced {
  const { problem } = draft;
  const kept: number[] = [];
  draft.pieces.forEach((_, p) => {
    if (draft.state[p] === OPEN || isPinnedOn(draft, p)) kept.push(p);
  });
  const bundleOf: number[] = [];
  draft.bundles.forEach((bundle, b) => {
    if (bundle.state === OPEN || bundle.state === IN) bundleOf.push(b);
  });
  const newPiece = new Map(kept.map((p, index) => [p, index]));
  const newBundle = new Map(bundleOf.map((b, index) => [b, index]));
  const sets = bundleOf.map((b): Bundle => {
    const bundle = problem.bundles[b];
    if (!bundle) throw new Error(`bundle ${b} does not exist`);
    return bundle;
  });
  const { needs, needOf, requirement } = renumberNeeds(draft, newPiece);

  const events = draft.events.map((options, e) => ({
    id: `e${e}`,
    loss: options.reduce((most, { gain }) => Math.max(most, gain), 0),
    options: options.map(({ atoms, gain }) => ({ needs: atoms.map(needOf), gain, label: '' })),
  }));
  const live = draft.limits.map((_, row) => row).filter((row) => draft.limits[row]?.live);
  const reduced: Problem = {
    pieces: kept.map((p) => {
      const piece = draft.pieces[p];
      const raw = problem.pieces[p];
      if (!piece || !raw) throw new Error(`piece ${p} does not exist`);
      return pieceOf(raw, piece, isPinnedOn(draft, p), newBundle, sets);
    }),
    bundles: sets,
    needs,
    events,
    limits: live.map((row) => ({
      id: draft.limits[row]?.id ?? '',
      limit: draft.limits[row]?.room ?? 0,
      carried: weightsIn(kept, (p) => draft.pieces[p]?.weights[row]).map(([piece, weight]) => ({
        piece,
        weight,
      })),
      bought: weightsIn(kept, (p) => draft.pieces[p]?.supply?.buy?.weights[row]).map(([piece, weight]) => ({
        piece,
        weight,
      })),
      bundles: weightsIn(bundleOf, (b) => draft.bundles[b]?.weights[row]).map(([bundle, weight]) => ({
        bundle,
        weight,
      })),
    })),
    must: requirement,
    fixedLoss: draft.loss - events.reduce((sum, { loss }) => sum + loss, 0),
  };
  const settled = draft.pieces.filter((piece) => piece.settled);
  return {
    problem: reduced,
    counts: Float64Array.from(kept, (p) => draft.pieces[p]?.count ?? 1),
    cents: Float64Array.from(kept, (p) => draft.pieces[p]?.cents ?? 0),
    ordered: orderedPairs(draft).flatMap(([first, second]) => {
      const [j, i] = [newPiece.get(first), newPiece.get(second)];
      return j === undefined || i === undefined ? [] : [[j, i] as const];
    }),
    settled: { grams: draft.grams, pieces: draft.pieceTotal, cents: draft.cents },
    impossible: draft.impossible.needs.length + draft.impossible.pieces.length > 0,
    lift: (choice) => lift(draft, settled, kept, bundleOf, choice),
  };
}

function pieceOf(
  raw: Piece,
  piece: DraftPiece,
  pinned: boolean,
  newBundle: ReadonlyMap<number, number>,
  sets: readonly Bundle[],
): Piece {
  const bundles = [...new Set([...(piece.supply?.bundles ?? []), ...piece.wholes])].flatMap(
    (b) => newBundle.get(b) ?? [],
  );
  const boxed = raw.owned && bundles.some((b) => sets[b]?.owned && sets[b].carry === 'whole');
  return {
    id: raw.id,
    grams: piece.grams,
    millilitres: raw.millilitres,
    cents: piece.supply ? (piece.supply.buy?.cents ?? null) : 0,
    // There for the taking, or owned inside a box that can still come; without its box it could only be bought.
    owned: piece.supply === null || boxed,
    ...(pinned ? { pin: 'always' as const } : {}),
    ...(bundles.length > 0 ? { bundles } : {}),
  };
}

function weightsIn(items: readonly number[], of: (item: number) => number | undefined): [number, number][] {
  return items.flatMap((item, index): [number, number][] => {
    const weight = of(item) ?? 0;
    return weight === 0 ? [] : [[index, weight]];
  });
}

/** Needs in use, with single-piece needs made for pieces that options or `must` name directly. */
function renumberNeeds(draft: Draft, newPiece: ReadonlyMap<number, number>) {
  const { pieceCount } = draft;
  const needs: Need[] = [];
  const numbers = new Map<Atom, number>();
  const named = new Set<Atom>();
  for (const event of draft.events) for (const { atoms } of event) for (const atom of atoms) named.add(atom);
  for (const atom of [...named].sort((a, b) => a - b)) {
    const piece = newPiece.get(atom);
    if (atom >= pieceCount || piece === undefined) continue;
    numbers.set(atom, needs.length);
    needs.push({ kind: 'any', ways: [{ pieces: [piece], needs: [] }] });
  }
  const needOf = (atom: Atom): number => {
    const number = numbers.get(atom);
    if (number === undefined) throw new Error(`atom ${atom} is asked for but was dropped`);
    return number;
  };
  const pieceAt = (atom: Atom): number => {
    const piece = newPiece.get(atom);
    if (piece === undefined) throw new Error(`piece ${atom} is asked for but was dropped`);
    return piece;
  };
  for (const n of askedNeeds(draft)) {
    const need = draft.needs[n];
    if (!need) continue;
    numbers.set(pieceCount + n, needs.length);
    if (need.kind === 'enough') {
      needs.push({ ...need, from: need.from.map(({ piece, units }) => ({ piece: pieceAt(piece), units })) });
      continue;
    }
    needs.push({
      kind: 'any',
      ways: need.ways.map((way) => ({
        pieces: way.filter((atom) => atom < pieceCount).map(pieceAt),
        needs: way.filter((atom) => atom >= pieceCount).map(needOf),
      })),
    });
  }
  const must = draft.must.flatMap((atom) => resolve(draft, [atom]) ?? []);
  return { needs, needOf, requirement: must.filter((atom) => atom >= pieceCount).map(needOf) };
}

function lift(
  draft: Draft,
  settled: readonly DraftPiece[],
  kept: readonly number[],
  bundleOf: readonly number[],
  choice: Choice,
): Choice {
  const carried = new Set<number>();
  const bought = new Set<number>();
  const bundles = new Set<number>();
  const take = ({ raw }: DraftPiece): void => {
    for (const p of raw.carried) carried.add(p);
    for (const p of raw.bought) bought.add(p);
    for (const b of raw.bundles) bundles.add(b);
  };
  settled.forEach(take);
  for (const index of choice.carried) {
    const piece = draft.pieces[kept[index] ?? -1];
    if (piece) take(piece);
  }
  for (const index of choice.bought) {
    const p = kept[index];
    if (p !== undefined) bought.add(p);
  }
  for (const index of choice.bundles) {
    const b = bundleOf[index];
    if (b !== undefined) bundles.add(b);
  }
  const ascending = (set: ReadonlySet<number>): number[] => [...set].sort((a, b) => a - b);
  return { carried: ascending(carried), bought: ascending(bought), bundles: ascending(bundles) };
}
