import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import { Link, useLocation } from 'wouter';
import { Button } from '../look/button.tsx';
import { PlaceSign } from './place-sign.tsx';
import { PLACES } from './places.ts';
import { useRecord, useVersions } from './stores.tsx';
import { TitleBlock } from './title-block.tsx';
import './sheet.css';

/** The drawing sheet: double frame, the places in its border, the title block in its corner. A strip and a bar on a phone. */
export function Sheet({ children }: { children: ReactNode }) {
  const { t } = useTranslation();
  const [where] = useLocation();
  const current = PLACES.find(({ id }) => where.startsWith(`/${id}`)) ?? PLACES[0];
  return (
    <div className="sheet">
      <a className="skip" href="#drawing" onClick={skip}>
        {t('app.skip')}
      </a>
      <div className="sheet-border">
        <nav className="places" aria-label={t('app.places')}>
          <ul>
            {PLACES.map(({ id }, n) => (
              <li key={id}>
                <Link
                  href={`/${id}`}
                  className={id === current?.id ? 'place here' : 'place'}
                  {...(id === current?.id ? { 'aria-current': 'page' as const } : {})}
                >
                  <span className="place-number small quiet" aria-hidden="true">
                    {n + 1}
                  </span>
                  <PlaceSign of={id} />
                  <span>{t(`app.${id}`)}</span>
                </Link>
              </li>
            ))}
          </ul>
        </nav>
        <Standing />
      </div>
      <div className="sheet-frame">
        <main id="drawing" tabIndex={-1}>
          {children}
        </main>
        <TitleBlock sheet={current?.id ?? 'garage'} />
      </div>
    </div>
  );
}

/** Keeps the hash for the places: the skip link only moves the focus. */
function skip(event: React.MouseEvent): void {
  event.preventDefault();
  document.getElementById('drawing')?.focus();
}

/** Whether what was entered is kept, and the way back. */
function Standing() {
  const { t } = useTranslation();
  const { saved, canUndo, canRedo, undo, redo } = useRecord();
  const { offline, newer, take } = useVersions();
  const words =
    saved === 'saved'
      ? t(newer !== 'none' ? 'app.newerHere' : offline ? 'app.savedOffline' : 'app.saved')
      : saved === 'saving'
        ? t('app.saving')
        : t('app.notSaved', { reason: saved.failed });
  // On a phone there is room for words only when they ask for something.
  const calm = newer === 'none' && (saved === 'saved' || saved === 'saving');
  return (
    <div className={calm ? 'standing calm' : 'standing'}>
      <p className="small quiet" role="status">
        {words}
      </p>
      <div className="acts">
        {newer !== 'none' && (
          // Only what is written may be left behind.
          <Button onPress={take} isDisabled={saved !== 'saved'}>
            {t('app.useNewer')}
          </Button>
        )}
        <Button onPress={() => void undo()} isDisabled={!canUndo}>
          {t('app.undo')}
        </Button>
        <Button onPress={() => void redo()} isDisabled={!canRedo}>
          {t('app.redo')}
        </Button>
      </div>
    </div>
  );
}
