import { kindDrawer } from './draw-kind.ts';
import type { Stratum } from './strata.ts';
import { strataOf } from './strata.ts';
import type { SimulatedKit, TripLaw } from './trip-law.ts';
import type { DrawnTrip } from './walk.ts';
import { walker } from './walk.ts';
import type { Interval } from './wilson.ts';
import { wilson } from './wilson.ts';

/** Uniform numbers in [0, 1), a stream for each stratum; the same stream number always gives the same numbers. */
export type Randomness = (stream: number) => () => number;

export interface SimulationOptions {
  /** Trips to draw, about (a few more where a stratum would be empty). */
  readonly trips: number;
  readonly randomness: Randomness;
  /** Asked every thousand trips; true stops, and the strata done so far are not an answer. */
  readonly shouldStop?: () => boolean;
  /** Trips drawn so far, of how many. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** What the drawn trips say of one kit; shares and counts are per trip of the whole law, quiet trips included. */
export interface Simulated {
  readonly unaided: number;
  readonly interval: Interval;
  readonly trips: number;
  /** By trouble: share of trips it strands. */
  readonly stranded: Float64Array;
  /** By trouble and answer: successful repairs a trip. */
  readonly repairs: readonly Float64Array[];
}

export type SimulationOutcome =
  | {
      readonly kind: 'simulated';
      readonly kits: readonly Simulated[];
      /** By kit: share of trips the kit survives and the first does not, and the other way round. */
      readonly against: readonly { readonly better: number; readonly worse: number }[];
    }
  | { readonly kind: 'stopped' };

/** Trips between two looks at whether to stop. */
const BLOCK = 1000;

/**
 * Draws trips and walks every kit through each of them (M12): stratified by the number of failures, the same trips and the
 * same luck for every kit. Where no stock runs short the mean is M5's chance exactly; the interval is Wilson's at 95 %,
 * with the trials that an undivided sample of the same variance would have had.
 */
export function simulate(
  law: TripLaw,
  kits: readonly SimulatedKit[],
  options: SimulationOptions,
): SimulationOutcome {
  const expected = law.expected.reduce((sum, e) => sum + e, 0);
  const strata = strataOf(expected, options.trips);
  const total = strata.reduce((sum, s) => sum + s.trips, 0);
  const tallies = kits.map((kit) => new Tally(kit, law.expected.length));
  const against = kits.map(() => ({ better: 0, worse: 0 }));
  if (expected > 0) {
    const drawKind = kindDrawer(law.expected);
    let done = 0;
    for (const stratum of strata) {
      if (stratum.trips === 0) continue;
      const next = options.randomness(stratum.failures);
      const drawn = {
        kinds: new Int32Array(stratum.failures),
        fate: new Float64Array(stratum.failures),
        luck: new Float64Array(stratum.failures),
      };
      for (const tally of tallies) tally.open(stratum);
      for (let trip = 0; trip < stratum.trips; trip++) {
        if (done % BLOCK === 0) {
          if (options.shouldStop?.() === true) return { kind: 'stopped' };
          options.onProgress?.(done, total);
        }
        for (let at = 0; at < stratum.failures; at++) {
          drawn.kinds[at] = drawKind(next());
          drawn.fate[at] = next();
          drawn.luck[at] = next();
        }
        let first = false;
        tallies.forEach((tally, k) => {
          const home = tally.walk(drawn);
          if (k === 0) first = home;
          const pair = against[k];
          if (pair === undefined || home === first) return;
          const share = stratum.weight / stratum.trips;
          if (home) pair.better += share;
          else pair.worse += share;
        });
        done += 1;
      }
      for (const tally of tallies) tally.close();
    }
    options.onProgress?.(total, total);
  }
  const quiet = strata[0]?.weight ?? 1;
  return { kind: 'simulated', kits: tallies.map((tally) => tally.result(quiet, total)), against };
}

/** Counts for one kit, stratum by stratum. */
class Tally {
  private readonly step: ReturnType<typeof walker>;
  private readonly stranded: Float64Array;
  private readonly repairs: readonly Float64Array[];
  private stratum: Stratum = { failures: 0, weight: 0, trips: 1 };
  private home = 0;
  private mean = 0;
  private variance = 0;

  constructor(kit: SimulatedKit, troubles: number) {
    this.step = walker(kit);
    this.stranded = new Float64Array(troubles);
    this.repairs = kit.answers.map((answers) => new Float64Array(answers.length));
  }

  open(stratum: Stratum): void {
    this.stratum = stratum;
    this.home = 0;
  }

  walk(trip: DrawnTrip): boolean {
    const share = this.stratum.weight / this.stratum.trips;
    const at = this.step(trip, this.stratum.failures, (trouble, answer, held) => {
      if (!held) return;
      const counts = this.repairs[trouble];
      if (counts !== undefined) counts[answer] = (counts[answer] ?? 0) + share;
    });
    if (at < 0) {
      this.home += 1;
      return true;
    }
    const trouble = trip.kinds[at] ?? 0;
    this.stranded[trouble] = (this.stranded[trouble] ?? 0) + share;
    return false;
  }

  close(): void {
    const { weight, trips } = this.stratum;
    const p = this.home / trips;
    this.mean += weight * p;
    this.variance += (weight * weight * p * (1 - p)) / trips;
  }

  result(quiet: number, trips: number): Simulated {
    const unaided = Math.min(1, quiet + this.mean);
    // With nothing but successes (or failures) the variance says nothing: then every trip drawn counts as one trial.
    const trials = this.variance > 0 ? (unaided * (1 - unaided)) / this.variance : Math.max(1, trips);
    return {
      unaided,
      interval: wilson(unaided, trials),
      trips,
      stranded: this.stranded,
      repairs: this.repairs,
    };
  }
}
