import type { Garage } from '@waymend/garage/record/schema';

/** How many of each catalogue entry are owned, and how many are on the buying list. */
export interface Owned {
  readonly have: number;
  readonly wanted: number;
}

export function ownedOf(belongings: Garage['belongings']): ReadonlyMap<string, Owned> {
  const owned = new Map<string, Owned>();
  for (const { is, copies, forSale, inside } of Object.values(belongings)) {
    if (is === undefined) continue;
    const box = inside === undefined ? undefined : belongings[inside];
    const before = owned.get(is) ?? { have: 0, wanted: 0 };
    const wanted = forSale || box?.forSale === true;
    owned.set(is, {
      have: before.have + (wanted ? 0 : copies),
      wanted: before.wanted + (wanted ? copies : 0),
    });
  }
  return owned;
}
