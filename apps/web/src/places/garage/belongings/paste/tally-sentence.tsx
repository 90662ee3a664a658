import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import type { Tally } from './tally.ts';

/** What has been understood so far, in a sentence that keeps its place while one types. */
export function TallySentence({ tally, stale, empty }: { tally: Tally; stale: boolean; empty: boolean }) {
  const { t } = useTranslation();
  const format = useFormat();
  if (empty)
    return <p className="tally quiet">{t(stale ? 'belongings.readingNow' : 'belongings.nothingYet')}</p>;
  const { adds, doubtful, unknown } = tally;
  const parts = [
    doubtful === 0
      ? null
      : t('belongings.tallyDoubtful', { count: doubtful, number: format.count(doubtful) }),
    unknown === 0 ? null : t('belongings.tallyUnknown', { count: unknown, number: format.count(unknown) }),
  ].filter((part) => part !== null);
  return (
    <p className="tally" role="status">
      <span className="decides">{t('belongings.tally', { count: adds, number: format.count(adds) })}</span>{' '}
      {parts.length === 0 ? t('belongings.tallyClear') : parts.join(' ')}
    </p>
  );
}
