import type { Grams, Millilitres, Millimetres } from '../quantity/units.ts';

/**
 * What is to be stowed and into what (M14), free of records and catalogue: pieces, bags with pockets, berths that bags and
 * loose things ride in. Whole grams, millilitres and millimetres, so that every sum is exact.
 */
export interface StowProblem {
  readonly pieces: readonly StowPiece[];
  readonly bags: readonly StowBag[];
  readonly berths: readonly StowBerth[];
  /** Where the rear axle is, behind the front one. */
  readonly rearAxle: Millimetres;
  /** Axles, tyres, gross and roof: sum of grams x factor(berth) <= grams, over bags and loose things (M13). */
  readonly loads: readonly StowLoadRow[];
}

export type StowMark = 'liquid' | 'aerosol' | 'fuel' | 'sharp' | 'lithium' | 'battery' | 'electric';

/** One copy of a belonging that comes along. */
export interface StowPiece {
  readonly id: string;
  readonly name: string;
  readonly grams: Grams;
  /** Room it takes among other things. */
  readonly millilitres: Millilitres;
  /** Length >= width >= thickness. */
  readonly size: PieceSize;
  readonly marks: readonly StowMark[];
  /** Expected repairs of the trip that take it in hand, in USES_UNIT (M5). */
  readonly uses: number;
  /** Belongs within reach in the first fifteen minutes. */
  readonly firstGrab: boolean;
  /** What belongs together carries the same word: a set, the pieces that only one job asks for. */
  readonly groups: readonly string[];
  /** Where somebody put it by hand, and where it stays. A berth alone: in it, loose or in one of its bags. */
  readonly byHand?: ByHand;
  /** The bag it lies in now, and where in it if anybody said: free to move, and left there where nothing is lost by it. */
  readonly now?: LiesNow;
  /** The spare wheel: it rides in its berth and shares that with nothing. */
  readonly wheel?: true;
}

export interface PieceSize {
  readonly length: Millimetres;
  readonly width: Millimetres;
  readonly thickness: Millimetres;
}

export interface LiesNow {
  readonly bag: string;
  readonly pocket: string | null;
}

export type ByHand =
  | { readonly kind: 'bag'; readonly bag: string; readonly pocket: string | null }
  | { readonly kind: 'berth'; readonly berth: string };

/** A berth of the vehicle as far as stowing goes. */
export interface StowBerth {
  readonly id: string;
  readonly name: string;
  /** Behind the front axle. */
  readonly x: Millimetres;
  /** Its floor above the load floor. */
  readonly z: Millimetres;
  readonly roof: boolean;
  /** Reached without unloading anything. */
  readonly atHand: boolean;
  /** Somebody sits here: nothing rides loose, and no bag is put here but by hand. */
  readonly seat: boolean;
  /** The spare wheel's own: nothing else is put here but by hand. */
  readonly wheelOnly: boolean;
  /** Left for kit and bags once everything else is in; null where nobody has said. */
  readonly room: Grams | null;
  readonly millilitres: Millilitres | null;
}

export type BagKind = 'roll' | 'pouch' | 'bag' | 'box' | 'case';

export interface StowBag {
  readonly id: string;
  readonly name: string;
  readonly kind: BagKind;
  /** Of its own, empty. */
  readonly grams: Grams;
  /** Inside; null where nobody has measured. */
  readonly length: Millimetres | null;
  readonly width: Millimetres | null;
  readonly height: Millimetres | null;
  readonly millilitres: Millilitres | null;
  readonly limit: Grams | null;
  /** Reached in seconds. */
  readonly firstGrab: boolean;
  readonly spillproof: boolean;
  /** The berth it was put in by hand; null: any that takes it. */
  readonly fixedIn: string | null;
  /** Where it rides now, if the record says. */
  readonly berth: string | null;
  readonly pockets: readonly StowPocket[];
}

export interface StowPocket {
  readonly id: string;
  readonly name: string;
  /** Flat. */
  readonly width: Millimetres;
  readonly length: Millimetres;
  /** Null: cloth, as thick as its width allows. */
  readonly depth: Millimetres | null;
  readonly openEnded: boolean;
  readonly limit: Grams | null;
}

export interface StowLoadRow {
  readonly id: string;
  readonly grams: number;
  /** By berth id; what rides in a berth that is not named counts nothing. */
  readonly factor: Readonly<Record<string, number>>;
}

/** Where one piece lies. Bag and pocket null: loose in the berth. Berth null: no place was found for it. */
export interface StowPlace {
  readonly piece: string;
  readonly bag: string | null;
  readonly pocket: string | null;
  readonly berth: string | null;
}

/** A whole stowage, as it is claimed, checked and shown. */
export interface Stowage {
  readonly places: readonly StowPlace[];
  /** Berth of each bag that comes along; an empty bag stays home. */
  readonly bags: readonly { readonly bag: string; readonly berth: string }[];
}
