const ASKED = /[?&]demo$/;

let asked = false;
const listeners = new Set<() => void>();

/**
 * Notes when the address asks for the demo, as the one that `npm start` prints does; also in a page that is open already.
 * The question is taken off the address, so that a page that is loaded again does not ask anew. Begin answers it.
 */
export function listenForDemo(view: Window): void {
  const look = (): void => {
    const { hash } = view.location;
    if (!ASKED.test(hash)) return;
    view.history.replaceState(view.history.state, '', hash.replace(ASKED, ''));
    set(true);
  };
  view.addEventListener('hashchange', look);
  look();
}

export const isDemoAskedFor = (): boolean => asked;

export function subscribeToDemo(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Asked once: going back to Begin later does not ask again. */
export const forgetDemo = (): void => set(false);

function set(now: boolean): void {
  asked = now;
  for (const listener of listeners) listener();
}
