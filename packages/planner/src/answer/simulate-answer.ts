/** What drawn trips say of a kit (M12, docs/answers.md). Shares are of all trips, quiet ones included, 0..1. */
export interface SimulateAnswer {
  readonly schema: 'waymend.simulate/1';
  readonly trip: string;
  readonly seed: number;
  /** Trips drawn; trips without a failure need no drawing and are counted by their share. */
  readonly trips: number;
  readonly unaided: SimulatedChance;
  /** The chance the plan states (M5), and the same with shared stock counted out exactly. */
  readonly stated: number;
  readonly statedExactStock: number;
  /** Whether the drawn trips and the stated chance agree, and what their difference is, in a sentence. */
  readonly words: string;
  /** What ends the drive, worst first. */
  readonly strands: readonly {
    readonly failure: string;
    readonly title: string;
    readonly group: string;
    readonly share: number;
  }[];
  /** How often each piece is used on a trip, on average, most used first. */
  readonly used: readonly { readonly id: string; readonly name: string; readonly perTrip: number }[];
  readonly stories: readonly StoryAnswer[];
  /** The other kit on the same trips with the same luck; null when none was asked for. */
  readonly against: {
    readonly title: string;
    readonly massGrams: number;
    readonly unaided: SimulatedChance;
    /** Share of trips that one survives and the other does not. */
    readonly onlyThisKit: number;
    readonly onlyTheOther: number;
  } | null;
}

export interface SimulatedChance {
  readonly chance: number;
  readonly low: number;
  readonly high: number;
}

/** One drawn trip, told in the order it happened. */
export interface StoryAnswer {
  readonly home: boolean;
  readonly events: readonly {
    readonly failure: string;
    readonly title: string;
    /** The repair that was tried, null when there was none. */
    readonly job: string | null;
    readonly held: boolean;
    /** It could have been put right, but what that takes had been used up on this trip. */
    readonly ranOut: boolean;
    readonly with: readonly string[];
  }[];
}
