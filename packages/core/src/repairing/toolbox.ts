import type { PieceIndex } from '../choosing/problem.ts';
import type { ScenePiece, ToolOffer } from './scene.ts';

export type OfferKind = ToolOffer['kind'];
export type OfferOf<K extends OfferKind> = Extract<ToolOffer, { readonly kind: K }>;

/** One line of what one piece can do. */
export interface Held<K extends OfferKind> {
  readonly piece: PieceIndex;
  readonly offer: OfferOf<K>;
}

interface AnyHeld {
  readonly piece: PieceIndex;
  readonly offer: ToolOffer;
}

/** Everything on the table by what it can do, so that a joint looks only at the tools that could turn it. */
export class Toolbox {
  private readonly byKind = new Map<OfferKind, AnyHeld[]>();
  private readonly byFunction = new Map<string, Held<'does'>[]>();

  constructor(pieces: readonly ScenePiece[]) {
    pieces.forEach(({ offers }, piece) => {
      for (const offer of offers) {
        listIn(this.byKind, offer.kind).push({ piece, offer });
        if (offer.kind === 'does') listIn(this.byFunction, offer.fn).push({ piece, offer });
      }
    });
  }

  of<K extends OfferKind>(kind: K): readonly Held<K>[] {
    const list = this.byKind.get(kind) ?? [];
    const are = (held: readonly AnyHeld[]): held is readonly Held<K>[] =>
      held.every(({ offer }) => offer.kind === kind);
    if (!are(list)) throw new Error(`something else is kept among what is of kind ${kind}`);
    return list;
  }

  /** Lines that give a function, with any `of`. */
  doing(fn: string): readonly Held<'does'>[] {
    return this.byFunction.get(fn) ?? [];
  }
}

function listIn<K, T>(map: Map<K, T[]>, key: K): T[] {
  const list = map.get(key) ?? [];
  map.set(key, list);
  return list;
}
