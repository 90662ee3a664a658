import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { dayWords } from '../../../format/day-words.ts';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { useThings } from '../use-things.ts';
import { musterRows } from './groups.ts';
import { NewMuster } from './new-muster.tsx';
import { useMusterTitle } from './use-muster-title.ts';

/** Closed musters that are listed; older ones stay in the record. */
const CLOSED_SHOWN = 10;

/** The musters that are open, a new one, and those that were closed. */
export function MusterSheet() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const things = useThings();
  const titleOf = useMusterTitle();
  const all = Object.entries(garage.musters);
  const open = all.filter(([, muster]) => muster.closedOn === undefined);
  const closed = all
    .filter(([, muster]) => muster.closedOn !== undefined)
    .sort(([, a], [, b]) => ((a.closedOn ?? '') < (b.closedOn ?? '') ? 1 : -1));
  return (
    <div className="bags-sheet">
      <h1>
        {open.length === 0 ? t('bags.muster.noneOpen') : t('bags.muster.someOpen', { count: open.length })}
      </h1>
      {open.length > 0 && (
        <ul className="muster-list">
          {open.map(([id, muster]) => {
            const rows = things === null ? [] : musterRows(garage, id, things);
            const out = rows.reduce((sum, row) => sum + row.out, 0);
            const missing = rows.reduce((sum, row) => sum + row.missing, 0);
            return (
              <li key={id}>
                <Link href={`/bags/muster/${encodeURIComponent(id)}`} className="muster-link">
                  <span className="decides">{titleOf(muster)}</span>
                  <span>
                    {t('bags.muster.openLine', { on: dayWords(muster.openedOn), n: out - missing, of: out })}
                  </span>
                </Link>
              </li>
            );
          })}
        </ul>
      )}
      <NewMuster things={things} />
      {closed.length > 0 && (
        <Block
          title={t('bags.muster.closedTitle')}
          aside={t('bags.muster.closedCount', { count: closed.length })}
        >
          <ul className="muster-list">
            {closed.slice(0, CLOSED_SHOWN).map(([id, muster]) => (
              <li key={id}>
                <Link href={`/bags/muster/${encodeURIComponent(id)}`} className="muster-link">
                  <span>{titleOf(muster)}</span>
                  <span className="quiet">
                    {t('bags.muster.closedOn', { on: dayWords(muster.closedOn ?? '') })}
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        </Block>
      )}
    </div>
  );
}
