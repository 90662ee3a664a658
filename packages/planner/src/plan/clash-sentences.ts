import type { Outcome } from '@waymend/core/choosing/problem';
import { SCORE_UNIT } from '@waymend/core/choosing/problem';
import { MAX_LOSS } from '@waymend/core/choosing/clashes';
import type { BuiltProblem } from '@waymend/core/repairing/build-problem';
import { chanceOfLoss } from '../explain/reading.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import { massText } from '../words/mass.ts';

type NoPlan = Extract<Outcome, { kind: 'no-plan' }>;

/** What was asked, as far as a clash is about it. `chance`: the one a least-mass aim wants, 0..1; else null. */
interface Asked {
  readonly built: BuiltScene;
  readonly stated: BuiltProblem;
  readonly chance: number | null;
}

/** Why nothing satisfies the limits: which clash, and by how much each would have to give (M6). */
export function clashSentences(asked: Asked, outcome: NoPlan): readonly string[] {
  const { stated, built } = asked;
  const out: string[] = [];
  for (const need of outcome.unmeetable ?? [])
    out.push(
      `Nothing that may come along does this, and every kit must: ${stated.needs[need]?.words.join(', ') ?? 'a need of the floor'}.`,
    );
  for (const piece of outcome.unobtainable ?? []) {
    out.push(
      `"${built.scene.pieces[piece]?.name ?? 'A piece'}" is marked always, but it is neither owned nor affordable.`,
    );
  }
  for (const { limit, shortBy } of outcome.clashes) out.push(clash(limit, shortBy, asked));
  if (out.length === 0) out.push('No kit satisfies all the limits at once; loosen the tightest of them.');
  return out;
}

function clash(limit: string, shortBy: number, { built, chance }: Asked): string {
  const [kind = '', ...rest] = limit.split(' ');
  const name = rest.join(' ');
  switch (kind) {
    case 'mass':
      return `What has to come weighs ${upwards(shortBy)} more than the mass limit allows.`;
    case 'volume':
      return `What has to come takes ${Math.ceil(shortBy / 100) / 10} l more than the volume limit allows.`;
    case 'money':
      return `What has to be bought costs ${(shortBy / 100).toFixed(2)} more than the budget.`;
    case 'berth':
      return `The berth "${built.garage.berths[name]?.name ?? name}" would be ${upwards(shortBy)} over its limit.`;
    case 'load':
      return `The vehicle itself sets the limit: ${loadWords(name)} would be ${upwards(shortBy)} over; take other loads out first.`;
    default:
      if (limit === MAX_LOSS && chance !== null) {
        const best = chanceOfLoss(-Math.log(chance) / SCORE_UNIT + shortBy);
        return `No kit reaches a chance of ${Number((chance * 100).toFixed(3))} %; the best that can be had is about ${(best * 100).toFixed(1)} %.`;
      }
      return `The limit "${limit}" is short by ${shortBy}.`;
  }
}

/** Rounded up, so that giving way by what is said is enough. */
function upwards(grams: number): string {
  const step = grams >= 100_000 ? 1000 : grams >= 10_000 ? 100 : grams >= 1000 ? 10 : 1;
  return massText(Math.ceil(grams / step) * step);
}

function loadWords(row: string): string {
  const words: Readonly<Record<string, string>> = {
    front: 'the front axle',
    rear: 'the rear axle',
    gross: 'the gross mass',
    roof: 'the roof',
    'tyres-front': 'the front tyres',
    'tyres-rear': 'the rear tyres',
  };
  return words[row] ?? row;
}
