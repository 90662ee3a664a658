import type { NeedIndex } from '../choosing/problem.ts';
import type { Reach } from './fast.ts';
import type { Fit } from './grade.ts';
import { GRADES, worstOf } from './grade.ts';
import { RUST_FACTOR } from './fast.ts';
import type { Pull } from './fast.ts';
import type { Bench } from './bench.ts';
import { trainNeed } from './drive-train.ts';
import type { GradedNeed, NeedPool } from './need-pool.ts';
import type { Crew, Grade, Joint, SquareDrive } from '../repairing/scene.ts';

/** One way to turn: the pieces named outright, the needs behind them, its grade, and whether a drive handle swings. */
export interface TurnWay {
  readonly pieces: readonly number[];
  readonly needs: readonly NeedIndex[];
  readonly grade: Grade;
  readonly handle: boolean;
}

export function single(piece: number, fit: Fit): TurnWay[] {
  return fit === null ? [] : [{ pieces: [piece], needs: [], grade: fit, handle: false }];
}

export function torqueToUndo(joint: Joint): number {
  return joint.torque * (joint.rusty ? RUST_FACTOR : 1);
}

export function pullOf(joint: Joint, crew: Crew): Pull {
  return { torque: torqueToUndo(joint), stance: joint.stance, heaviest: crew.heaviest };
}

/** Trains already asked for, by what they were asked. */
export class Trains {
  private readonly known = new Map<string, GradedNeed>();
  private readonly pool: NeedPool;
  private readonly bench: Bench;

  constructor(pool: NeedPool, bench: Bench) {
    this.pool = pool;
    this.bench = bench;
  }

  of(drive: SquareDrive, reach: Reach, pull: Pull, socket: number): GradedNeed {
    // Only a piece that is itself part of trains has to be kept out of its own.
    const without = this.bench.trainParts.has(socket) ? { without: socket } : {};
    const key = `${drive}|${reach}|${pull.torque}|${pull.stance}|${without.without ?? ''}`;
    const known = this.known.get(key) ?? trainNeed(this.pool, this.bench, { drive, reach, pull, ...without });
    this.known.set(key, known);
    return known;
  }

  /** Trains that end in the bare square of their own handle. */
  bare(drive: SquareDrive, reach: Reach, pull: Pull): GradedNeed {
    const key = `bare ${drive}|${reach}|${pull.torque}|${pull.stance}`;
    const known =
      this.known.get(key) ?? trainNeed(this.pool, this.bench, { drive, reach, pull, bareEnd: true });
    this.known.set(key, known);
    return known;
  }
}

/** A socket, bit or foot (or nothing but the bare end) that sits so well, on every grade of train that turns it. */
export function onTrain(piece: number | null, fit: Fit, train: GradedNeed): TurnWay[] {
  if (fit === null) return [];
  const out: TurnWay[] = [];
  let last: NeedIndex | null = null;
  for (const grade of GRADES) {
    const need = train[grade];
    // The same need at a worse grade adds nothing.
    if (need === null || need === last) continue;
    last = need;
    const whole = worstOf(fit, grade);
    if (whole !== null)
      out.push({ pieces: piece === null ? [] : [piece], needs: [need], grade: whole, handle: true });
  }
  return out;
}
