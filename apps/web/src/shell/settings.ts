/** How this device shows things; not part of the garage, so that a night screen here is not one elsewhere. */
export interface Settings {
  readonly scheme: 'system' | 'light' | 'dark' | 'night' | 'amber';
  readonly wording: 'british' | 'american';
  readonly torque: 'Nm' | 'lb-ft';
  /** The trip that is open. */
  readonly trip: string | null;
}

export interface SettingsStore {
  readonly getState: () => Settings;
  readonly subscribe: (listener: () => void) => () => void;
  readonly change: (fields: Partial<Settings>) => void;
}

const KEY = 'waymend.settings';
const SCHEME_KEY = 'waymend.scheme';
const SCHEMES = ['system', 'light', 'dark', 'night', 'amber'] as const;

/** Settings in the browser's small store; a browser that forbids it simply forgets them. */
export function openSettings(
  store: Storage | null,
  onScheme: (scheme: Settings['scheme']) => void,
): SettingsStore {
  let state = read(store);
  const listeners = new Set<() => void>();
  return {
    getState: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    change: (fields) => {
      state = { ...state, ...fields };
      try {
        store?.setItem(KEY, JSON.stringify(state));
        // A key of its own, read by scheme.js before the first paint.
        store?.setItem(SCHEME_KEY, state.scheme);
      } catch {
        // A full or forbidden store: the setting holds until the page is closed.
      }
      if (fields.scheme !== undefined) onScheme(fields.scheme);
      for (const listener of listeners) listener();
    },
  };
}

function read(store: Storage | null): Settings {
  let found: unknown = null;
  try {
    found = JSON.parse(store?.getItem(KEY) ?? 'null');
  } catch {
    found = null;
  }
  const of = (key: string): unknown =>
    typeof found === 'object' && found !== null && key in found ? Reflect.get(found, key) : undefined;
  const scheme = of('scheme');
  const trip = of('trip');
  return {
    scheme: SCHEMES.find((known) => known === scheme) ?? 'system',
    wording: of('wording') === 'american' ? 'american' : 'british',
    torque: of('torque') === 'lb-ft' ? 'lb-ft' : 'Nm',
    trip: typeof trip === 'string' ? trip : null,
  };
}

/** Shows a scheme at once; 'system' follows the device. */
export function showScheme(scheme: Settings['scheme'], root: HTMLElement, prefersDark: boolean): void {
  root.dataset['scheme'] = scheme === 'system' ? (prefersDark ? 'dark' : 'light') : scheme;
}
