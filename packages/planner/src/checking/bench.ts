import type { ScenePiece, ToolOffer } from '@waymend/core/repairing/scene';

export type OfferKind = ToolOffer['kind'];

/** One thing a piece can do; `piece` is its position in the list that was laid out. */
export interface Held<K extends OfferKind> {
  readonly piece: number;
  readonly offer: Extract<ToolOffer, { kind: K }>;
}

interface AnyHeld {
  readonly piece: number;
  readonly offer: ToolOffer;
}

/** Pieces laid out by what they offer, so that a search looks only at what could serve. */
export interface Bench {
  readonly pieces: readonly ScenePiece[];
  readonly byKind: ReadonlyMap<OfferKind, readonly AnyHeld[]>;
  /** What gives a function, by its name. */
  readonly byFunction: ReadonlyMap<string, readonly Held<'does'>[]>;
}

export function layOut(pieces: readonly ScenePiece[]): Bench {
  const byKind = new Map<OfferKind, AnyHeld[]>();
  const byFunction = new Map<string, Held<'does'>[]>();
  pieces.forEach((p, piece) => {
    for (const offer of p.offers) {
      const list = byKind.get(offer.kind) ?? [];
      list.push({ piece, offer });
      byKind.set(offer.kind, list);
      if (offer.kind !== 'does') continue;
      const givers = byFunction.get(offer.fn) ?? [];
      givers.push({ piece, offer });
      byFunction.set(offer.fn, givers);
    }
  });
  return { pieces, byKind, byFunction };
}

/** Everything on the bench of one kind. */
export function held<K extends OfferKind>(bench: Bench, kind: K): readonly Held<K>[] {
  const list = bench.byKind.get(kind) ?? [];
  const are = (all: readonly AnyHeld[]): all is readonly Held<K>[] => all.every((h) => h.offer.kind === kind);
  if (!are(list)) throw new Error(`Something else lies among what is of kind ${kind}`);
  return list;
}
