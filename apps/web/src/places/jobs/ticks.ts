/** Steps of a card that are done, kept on this device so that a page that is loaded again goes on where it was. */
const KEY = 'waymend.steps.';

/** Numbers of the steps, from 0. */
export function readTicks(trip: string, job: string): ReadonlySet<number> {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(keyOf(trip, job)) ?? '[]');
    return new Set(Array.isArray(found) ? found.filter((n): n is number => Number.isInteger(n)) : []);
  } catch {
    return new Set();
  }
}

export function writeTicks(trip: string, job: string, done: ReadonlySet<number>): void {
  try {
    if (done.size === 0) localStorage.removeItem(keyOf(trip, job));
    else localStorage.setItem(keyOf(trip, job), JSON.stringify([...done]));
  } catch {
    // They hold until the page is closed.
  }
}

const keyOf = (trip: string, job: string): string => `${KEY}${trip}.${job}`;
