import type { FunctionId, Grade, SquareDrive } from './words.ts';

/**
 * What a belonging can do. Turning tools are described by their geometry (lengths in mm as printed, sizes by their
 * marking: '17 mm', '3/4 in', 'T30', 'E12', 'cross 2', 'slot 6.5 mm', 'M10 spline'), because fit is computed and never
 * listed by hand. Everything else is a `does` line.
 */
export type Offer =
  | {
      readonly kind: 'socket';
      readonly size: string;
      readonly depth: 'shallow' | 'deep';
      readonly points: 6 | 12;
      readonly drive: SquareDrive;
      readonly thin?: true;
      readonly retains?: true;
      readonly slotted?: true;
    }
  /** A driver bit or external-lobe socket on a square drive. */
  | {
      readonly kind: 'bit-socket';
      readonly head: 'hex-key' | 'lobe' | 'lobe-external' | 'spline' | 'square' | 'slot' | 'cross';
      readonly sizes: readonly string[];
      readonly drive: SquareDrive;
    }
  /** An L-key; the arm is the lever. */
  | {
      readonly kind: 'key';
      readonly head: 'hex-key' | 'lobe';
      readonly sizes: readonly string[];
      readonly armMm: number;
    }
  | {
      readonly kind: 'wrench';
      readonly ends: readonly {
        readonly form: 'ring' | 'ratchet-ring' | 'open' | 'flare';
        readonly size: string;
      }[];
      readonly lengthMm: number;
    }
  | {
      readonly kind: 'crow-foot';
      readonly form: 'flare' | 'open';
      readonly size: string;
      readonly drive: SquareDrive;
    }
  | {
      readonly kind: 'adjustable';
      readonly jaw: 'adjustable' | 'parallel' | 'pipe';
      readonly fromMm: number;
      readonly toMm: number;
      readonly lengthMm: number;
    }
  /** Pliers that can turn a hex at a price. */
  | {
      readonly kind: 'pliers';
      readonly form: 'locking' | 'water-pump';
      readonly toMm: number;
      readonly lengthMm: number;
    }
  | {
      readonly kind: 'handle';
      readonly form: 'ratchet' | 'bar' | 't-bar' | 'spinner' | 'torque' | 'impact';
      readonly drive: SquareDrive;
      readonly lengthMm: number;
      /** Working limit of this handle when it is below the limit of its square drive. */
      readonly maxNm?: number;
    }
  | {
      readonly kind: 'extension';
      readonly drive: SquareDrive;
      readonly lengthMm: number;
      readonly wobble?: true;
    }
  | { readonly kind: 'joint'; readonly drive: SquareDrive }
  /** `handle` is the side the handle goes into, `socket` the side the socket goes onto. */
  | { readonly kind: 'adapter'; readonly handle: SquareDrive; readonly socket: SquareDrive }
  | { readonly kind: 'lever-tube'; readonly lengthMm: number }
  /** A one-piece handle with its own sockets (wheel brace, cross brace). */
  | {
      readonly kind: 'brace';
      readonly sizes: readonly string[];
      readonly depth: 'shallow' | 'deep';
      readonly leverMm: number;
    }
  | {
      readonly kind: 'driver';
      readonly head: 'slot' | 'cross' | 'lobe' | 'hex-key';
      readonly sizes: readonly string[];
      readonly lengthMm: number;
    }
  | {
      readonly kind: 'locknut-socket';
      readonly form: 'hex' | 'peg';
      readonly fromMm: number;
      readonly toMm: number;
      readonly drive: SquareDrive;
    }
  | {
      readonly kind: 'does';
      readonly fn: FunctionId;
      /** One of the function's `of` words. Absent: the plain function, which also serves a need that names no `of`. */
      readonly of?: string;
      /** In the unit FUNCTIONS prints for this function. */
      readonly amount?: number;
      /** Lower end, where it does not serve small amounts: a torque wrench below its scale. */
      readonly from?: number;
      readonly grade?: Exclude<Grade, 'forbidden'>;
      /** Pieces inside that can be used at the same moment (a pair of stands: 2). */
      readonly pieces?: number;
    };
