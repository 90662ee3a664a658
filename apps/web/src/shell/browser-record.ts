import type { Result } from '@waymend/core/result';
import type { OpenRecord } from '../record/open-record.ts';
import { openRecord } from '../record/open-record.ts';

/** The one garage of this page. */
const NAME = 'garage';

/** Opens the record in this browser's own database, with its clock, its randomness and its channel between tabs. */
export async function openBrowserRecord(view: Window & typeof globalThis): Promise<Result<OpenRecord>> {
  const opened = await openRecord({
    name: NAME,
    indexedDB: view.indexedDB,
    now: () => Date.now(),
    randomId: () => view.crypto.randomUUID().replaceAll('-', ''),
    channel: (name) => ('BroadcastChannel' in view ? new view.BroadcastChannel(name) : null),
    later: (ms, then) => void view.setTimeout(then, ms),
  });
  // A page that slept may have missed what other tabs said.
  if (opened.ok)
    view.document.addEventListener('visibilitychange', () => {
      if (view.document.visibilityState === 'visible') void opened.value.refresh();
    });
  return opened;
}
