import type { Garage } from '@waymend/garage/record/schema';
import { grams } from '@waymend/core/quantity/units';
import type { Scene, ScenePiece } from '@waymend/core/repairing/scene';

/** A box without what is in it. Like kit without a berth of its own it rides where the kit rides. */
export type Case = Pick<ScenePiece, 'id' | 'grams' | 'berth'>;

/** Cases of the sets that a choice carries whole; a set that is opened up leaves its case at home. */
export function casesCarried(scene: Scene, bundles: readonly number[]): readonly Case[] {
  return bundles.flatMap((b) => {
    const bundle = scene.bundles[b];
    return bundle?.carry === 'whole' ? [{ id: bundle.id, grams: bundle.caseGrams, berth: null }] : [];
  });
}

/** Cases of the boxes somebody owns, as they come when a box is simply taken along. */
export function casesOwned(garage: Garage, only?: string): readonly Case[] {
  return Object.entries(garage.belongings).flatMap(([id, { set, forSale }]) =>
    set === undefined || forSale || (only !== undefined && id !== only)
      ? []
      : [{ id, grams: grams(Math.round(set.caseGrams)), berth: null }],
  );
}

export function gramsOf(things: readonly Pick<ScenePiece, 'grams'>[]): number {
  return things.reduce((sum, t) => sum + t.grams, 0);
}
