import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import { listGarages } from '../record/garages.ts';
import type { OpenRecord } from '../record/open-record.ts';
import { openRecord } from '../record/open-record.ts';
import { chooseGarage, chosenGarage } from './chosen-garage.ts';
import type { GarageShelf } from './garage-shelf.ts';
import { openShelf } from './garage-shelf.ts';

/** Opens a garage of this browser's own database, with its clock, its randomness and its channel between tabs. */
export async function openBrowserRecord(
  view: Window & typeof globalThis,
): Promise<Result<{ readonly record: OpenRecord; readonly shelf: GarageShelf }>> {
  const kept = await listGarages(view.indexedDB);
  if (!kept.ok) return kept;
  const small = [store(() => view.sessionStorage), store(() => view.localStorage)];
  const name = chosenGarage(kept.value, small);
  const around = {
    indexedDB: view.indexedDB,
    now: () => Date.now(),
    randomId: () => view.crypto.randomUUID().replaceAll('-', ''),
    channel: (of: string) => ('BroadcastChannel' in view ? new view.BroadcastChannel(of) : null),
    later: (ms: number, then: () => void) => void view.setTimeout(then, ms),
  };
  const opened = await openRecord({ ...around, name });
  if (!opened.ok) return opened;
  // A tab keeps its garage, whatever another tab opens afterwards.
  chooseGarage(name, small.slice(0, 1));
  // A page that slept may have missed what other tabs said.
  view.document.addEventListener('visibilitychange', () => {
    if (view.document.visibilityState === 'visible') void opened.value.refresh();
  });
  const shelf = openShelf(name, {
    ...around,
    load: (key) => {
      chooseGarage(key, small);
      view.location.hash = '#/garage/begin';
      view.location.reload();
    },
  });
  return ok({ record: opened.value, shelf });
}

/** A browser may forbid it. */
function store(get: () => Storage): Storage | null {
  try {
    return get();
  } catch {
    return null;
  }
}
