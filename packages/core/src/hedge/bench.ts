import type { ScenePiece, ToolOffer } from '../repairing/scene.ts';

export type OfferKind = ToolOffer['kind'];
export type OfferOf<K extends OfferKind> = Extract<ToolOffer, { readonly kind: K }>;

/** One line of what one piece can do. */
export interface Held<K extends OfferKind> {
  readonly piece: number;
  readonly offer: OfferOf<K>;
}

type Shelves = { readonly [K in OfferKind]: Held<K>[] };

/** Every piece's lines, sorted by kind, so that a joint looks only at the tools that could turn it. */
export class Bench {
  private readonly shelves: Shelves = {
    socket: [],
    'bit-socket': [],
    key: [],
    wrench: [],
    'crow-foot': [],
    adjustable: [],
    pliers: [],
    handle: [],
    extension: [],
    joint: [],
    adapter: [],
    'lever-tube': [],
    brace: [],
    driver: [],
    'locknut-socket': [],
    does: [],
  };
  /** Lines of `does`, by function. */
  private readonly byFunction = new Map<string, Held<'does'>[]>();
  /** Pieces with a part in drive trains (handle, extension, joint, adapter, tube): never also the socket of the same train. */
  readonly trainParts = new Set<number>();

  constructor(pieces: readonly ScenePiece[]) {
    pieces.forEach(({ offers }, piece) => {
      for (const offer of offers) this.put(piece, offer);
    });
  }

  of<K extends OfferKind>(kind: K): readonly Held<K>[] {
    return this.shelves[kind];
  }

  doing(fn: string): readonly Held<'does'>[] {
    return this.byFunction.get(fn) ?? [];
  }

  private put(piece: number, offer: ToolOffer): void {
    const shelf: { piece: number; offer: ToolOffer }[] = this.shelves[offer.kind];
    shelf.push({ piece, offer });
    if (offer.kind === 'does') {
      const list = this.byFunction.get(offer.fn) ?? [];
      list.push({ piece, offer });
      this.byFunction.set(offer.fn, list);
    }
    if (TRAIN_PARTS.has(offer.kind)) this.trainParts.add(piece);
  }
}

const TRAIN_PARTS: ReadonlySet<OfferKind> = new Set([
  'handle',
  'extension',
  'joint',
  'adapter',
  'lever-tube',
]);
