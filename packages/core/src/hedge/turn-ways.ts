import type { Bench } from './bench.ts';
import type { Crew, Joint } from '../repairing/scene.ts';
import { hexWays } from './turn-hex.ts';
import { flareWays, insideWays, ringNutWays } from './turn-other.ts';
import type { Trains, TurnWay } from './turn-way.ts';

/** Every way to undo and do up a joint's turning side (M2). */
export function turnWays(bench: Bench, trains: Trains, joint: Joint, crew: Crew): readonly TurnWay[] {
  switch (joint.drive) {
    case 'hex':
      return hexWays(bench, trains, joint, crew);
    case 'flare':
      return flareWays(bench, trains, joint, crew);
    case 'locknut-hex':
    case 'locknut-peg':
      return ringNutWays(bench, trains, joint, crew);
    default:
      return insideWays(bench, trains, joint, crew);
  }
}
