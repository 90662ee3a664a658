import type { Scene } from '@waymend/core/repairing/scene';
import type { TroubleFinding } from './losses.ts';

/**
 * The exact chance that no trouble strands the vehicle when each is met by the job found for it, and stock is shared: the
 * bound of M5 takes a chord where this adds up every number of repairs that the stock allows.
 *
 * Troubles are independent Poisson streams. Of trouble t, expected x (1 - p) events cannot be put right whatever is aboard;
 * the other expected x p ask for their job's stock, one job's worth each, and the drive goes on while every word lasts. Words
 * that some job uses together are counted together, so the answer is exact for jobs with several stocks too.
 */
export function exactChance(
  scene: Scene,
  findings: readonly TroubleFinding[],
  aboard: ReadonlyMap<string, number>,
): number {
  let nepers = 0;
  const users: User[] = [];
  scene.trouble.forEach((trouble, n) => {
    const finding = findings[n];
    if (finding?.trouble !== trouble.id) throw new Error(`No finding for ${trouble.id}`);
    const p = finding.job === null ? 0 : finding.toolChance;
    nepers += trouble.expected * (1 - p);
    const uses = finding.job?.uses ?? [];
    if (uses.length > 0) users.push({ mean: trouble.expected * p, uses });
  });
  const within = clusters(users).reduce((product, cluster) => product * chanceWithin(cluster, aboard), 1);
  return Math.exp(-nepers) * within;
}

interface User {
  /** Expected repairs that ask for stock. */
  readonly mean: number;
  readonly uses: readonly { readonly of: string; readonly units: number }[];
}

/** Users that share a word, directly or through others. */
function clusters(users: readonly User[]): readonly (readonly User[])[] {
  const groups: { readonly words: Set<string>; readonly users: User[] }[] = [];
  for (const user of users) {
    const words = new Set(user.uses.map((u) => u.of));
    const joined = groups.filter((g) => [...words].some((w) => g.words.has(w)));
    const merged = { words, users: [user] };
    for (const g of joined) {
      for (const w of g.words) merged.words.add(w);
      merged.users.push(...g.users);
      groups.splice(groups.indexOf(g), 1);
    }
    groups.push(merged);
  }
  return groups.map((g) => g.users);
}

/** Chance that all that is asked for is aboard: convolution over what is left of each word. */
function chanceWithin(users: readonly User[], aboard: ReadonlyMap<string, number>): number {
  const words = [...new Set(users.flatMap((u) => u.uses.map((x) => x.of)))];
  const start = words.map((w) => Math.floor(aboard.get(w) ?? 0));
  let states = new Map<string, { readonly left: readonly number[]; readonly chance: number }>([
    [start.join(), { left: start, chance: 1 }],
  ]);
  for (const user of users) {
    const each = words.map((w) => user.uses.reduce((sum, u) => sum + (u.of === w ? u.units : 0), 0));
    const next = new Map<string, { readonly left: readonly number[]; readonly chance: number }>();
    for (const { left, chance } of states.values()) {
      let term = chance * Math.exp(-user.mean);
      for (let n = 0; ; n++) {
        const rest = left.map((l, i) => l - n * (each[i] ?? 0));
        if (rest.some((r) => r < 0)) break;
        const key = rest.join();
        next.set(key, { left: rest, chance: (next.get(key)?.chance ?? 0) + term });
        term *= user.mean / (n + 1);
        // Nothing more is added that a double could hold.
        if (term === 0) break;
      }
    }
    states = next;
  }
  return [...states.values()].reduce((sum, s) => sum + s.chance, 0);
}
