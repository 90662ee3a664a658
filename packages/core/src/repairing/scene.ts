import type { Size } from '../fastening/size.ts';
import type { Cents, Grams, Kilograms, Metres, Millilitres, NewtonMetres } from '../quantity/units.ts';

/**
 * One trip as the model sees it, in SI units and with every catalogue default resolved: the joints of this vehicle, the
 * jobs that can be met on it, the trouble this route brings, the crew, and the pieces on the table. Built by
 * packages/planner; read by the problem builder and, separately, by the checker (M8).
 */
export interface Scene {
  readonly joints: readonly Joint[];
  readonly jobs: readonly SceneJob[];
  readonly trouble: readonly Trouble[];
  readonly crew: Crew;
  readonly pieces: readonly ScenePiece[];
  readonly bundles: readonly SceneBundle[];
  /** Ways made of several functions (the substitution rows marked 'together'). */
  readonly together: readonly Together[];
  /** Functions the floor asks for (M7). */
  readonly floor: readonly FunctionNeed[];
  readonly limits: SceneLimits;
  /** Jobs that must be possible (ids of SceneJob.job), for least-mass planning. */
  readonly mustDo: readonly string[];
}

export type Grade = 'proper' | 'with-care' | 'last-resort';
export type Access =
  | 'open'
  | 'deep'
  | 'recess'
  | 'side'
  | 'tight'
  | 'remote'
  | 'angle'
  | 'slotted'
  | 'retain';
export type HeadDrive =
  | 'hex'
  | 'hex-key'
  | 'lobe'
  | 'lobe-external'
  | 'spline'
  | 'square'
  | 'slot'
  | 'cross'
  | 'flare'
  | 'locknut-hex'
  | 'locknut-peg';
export type SquareDrive = '1/4 in' | '3/8 in' | '1/2 in' | '3/4 in' | '1 in';

/** A fastener of this vehicle. */
export interface Joint {
  /** 'fitting id' or 'place@position' when assumed from the pattern. */
  readonly id: string;
  readonly place: string;
  readonly title: string;
  readonly position?: string;
  readonly drive: HeadDrive;
  readonly size: Size;
  /** Tightening torque. */
  readonly torque: NewtonMetres;
  readonly access: Access;
  /** The other end, when it must be held (M3). */
  readonly hold?: { readonly drive: HeadDrive; readonly size: Size };
  readonly stance: 'standing' | 'kneeling' | 'under';
  readonly critical?: 'wheel' | 'brake' | 'steering' | 'support';
  readonly rusty: boolean;
  readonly status: 'assumed' | 'read' | 'measured';
}

export interface FunctionNeed {
  readonly fn: string;
  readonly of?: string;
  /** In the function's printed unit (N m, kg, l/min, mm, A, l). */
  readonly amount?: number;
  /** Distinct pieces at the same moment, default 1. */
  readonly count?: number;
  /** Never met by a last resort. */
  readonly safety?: true;
}

export type SceneNeed =
  | { readonly kind: 'turn'; readonly joint: string }
  | ({ readonly kind: 'function' } & FunctionNeed);

/** A job (or an expedient of one) at one position of this vehicle. */
export interface SceneJob {
  /** Unique: 'SS-04@front', 'BR-03', 'CO-01/wrap'. */
  readonly id: string;
  /** Catalogue job id. */
  readonly job: string;
  readonly title: string;
  /** Where on the vehicle, for jobs that exist in several positions. */
  readonly position?: string;
  readonly expedient: boolean;
  readonly needs: readonly SceneNeed[];
  readonly uses: readonly { readonly of: string; readonly units: number }[];
  readonly people: number;
  readonly skill: number;
  readonly system: string;
  /** Best skill aboard for this system; below `skill` the job is out of reach. */
  readonly bestSkill: number;
  /** practice x relative chance (M4); multiplied by `restored` of the failure and the grade factor. */
  readonly chanceFactor: number;
  /** Metres the result may be trusted for; Infinity when the outcome is to drive on; 0 restores nothing. */
  readonly trusted: Metres;
}

/** One failure at one position on the legs where the same help distance class holds. */
export interface Trouble {
  /** 'split-hose', 'shock-dead@rear', with '~far' style suffix per reach class when a failure is split. */
  readonly id: string;
  readonly failure: string;
  readonly title: string;
  readonly group: string;
  /** Expected immobilising events on the trip: lambda x immobilises. */
  readonly expected: number;
  /** restored(failure or group), before grade, practice and trust. */
  readonly restored: number;
  /** Greatest distance to help on these legs. */
  readonly help: Metres;
  /** Ids of SceneJob that put it right. */
  readonly jobs: readonly string[];
}

export interface Crew {
  readonly count: number;
  readonly heaviest: Kilograms;
}

