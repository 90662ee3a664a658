/** What somebody on a walk round has left for later, kept on this device only: it is a bookmark and not part of the record. */
export interface SetAside {
  /** Joint places by key, in the order they were left. */
  readonly skipped: readonly string[];
  readonly outOfReach: readonly string[];
}

const NOTHING: SetAside = { skipped: [], outOfReach: [] };
const KEY = 'waymend.walk.';

/** The bookmark of a vehicle; a browser that forbids its store starts anew each time. */
export function readAside(vehicle: string): SetAside {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY + vehicle) ?? 'null');
    if (typeof found !== 'object' || found === null) return NOTHING;
    return {
      skipped: texts(Reflect.get(found, 'skipped')),
      outOfReach: texts(Reflect.get(found, 'outOfReach')),
    };
  } catch {
    return NOTHING;
  }
}

export function writeAside(vehicle: string, aside: SetAside): void {
  try {
    localStorage.setItem(KEY + vehicle, JSON.stringify(aside));
  } catch {
    // Forgotten when the page is closed.
  }
}

function texts(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];
}
