/** The key of the garage that a browser begins with. */
export const FIRST_GARAGE = 'garage';
const KEY = 'waymend.garage';

type Small = Pick<Storage, 'getItem' | 'setItem'>;

/**
 * Which garage a page opens: the one of this tab, else the one that was opened last on this device, else the first there is. One that
 * was removed meanwhile is not made anew.
 */
export function chosenGarage(kept: readonly string[], stores: readonly (Small | null)[]): string {
  for (const store of stores) {
    const wanted = read(store);
    if (wanted !== null && kept.includes(wanted)) return wanted;
  }
  return kept.includes(FIRST_GARAGE) ? FIRST_GARAGE : (kept[0] ?? FIRST_GARAGE);
}

/** Remembers it for this tab, and for tabs that are opened later. */
export function chooseGarage(key: string, stores: readonly (Small | null)[]): void {
  for (const store of stores)
    try {
      store?.setItem(KEY, key);
    } catch {
      // A full or forbidden store: the page opens the first garage.
    }
}

function read(store: Small | null): string | null {
  try {
    return store?.getItem(KEY) ?? null;
  } catch {
    return null;
  }
}
