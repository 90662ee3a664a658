import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { I18nProvider } from 'react-aria-components';
import { App } from './app.tsx';
import { PhotoStore } from './record/photos.ts';
import { listenForDemo } from './shell/asked-for-demo.ts';
import { openBrowserRecord } from './shell/browser-record.ts';
import { PlanDesk } from './shell/plan-desk.ts';
import { openSettings, showScheme } from './shell/settings.ts';
import { StoresProvider } from './shell/stores.tsx';
import { browserPort, watchVersions } from './shell/versions.ts';
import { openWords, sayIn } from './words/words.ts';
import { READER } from './worker/belongings/reader-name.ts';
import { PlannerClient } from './worker/client.ts';
import './look/tokens.css';
import './look/base.css';

const darkQuery = matchMedia('(prefers-color-scheme: dark)');
const settings = openSettings(storage(), show);
const client = new PlannerClient(
  () => new Worker(new URL('./worker/planner-worker.ts', import.meta.url), { type: 'module' }),
  () => settings.getState().wording,
);
client.warm();
// Starts when the first list is typed or the catalogue is looked into.
const reader = new PlannerClient(
  () => new Worker(new URL('./worker/planner-worker.ts', import.meta.url), { type: 'module', name: READER }),
  () => settings.getState().wording,
);
function show(scheme = settings.getState().scheme): void {
  showScheme(scheme, document.documentElement, darkQuery.matches);
}
darkQuery.addEventListener('change', () => show());

const root = document.getElementById('sheet');
if (root === null) throw new Error('the page has no sheet to draw on');
const [opened] = await Promise.all([
  openBrowserRecord(window),
  openWords(settings.getState().wording),
  faces(),
]);
// Offline for the first time the other words may not be there yet: the ones that are shown stay.
settings.subscribe(() => void sayIn(settings.getState().wording).catch(() => undefined));
const page = createRoot(root);
if (opened.ok) {
  listenForDemo(window);
  const versions = watchVersions(browserPort(import.meta.env.PROD));
  page.render(
    <StrictMode>
      <I18nProvider locale="en-GB">
        <StoresProvider
          stores={{
            record: opened.value.record,
            shelf: opened.value.shelf,
            photos: new PhotoStore(indexedDB, opened.value.shelf.openKey),
            client,
            reader,
            desk: new PlanDesk(client),
            settings,
            versions,
            today: () => new Date(),
          }}
        >
          <App />
        </StoresProvider>
      </I18nProvider>
    </StrictMode>,
  );
} else {
  // What is kept here was left as it is; only the sentence says what to do.
  page.render(<p className="sentence refused-record">{opened.error.message}</p>);
}

/** A browser may forbid it. */
function storage(): Storage | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}

/** Waits for the faces, but never long: they are in the cache from the second visit on. */
async function faces(): Promise<void> {
  const wait = new Promise<void>((resolve) => {
    setTimeout(resolve, 600);
  });
  await Promise.race([
    Promise.all(
      ['400 15px B612', '700 15px B612', '400 15px "B612 Mono"'].map((face) => document.fonts.load(face)),
    ),
    wait,
  ]);
}
