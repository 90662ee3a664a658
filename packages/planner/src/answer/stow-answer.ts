import type { LoadAnswer } from './plan-answer.ts';

/** Where everything of a kit lies (M14), as `waymend stow` says it. Whole grams, millilitres and millimetres. */
export interface StowAnswer {
  readonly schema: 'waymend.stow/1';
  readonly trip: { readonly id: string; readonly name: string; readonly vehicle: string };
  readonly status: 'proven' | 'within';
  /** Greatest share by which a level could still be better; 0 when proven. */
  readonly gap: number;
  readonly stoppedBy: 'time' | 'cancel' | null;
  readonly levels: readonly StowLevel[];
  /** The garage has no bags: these are typical ones. */
  readonly proposed: boolean;
  readonly berths: readonly StowedBerth[];
  readonly bags: readonly StowedBag[];
  /** Bags that stay home because nothing is in them. */
  readonly emptyBags: readonly { readonly id: string; readonly name: string }[];
  readonly unplaced: readonly { readonly id: string; readonly name: string; readonly why: string }[];
  /** What to do first, in sentences. */
  readonly first: readonly string[];
  readonly broken: readonly StowBroken[];
  /** With bags and all, as stowed; and as the plan had it. */
  readonly load: LoadAnswer;
  readonly loadAsPlanned: LoadAnswer;
}

export interface StowLevel {
  readonly level: 'unplaced' | 'danger' | 'order' | 'reach' | 'height' | 'behind' | 'moved';
  /** What it counts, in words. */
  readonly words: string;
  readonly value: number;
  /** No stowage with the bags in these berths and as good at the levels before is below this. */
  readonly bound: number;
  /** The same of plain first-fit decreasing. */
  readonly firstFit: number;
}

export interface StowedBerth {
  readonly id: string;
  readonly name: string;
  readonly atHand: boolean;
  /** Kit and bags stowed here. */
  readonly grams: number;
  /** Room left by everything else that rides here; null without a limit. */
  readonly limitGrams: number | null;
  readonly bags: readonly string[];
  readonly loose: readonly StowedItem[];
}

export interface StowedBag {
  readonly id: string;
  readonly name: string;
  readonly kind: 'roll' | 'pouch' | 'bag' | 'box' | 'case';
  readonly berth: string;
  readonly berthName: string;
  /** Set down elsewhere than the record says. */
  readonly moved: boolean;
  readonly proposed: boolean;
  readonly firstGrab: boolean;
  readonly spillproof: boolean;
  readonly lengthMm: number | null;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** With everything in it. */
  readonly grams: number;
  readonly limitGrams: number | null;
  readonly usedMl: number;
  readonly roomMl: number | null;
  readonly pockets: readonly StowedPocket[];
  /** What lies in its room, beside any pockets. */
  readonly items: readonly StowedItem[];
}

export interface StowedPocket {
  readonly id: string;
  readonly name: string;
  readonly widthMm: number;
  readonly lengthMm: number;
  readonly depthMm: number | null;
  /** Flat width taken (cloth) in mm, or room taken in ml, and how much there is. */
  readonly takes: 'mm' | 'ml';
  readonly used: number;
  readonly room: number;
  readonly items: readonly StowedItem[];
}

export interface StowedItem {
  /** Piece: a belonging's id, '#2' for its second copy. */
  readonly id: string;
  readonly belonging: string;
  readonly name: string;
  readonly grams: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** Expected uses on the trip. */
  readonly uses: number;
  readonly firstGrab: boolean;
  readonly byHand: boolean;
  /** The bag, and pocket, that the record has it in, where that is another place than this; null: it stays, or no bag was recorded. */
  readonly cameFrom: { readonly bag: string; readonly pocket: string | null } | null;
  /** How far it stands out of its pocket, mm. */
  readonly standsOutMm: number;
}

export interface StowBroken {
  readonly rule: string;
  readonly class: 'danger' | 'order' | 'by-hand';
  readonly sentence: string;
  readonly pieces: readonly string[];
  readonly bag: string | null;
  readonly berth: string | null;
  /** Something in it was put there by hand. */
  readonly byHand: boolean;
}
