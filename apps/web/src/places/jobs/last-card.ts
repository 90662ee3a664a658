/** The card that was open last, on this device: the way back after the phone was in a pocket. */
export interface LastCard {
  readonly job: string;
  readonly title: string;
}

const KEY = 'waymend.card';

export function readLastCard(): LastCard | null {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    if (typeof found !== 'object' || found === null) return null;
    const job: unknown = Reflect.get(found, 'job');
    const title: unknown = Reflect.get(found, 'title');
    return typeof job === 'string' && typeof title === 'string' ? { job, title } : null;
  } catch {
    return null;
  }
}

export function writeLastCard(card: LastCard): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(card));
  } catch {
    // Found again by its name.
  }
}
