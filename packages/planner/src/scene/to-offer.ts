import type { Offer } from '@waymend/catalogue/shape/offer';
import type { Size } from '@waymend/core/fastening/size';
import { parseSize } from '@waymend/core/fastening/size';
import { metres, millimetres, newtonMetres } from '@waymend/core/quantity/units';
import type { ToolOffer } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, unreachable } from '@waymend/core/result';
import { functionWord } from './function-word.ts';

/** What a belonging's record may change about its catalogue entry. */
export interface OfferChange {
  /** Real length of the handle or wrench, mm. */
  readonly handleMm?: number;
  /** Real size where it differs from the catalogue entry's. */
  readonly size?: string;
}

/** A catalogue offer in SI, or the first size that cannot be read. */
export function toToolOffer(offer: Offer, change: OfferChange = {}): Result<ToolOffer> {
  const length = (mm: number) => millimetres(change.handleMm ?? mm);
  switch (offer.kind) {
    case 'socket': {
      const size = parseSize(change.size ?? offer.size);
      if (!size.ok) return size;
      const { depth, points, drive } = offer;
      return ok({
        kind: 'socket',
        size: size.value,
        depth,
        points,
        drive,
        thin: offer.thin ?? false,
        retains: offer.retains ?? false,
        slotted: offer.slotted ?? false,
      });
    }
    case 'bit-socket': {
      const sizes = parseSizes(change.size === undefined ? offer.sizes : [change.size]);
      return sizes.ok
        ? ok({ kind: 'bit-socket', head: offer.head, sizes: sizes.value, drive: offer.drive })
        : sizes;
    }
    case 'key': {
      const sizes = parseSizes(change.size === undefined ? offer.sizes : [change.size]);
      return sizes.ok
        ? ok({ kind: 'key', head: offer.head, sizes: sizes.value, arm: length(offer.armMm) })
        : sizes;
    }
    case 'wrench': {
      const ends: { form: 'ring' | 'ratchet-ring' | 'open' | 'flare'; size: Size }[] = [];
      for (const end of offer.ends) {
        const size = parseSize(change.size ?? end.size);
        if (!size.ok) return size;
        ends.push({ form: end.form, size: size.value });
      }
      return ok({ kind: 'wrench', ends, length: length(offer.lengthMm) });
    }
    case 'crow-foot': {
      const size = parseSize(change.size ?? offer.size);
      return size.ok
        ? ok({ kind: 'crow-foot', form: offer.form, size: size.value, drive: offer.drive })
        : size;
    }
    case 'adjustable':
      return ok({
        kind: 'adjustable',
        jaw: offer.jaw,
        from: millimetres(offer.fromMm),
        to: millimetres(offer.toMm),
        length: length(offer.lengthMm),
      });
    case 'pliers':
      return ok({
        kind: 'pliers',
        form: offer.form,
        to: millimetres(offer.toMm),
        length: length(offer.lengthMm),
      });
    case 'handle': {
      const { form, drive } = offer;
      const max = offer.maxNm === undefined ? {} : { max: newtonMetres(offer.maxNm) };
      return ok({ kind: 'handle', form, drive, length: length(offer.lengthMm), ...max });
    }
    case 'extension':
      return ok({
        kind: 'extension',
        drive: offer.drive,
        length: length(offer.lengthMm),
        wobble: offer.wobble ?? false,
      });
    case 'joint':
      return ok({ kind: 'joint', drive: offer.drive });
    case 'adapter':
      return ok({ kind: 'adapter', handle: offer.handle, socket: offer.socket });
    case 'lever-tube':
      return ok({ kind: 'lever-tube', length: length(offer.lengthMm) });
    case 'brace': {
      const sizes = parseSizes(offer.sizes);
      return sizes.ok
        ? ok({ kind: 'brace', sizes: sizes.value, depth: offer.depth, lever: metres(offer.leverMm / 1000) })
        : sizes;
    }
    case 'driver': {
      const sizes = parseSizes(offer.sizes);
      return sizes.ok
        ? ok({ kind: 'driver', head: offer.head, sizes: sizes.value, length: length(offer.lengthMm) })
        : sizes;
    }
    case 'locknut-socket':
      return ok({
        kind: 'locknut-socket',
        form: offer.form,
        from: millimetres(offer.fromMm),
        to: millimetres(offer.toMm),
        drive: offer.drive,
      });
    case 'does': {
      const amount = offer.amount === undefined ? {} : { amount: offer.amount };
      const from = offer.from === undefined ? {} : { from: offer.from };
      return ok({
        kind: 'does',
        ...functionWord(offer.fn, offer.of),
        ...amount,
        ...from,
        grade: offer.grade ?? 'proper',
        pieces: offer.pieces ?? 1,
      });
    }
    default:
      return unreachable(offer);
  }
}

function parseSizes(texts: readonly string[]): Result<readonly Size[]> {
  const sizes: Size[] = [];
  for (const text of texts) {
    const size = parseSize(text);
    if (!size.ok) return size;
    sizes.push(size.value);
  }
  return ok(sizes);
}