/** One copy of a belonging, owned or for sale. */
export interface ScenePiece {
  /** 'w17' or 'w17#2' for the second copy. */
  readonly id: string;
  readonly belonging: string;
  readonly name: string;
  readonly grams: Grams;
  readonly millilitres: Millilitres;
  readonly cents: Cents | null;
  readonly owned: boolean;
  readonly pin?: 'always' | 'never';
  /** Empty when the piece is flat, expired, damaged or lent: it counts for nothing. */
  readonly offers: readonly ToolOffer[];
  readonly stock: readonly { readonly of: string; readonly units: number }[];
  readonly bundles: readonly string[];
  readonly berth: string | null;
}

export interface SceneBundle {
  readonly id: string;
  readonly cents: Cents;
  readonly caseGrams: Grams;
  readonly caseMillilitres: Millilitres;
  readonly carry: 'whole' | 'loose';
  readonly owned: boolean;
}

/** `wanted` is met, at `grade`, by all of `needs` at once (each by a direct offer, not by another `together`). */
export interface Together {
  readonly id: string;
  readonly wanted: { readonly fn: string; readonly of?: string };
  readonly grade: Grade;
  readonly needs: readonly FunctionNeed[];
  /** Greatest amount that it stands in for; absent where what is wanted has none. */
  readonly upTo?: number;
}

export interface SceneLimits {
  readonly grams: Grams | null;
  readonly millilitres: Millilitres | null;
  readonly cents: Cents;
  /** Per berth: room left for the kit. `kit`: where pieces without a berth and the cases of whole sets ride. */
  readonly berths: readonly { readonly id: string; readonly grams: Grams; readonly kit?: true }[];
  /**
   * Linear load rows (axles, gross, roof): sum(carried grams x factor(berth)) <= grams. `factor` by berth id; pieces
   * without a berth use `elsewhere`.
   */
  readonly loads: readonly {
    readonly id: string;
    readonly grams: number;
    readonly factor: Readonly<Record<string, number>>;
    readonly elsewhere: number;
  }[];
}

/** What a piece can do, in SI; the geometry twin of the catalogue's printed offers. */
export type ToolOffer =
  | {
      readonly kind: 'socket';
      readonly size: Size;
      readonly depth: 'shallow' | 'deep';
      readonly points: 6 | 12;
      readonly drive: SquareDrive;
      readonly thin: boolean;
      readonly retains: boolean;
      readonly slotted: boolean;
    }
  | {
      readonly kind: 'bit-socket';
      readonly head: HeadDrive;
      readonly sizes: readonly Size[];
      readonly drive: SquareDrive;
    }
  | { readonly kind: 'key'; readonly head: HeadDrive; readonly sizes: readonly Size[]; readonly arm: Metres }
  | {
      readonly kind: 'wrench';
      readonly ends: readonly {
        readonly form: 'ring' | 'ratchet-ring' | 'open' | 'flare';
        readonly size: Size;
      }[];
      readonly length: Metres;
    }
  | {
      readonly kind: 'crow-foot';
      readonly form: 'flare' | 'open';
      readonly size: Size;
      readonly drive: SquareDrive;
    }
  | {
      readonly kind: 'adjustable';
      readonly jaw: 'adjustable' | 'parallel' | 'pipe';
      readonly from: Metres;
      readonly to: Metres;
      readonly length: Metres;
    }
  | {
      readonly kind: 'pliers';
      readonly form: 'locking' | 'water-pump';
      readonly to: Metres;
      readonly length: Metres;
    }
  | {
      readonly kind: 'handle';
      readonly form: 'ratchet' | 'bar' | 't-bar' | 'spinner' | 'torque' | 'impact';
      readonly drive: SquareDrive;
      readonly length: Metres;
      readonly max?: NewtonMetres;
    }
  | {
      readonly kind: 'extension';
      readonly drive: SquareDrive;
      readonly length: Metres;
      readonly wobble: boolean;
    }
  | { readonly kind: 'joint'; readonly drive: SquareDrive }
  | { readonly kind: 'adapter'; readonly handle: SquareDrive; readonly socket: SquareDrive }
  | { readonly kind: 'lever-tube'; readonly length: Metres }
  | {
      readonly kind: 'brace';
      readonly sizes: readonly Size[];
      readonly depth: 'shallow' | 'deep';
      readonly lever: Metres;
    }
  | {
      readonly kind: 'driver';
      readonly head: HeadDrive;
      readonly sizes: readonly Size[];
      readonly length: Metres;
    }
  | {
      readonly kind: 'locknut-socket';
      readonly form: 'hex' | 'peg';
      readonly from: Metres;
      readonly to: Metres;
      readonly drive: SquareDrive;
    }
  | {
      readonly kind: 'does';
      readonly fn: string;
      readonly of?: string;
      readonly amount?: number;
      /** Lower end: an amount below it is not served. */
      readonly from?: number;
      readonly grade: Grade;
      readonly pieces: number;
    };
