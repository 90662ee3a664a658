/** What the page knows of its own version: whether it is kept for use without signal, and whether a newer one waits. */
export interface VersionState {
  /** Everything is in the cache: the next visit needs no signal. */
  readonly offline: boolean;
  /**
   * 'waiting': a newer version is here and starts when the owner says so. 'elsewhere': another tab has started it; this
   * one goes on with what it has loaded and should be loaded again.
   */
  readonly newer: 'none' | 'waiting' | 'elsewhere';
}

export interface Versions {
  readonly getState: () => VersionState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Starts the newer version by loading the page again; call it when everything is written. */
  readonly take: () => void;
}

/** What this needs of the browser, so that a test can play it. */
export interface VersionPort {
  readonly container: ServiceWorkerContainer | null;
  readonly reload: () => void;
  /** Calls back at the next change of place: nothing on a screen moves while somebody reads or types. */
  readonly atNextPlace: (then: () => void) => void;
  /** Calls back when the page is looked at again. */
  readonly onReturn: (then: () => void) => void;
}

/** Keeps the planner for use without signal, and lets a new version wait until it is asked for. */
export function watchVersions(port: VersionPort): Versions {
  let state: VersionState = { offline: false, newer: 'none' };
  let waiting: ServiceWorker | null = null;
  let taken = false;
  const listeners = new Set<() => void>();
  const set = (change: Partial<VersionState>): void => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };
  const found = (worker: ServiceWorker): void => {
    waiting = worker;
    port.atNextPlace(() => {
      if (state.newer === 'none') set({ newer: 'waiting' });
    });
  };
  const { container } = port;
  if (container !== null) {
    const had = container.controller !== null;
    container.addEventListener('controllerchange', () => {
      if (taken) port.reload();
      // The first one of all takes over from nobody.
      else if (had) port.atNextPlace(() => set({ newer: 'elsewhere' }));
    });
    void keep(container, port, found, () => set({ offline: true }));
  }
  return {
    getState: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take: () => {
      if (state.newer === 'elsewhere' || waiting === null) port.reload();
      else {
        taken = true;
        waiting.postMessage({ type: 'SKIP_WAITING' });
      }
    },
  };
}

async function keep(
  container: ServiceWorkerContainer,
  port: VersionPort,
  found: (worker: ServiceWorker) => void,
  ready: () => void,
): Promise<void> {
  try {
    const registration = await container.register('/sw.js');
    if (registration.waiting !== null) found(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const { installing } = registration;
      installing?.addEventListener('statechange', () => {
        if (installing.state === 'installed' && registration.active !== null) found(installing);
      });
    });
    port.onReturn(() => {
      registration.update().catch(() => undefined);
    });
    await container.ready;
    ready();
  } catch {
    // Private windows and old browsers keep nothing; the planner works for as long as there is a signal.
  }
}

/** The browser itself; versions are kept only of what was built. */
export function browserPort(built: boolean): VersionPort {
  return {
    container: built && 'serviceWorker' in navigator ? navigator.serviceWorker : null,
    reload: () => location.reload(),
    atNextPlace: (then) => addEventListener('hashchange', then, { once: true }),
    onReturn: (then) =>
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'visible') then();
      }),
  };
}
