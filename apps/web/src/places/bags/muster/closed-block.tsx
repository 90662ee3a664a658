import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block, Sentence } from '../../../look/parts.tsx';
import { LinkButton } from '../../../look/link-button.tsx';
import type { MusterRow } from './groups.ts';
import { rowWords } from './row-words.ts';
import type { Changed, Changing } from './use-changed.ts';

/** Most failures and things said at once; the rest are counted. */
const SHOWN = 8;

/** After closing: what is gone, which failures are answered less well now, and what to buy. */
export function ClosedBlock({ rows, changed }: { rows: readonly MusterRow[]; changed: Changing['changed'] }) {
  const { t } = useTranslation();
  const gone = rows.filter((row) => row.back < row.out || row.used > 0 || row.missingParts.length > 0);
  return (
    <>
      <Block title={t('bags.closed.gone')} aside={t('bags.closed.goneCount', { count: gone.length })}>
        {gone.length === 0 ? (
          <p>{t('bags.closed.nothingGone')}</p>
        ) : (
          <ul className="plain-rows">
            {gone.map((row) => (
              <li key={row.id}>
                {row.name}: {rowWords(row, t)}
              </li>
            ))}
          </ul>
        )}
      </Block>
      <Block title={t('bags.closed.changed')}>
        <div role="status" className="closed-change">
          {changed === null && <p className="quiet">{t('bags.closed.notAsked')}</p>}
          {changed === 'asked' && <p>{t('bags.closed.asking')}</p>}
          {changed !== null && changed !== 'asked' && 'refused' in changed && <p>{changed.refused}</p>}
          {changed !== null && changed !== 'asked' && 'kind' in changed && <Change of={changed} />}
        </div>
      </Block>
      <div className="acts">
        <LinkButton to="/bags/muster">{t('bags.closed.toList')}</LinkButton>
      </div>
    </>
  );
}

function Change({ of: { changed, restock } }: { of: Changed }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <>
      <Sentence strong>{changed.words}</Sentence>
      {changed.weaker.length > 0 && (
        <ul className="plain-rows">
          {changed.weaker.slice(0, SHOWN).map((w) => (
            <li key={w.title}>
              <span className="decides">{w.title}</span>
              {': '}
              {w.after === 0
                ? t('bags.closed.open', { before: inTen(w.before) })
                : t('bags.closed.weaker', { before: inTen(w.before), after: inTen(w.after) })}
              {w.now !== null && w.now !== w.job && (
                <span className="quiet"> {t('bags.closed.nowBy', { job: w.now })}</span>
              )}
            </li>
          ))}
        </ul>
      )}
      {changed.weaker.length > SHOWN && (
        <p className="quiet">{t('bags.andMore', { count: changed.weaker.length - SHOWN })}</p>
      )}
      {restock.length > 0 && (
        <>
          <h3>{t('bags.closed.restock')}</h3>
          <ul className="plain-rows">
            {restock.map((line, n) => (
              <li key={`${line.why} ${line.belonging ?? line.is ?? ''} ${n}`}>
                {t(`bags.closed.why.${line.why}`, {
                  name: line.name,
                  amount: Math.round(line.amount * 10) / 10,
                })}
                {line.cents !== null && (
                  <span className="quiet">
                    {' '}
                    {t('bags.closed.guide', { price: format.money(line.cents) })}
                  </span>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** A chance as 'n in 10', to the half. */
function inTen(chance: number): string {
  const tenths = Math.round(chance * 20) / 2;
  return chance > 0 && tenths === 0 ? '0.5' : String(tenths);
}
