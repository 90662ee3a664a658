import type { Scene, SceneBundle, ScenePiece } from '@waymend/core/repairing/scene';
import type { Plan, Violation } from './report.ts';

/** The plan's pieces and bundles as the scene has them; what it does not have is left out and reported. */
export interface Supplied {
  readonly carried: readonly ScenePiece[];
  readonly bought: readonly ScenePiece[];
  readonly bundles: readonly SceneBundle[];
}

export function lookUp(
  scene: Scene,
  plan: Plan,
): { readonly found: Supplied; readonly violations: readonly Violation[] } {
  const violations: Violation[] = [];
  const pieces = new Map(scene.pieces.map((p) => [p.id, p]));
  const bundles = new Map(scene.bundles.map((b) => [b.id, b]));
  const pick = <T>(ids: readonly string[], known: ReadonlyMap<string, T>, what: 'piece' | 'bundle'): T[] => {
    const seen = new Set<string>();
    return ids.flatMap((id) => {
      const item = known.get(id);
      if (item === undefined) {
        violations.push({
          id: `${what}-unknown`,
          about: id,
          sentence: `The plan names the ${what} ${id}, which is not on the table.`,
        });
        return [];
      }
      if (seen.has(id)) {
        violations.push({
          id: `${what}-twice`,
          about: id,
          sentence: `The plan names the ${what} ${id} twice; there is one of it.`,
        });
        return [];
      }
      seen.add(id);
      return [item];
    });
  };
  const found = {
    carried: pick(plan.carried, pieces, 'piece'),
    bought: pick(plan.bought, pieces, 'piece'),
    bundles: pick(plan.bundles, bundles, 'bundle'),
  };
  return { found, violations };
}

/** Every piece that comes is owned, bought or part of a set that comes; whole sets stay whole; money buys what is used. */
export function supplyViolations(scene: Scene, { carried, bought, bundles }: Supplied): readonly Violation[] {
  const out: Violation[] = [];
  const comes = new Set(carried.map((p) => p.id));
  const paid = new Set(bought.map((p) => p.id));
  const chosen = new Set(bundles.map((b) => b.id));
  const whole = new Set(scene.bundles.filter((b) => b.carry === 'whole').map((b) => b.id));

  for (const piece of carried) {
    const inSet = piece.bundles.some((b) => chosen.has(b));
    // An owned piece that lives in a whole set comes with the set or not at all.
    const free = piece.owned && !piece.bundles.some((b) => whole.has(b));
    if (free || paid.has(piece.id) || inSet) continue;
    const sentence = `${piece.name} comes along, but it is neither owned, nor bought, nor in a set that comes.`;
    out.push({ id: 'not-at-hand', about: piece.id, sentence });
  }
  for (const piece of bought) {
    if (piece.owned) {
      out.push({
        id: 'bought-owned',
        about: piece.id,
        sentence: `${piece.name} is bought although it is owned.`,
      });
    } else if (piece.cents === null) {
      out.push({ id: 'not-for-sale', about: piece.id, sentence: `${piece.name} is not sold singly.` });
    }
    if (!comes.has(piece.id)) {
      out.push({
        id: 'bought-left-home',
        about: piece.id,
        sentence: `${piece.name} is bought and then left at home.`,
      });
    }
  }
  for (const bundle of bundles) {
    const members = scene.pieces.filter((p) => p.bundles.includes(bundle.id));
    const missing = members.filter((p) => !comes.has(p.id));
    if (bundle.carry === 'whole' && missing.length > 0) {
      const sentence = `The set ${bundle.id} comes whole or not at all, and ${missing.length} of its pieces stay home.`;
      out.push({ id: 'bundle-split', about: bundle.id, sentence, found: missing.length, expected: 0 });
    } else if (!bundle.owned && missing.length === members.length) {
      const sentence = `The set ${bundle.id} is bought, and nothing of it comes along.`;
      out.push({ id: 'bundle-bought-for-nothing', about: bundle.id, sentence });
    }
  }
  for (const piece of scene.pieces) {
    if (piece.pin === 'always' && !comes.has(piece.id)) {
      out.push({
        id: 'pinned-left-home',
        about: piece.id,
        sentence: `${piece.name} is marked to come always and stays home.`,
      });
    }
    if (piece.pin === 'never' && comes.has(piece.id)) {
      out.push({
        id: 'pinned-carried',
        about: piece.id,
        sentence: `${piece.name} is marked to stay home always and comes along.`,
      });
    }
  }
  return out;
}
