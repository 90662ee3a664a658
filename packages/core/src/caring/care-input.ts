import type { Day } from './calendar.ts';
import type { SelfDischargeFacts } from './self-discharge.ts';

/** A care rule as core needs it; the catalogue's record fits it without being named. */
export interface CareRuleFacts {
  readonly id: string;
  readonly title: string;
  readonly everyMonths?: number;
  readonly everyTrip?: 'before' | 'after';
  readonly shelfYears?: { readonly sealed: readonly [number, number]; readonly openedYears?: number };
  readonly replaceYears?: readonly [number, number];
  readonly storage?: {
    readonly maxC?: number;
    readonly chargePct?: readonly [number, number];
    readonly leaveAtPct?: number;
  };
  readonly look?: 'charge' | 'service' | 'pressure' | 'calibration' | 'check';
  readonly renews?: true;
  readonly text: string;
  readonly minutes: number;
  readonly takes?: readonly string[];
}

/** A care rule seen to. */
export interface CareSeen {
  readonly rule: string;
  readonly on: Day;
  /** Percent it was left at. */
  readonly chargePct?: number;
}

/** A belonging with its care, or the kit as a whole. */
export interface CareThing {
  readonly id: string;
  readonly name: string;
  readonly rules: readonly CareRuleFacts[];
  readonly expiresOn?: Day;
  readonly openedOn?: Day;
  readonly madeOn?: Day;
  readonly seen: readonly CareSeen[];
}

/** When it is asked, and when the vehicle leaves and is home again. */
export interface CareTime {
  readonly today: Day;
  readonly leaveOn: Day;
  readonly homeOn: Day;
  /** Degrees C where the kit is kept until then, and the hottest of the trip if it is known. */
  readonly keptAtC: number;
  readonly hottestC?: number;
  /** A look before leaving counts from so many days before. */
  readonly freshDays: number;
  /** Days after coming home in which a kit is put right. */
  readonly restockDays: number;
  /** By care rule. */
  readonly selfDischarge: ReadonlyMap<string, SelfDischargeFacts>;
}
