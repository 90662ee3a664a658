import type { SymptomArea } from '@waymend/catalogue/shape/symptom';
import type { Grade } from '@waymend/core/repairing/scene';

/**
 * What `waymend card` says: the list of symptoms, the suspects behind one, or the card of a job. Plain data in units people
 * read; every way and grade in it has been worked out twice, by the planner's rules and by the independent checker's (M8).
 */
export type CardAnswer = SymptomListCard | SymptomCard | JobCard;

export interface SymptomListCard {
  readonly schema: 'waymend.card/1';
  readonly kind: 'symptoms';
  /** Only what this vehicle can show. */
  readonly areas: readonly {
    readonly area: SymptomArea;
    readonly symptoms: readonly { readonly id: string; readonly title: string }[];
  }[];
}

export interface AnswerChoice {
  readonly id: string;
  readonly text: string;
}

export interface QuestionCard {
  readonly id: string;
  readonly ask: string;
  readonly answers: readonly AnswerChoice[];
}

export interface SymptomCard {
  readonly schema: 'waymend.card/1';
  readonly kind: 'symptom';
  readonly id: string;
  readonly title: string;
  /** Before anything is looked at. */
  readonly first: readonly string[];
  readonly given: readonly {
    readonly question: string;
    readonly ask: string;
    readonly answer: string;
    readonly text: string;
  }[];
  /** The question that parts what is left; null when none does. */
  readonly next: QuestionCard | null;
  /** Every failure this vehicle can have that shows like this, most likely first. */
  readonly suspects: readonly SuspectCard[];
  /** What to do when no suspect fits all answers, or the first has no job. */
  readonly stop: string | null;
  /** How the order was come by. */
  readonly basis: string;
}

export interface SuspectCard {
  readonly failure: string;
  readonly title: string;
  /** Of all suspects, 0..1. */
  readonly share: number;
  /** Questions whose answer speaks against it. */
  readonly against: readonly string[];
  readonly jobs: readonly {
    readonly id: string;
    readonly title: string;
    /** Grade with what is aboard and who is here; null: not now. */
    readonly grade: Grade | null;
    readonly inStock: boolean;
  }[];
  /** Why nothing at the roadside puts it right; null where jobs do. */
  readonly stop: string | null;
}

export interface PieceRef {
  /** Belonging id, or the catalogue's where it is planned to be bought. */
  readonly id: string;
  readonly name: string;
  /** Bag and pocket, box, berth, or 'kit'. */
  readonly where: string;
}

/** The arm's work at the end of a lever. */
export interface Pull {
  readonly torqueNm: number;
  /** From the fastener to the hand. */
  readonly leverMm: number;
  readonly newtons: number;
  /** The same as a mass hung on the end. */
  readonly kg: number;
  readonly how: 'easy' | 'hard' | 'body' | 'strike';
  readonly words: string;
}

export interface WayCard {
  readonly grade: Grade;
  readonly pieces: readonly PieceRef[];
  readonly pull: Pull | null;
}

export interface NeedCard {
  readonly what: string;
  readonly kind: 'turn' | 'function';
  /** How the size is known; null where no size is asked. */
  readonly size: 'assumed' | 'read' | 'measured' | null;
  /** Null: nothing aboard does it. */
  readonly best: WayCard | null;
  /** The next-best ways aboard, best first. */
  readonly others: readonly WayCard[];
  readonly doNot: readonly string[];
  /** What would do it and is not here, cheapest first. */
  readonly wanted: readonly string[];
}

export interface TorqueCard {
  readonly place: string;
  readonly nm: number;
  readonly from: number;
  readonly to: number;
  /** Recorded for this vehicle; otherwise typical of such places. */
  readonly recorded: boolean;
  readonly basis: string;
  readonly sentences: readonly string[];
  /** What to set on the torque wrench aboard; null when none covers it. */
  readonly setting: {
    readonly wrench: PieceRef;
    readonly nm: number;
    /** With a crow-foot in line, centre to centre; null when the reading is the torque. */
    readonly extensionMm: number | null;
  } | null;
}

export interface ExpedientCard {
  readonly id: string;
  readonly title: string;
  readonly possible: boolean;
  readonly grade: Grade | null;
  /** Null: to the end of the trip. */
  readonly trustedKm: number | null;
  readonly reachesHelp: boolean;
  readonly speedKmh: number | null;
  readonly lookAgainKm: number | null;
  readonly missing: readonly string[];
  readonly with: readonly PieceRef[];
  readonly steps: readonly string[];
  readonly limits: string;
}

export interface UseCard {
  readonly of: string;
  readonly name: string;
  /** Jobs' worth, or litres for fluids. */
  readonly each: number;
  readonly aboard: number;
  /** Null when there is not enough. */
  readonly left: number | null;
}

export interface CourseCard {
  readonly course: 'fix' | 'limp' | 'wait' | 'call';
  readonly verdict: 'first' | 'may' | 'not';
  readonly reasons: readonly string[];
}

export interface JobCard {
  readonly schema: 'waymend.card/1';
  readonly kind: 'job';
  /** 'SS-04@front'. */
  readonly id: string;
  readonly title: string;
  readonly trip: string;
  readonly vehicle: string;
  readonly with: 'kit' | 'everything' | 'list';
  readonly now: boolean;
  readonly grade: Grade | null;
  /** What stands in the way, or what to know first. */
  readonly why: readonly string[];
  readonly outcome: 'drive-on' | 'limp' | 'made-safe';
  /** How far the result is trusted; null: to the end of the trip. */
  readonly trustedKm: number | null;
  readonly minutes: readonly [number, number];
  readonly dark: boolean;
  readonly people: {
    readonly wanted: number;
    readonly here: number;
    readonly skill: number;
    readonly bestSkill: number;
    readonly names: readonly string[];
  };
  readonly help: { readonly km: number; readonly from: 'said' | 'worst-of-trip' };
  readonly cautions: readonly string[];
  readonly needs: readonly NeedCard[];
  readonly uses: readonly UseCard[];
  /** Not needed, but here and of use. */
  readonly helps: readonly { readonly what: string; readonly with: PieceRef }[];
  readonly steps: readonly string[];
  readonly torques: readonly TorqueCard[];
  readonly doNot: readonly string[];
  readonly after: readonly { readonly check: string; readonly km: number | null }[];
  readonly expedients: readonly ExpedientCard[];
  /** Where the wire helper answers; null where no wire is made. */
  readonly wire: string | null;
  readonly decision: { readonly before: readonly string[]; readonly courses: readonly CourseCard[] };
  readonly closing: string;
}
