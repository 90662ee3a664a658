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
}

export function layOut(pieces: readonly ScenePiece[]): Bench {
  const byKind = new Map<OfferKind, AnyHeld[]>();
  pieces.forEach((p, piece) => {
    for (const offer of p.offers) {
      const list = byKind.get(offer.kind) ?? [];
      list.push({ piece, offer });
      byKind.set(offer.kind, list);
    }
  });
  return { pieces, byKind };
}

/** Everything on the bench of one kind. */
export function held<K extends OfferKind>(bench: Bench, kind: K): readonly Held<K>[] {
  const is = (h: AnyHeld): h is Held<K> => h.offer.kind === kind;
  return (bench.byKind.get(kind) ?? []).filter(is);
}
