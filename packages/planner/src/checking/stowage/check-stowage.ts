import type { StowProblem, Stowage } from '@waymend/core/stowing/stow-problem';
import type { Judgement } from './judge.ts';
import { judge } from './judge.ts';
import { lookUp } from './lain.ts';
import { roomFaults } from './room.ts';
import { stayFaults } from './stay.ts';

/** What a stowage says of itself. */
export interface StowClaims {
  readonly levels: readonly {
    readonly level: keyof Judgement['levels'];
    readonly value: number;
    readonly bound: number;
    readonly firstFit: number;
  }[];
  /** The rules it says are broken, once for each time. */
  readonly broken: readonly string[];
}

export interface StowReport {
  readonly ok: boolean;
  /** One plain sentence each. */
  readonly faults: readonly string[];
  readonly judgement: Judgement;
}

/** Rules that only a hand can break: said, but counted at no level. */
const BY_HAND: ReadonlySet<string> = new Set([
  'does-not-fit',
  'pocket-full',
  'pocket-over-limit',
  'bag-full',
  'bag-over-limit',
  'berth-over-limit',
  'berth-full',
  'wheel-room',
]);

/**
 * The independent check of a stowage (M8, M14): places, limits, hands, rules and levels worked out again from docs/model.md,
 * sharing nothing but the shape of the problem with what made it.
 */
export function checkStowage(problem: StowProblem, stowage: Stowage, claims: StowClaims): StowReport {
  const looked = lookUp(problem, stowage);
  const judgement = judge(problem, looked);
  const faults = [...looked.faults, ...roomFaults(problem, looked), ...stayFaults(problem, looked)];
  let equalSoFar = true;
  for (const { level, value, bound, firstFit } of claims.levels) {
    const found = judgement.levels[level];
    if (found !== value) faults.push(`Level ${level} comes to ${found}, not ${value}.`);
    if (bound > value) faults.push(`Level ${level} is ${value}, below what was called its bound, ${bound}.`);
    if (equalSoFar && found > firstFit) faults.push(`First-fit decreasing is better at ${level}.`);
    equalSoFar = equalSoFar && found === firstFit;
  }
  const said = new Map<string, number>();
  for (const rule of claims.broken) if (!BY_HAND.has(rule)) said.set(rule, (said.get(rule) ?? 0) + 1);
  for (const rule of new Set([...said.keys(), ...judgement.broken.keys()])) {
    const found = judgement.broken.get(rule) ?? 0;
    if (found !== (said.get(rule) ?? 0))
      faults.push(`${rule} is broken ${found} times and told ${said.get(rule) ?? 0} times.`);
  }
  return { ok: faults.length === 0, faults, judgement };
}
