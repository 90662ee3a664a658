import type { Flats, Size } from '@waymend/core/fastening/size';
import type { ScenePiece, ToolOffer } from '@waymend/core/repairing/scene';
import type { PieceKind } from './joint-state.ts';

/** The rows and widths a piece has on the size rail: none for jaws that adjust, which have no size. */
export function kindsOf(piece: ScenePiece): readonly { readonly kind: PieceKind; readonly size: Flats }[] {
  return piece.offers.flatMap(ofOffer);
}

function ofOffer(offer: ToolOffer): readonly { readonly kind: PieceKind; readonly size: Flats }[] {
  switch (offer.kind) {
    case 'socket':
      return flats(offer.depth === 'deep' ? 'deep' : 'socket', [offer.size]);
    case 'brace':
      return flats(offer.depth === 'deep' ? 'deep' : 'socket', offer.sizes);
    case 'wrench':
      return offer.ends.flatMap((end) => flats(end.form === 'flare' ? 'flare' : 'ring', [end.size]));
    case 'crow-foot':
      return flats(offer.form === 'flare' ? 'flare' : 'ring', [offer.size]);
    case 'key':
    case 'bit-socket':
    case 'driver':
      return offer.head === 'hex-key' ? flats('key', offer.sizes) : [];
    default:
      return [];
  }
}

function flats(kind: PieceKind, sizes: readonly Size[]): { kind: PieceKind; size: Flats }[] {
  return sizes.flatMap((size) => (size.kind === 'across-flats' ? [{ kind, size }] : []));
}
