import type { Garage } from '@waymend/garage/record/schema';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../../look/button.tsx';
import { LineMend } from './line-mend.tsx';
import { LineRow } from './line-row.tsx';
import type { Decision, PaperLine } from './paper-lines.ts';
import './line-list.css';

const AT_FIRST = 120;

export interface LineListProps {
  readonly lines: readonly PaperLine[];
  readonly onDecide: (key: string, decision: Decision | null) => void;
  readonly taught: Garage['words'];
}

const needsLook = ({ parts }: PaperLine): boolean =>
  parts.some(({ state }) => state === 'doubtful' || state === 'unknown');

/** Each line as it was understood, in the order of the paper; one may be opened and mended. */
export function LineList({ lines, onDecide, taught }: LineListProps) {
  const { t } = useTranslation();
  const [most, setMost] = useState(AT_FIRST);
  const [onlyDoubt, setOnlyDoubt] = useState(false);
  const [mending, setMending] = useState<string | null>(null);
  const doubts = lines.filter(needsLook).length;
  const wanted = onlyDoubt ? lines.filter(needsLook) : lines;
  const mended =
    mending === null ? undefined : lines.find(({ parts }) => parts.some(({ key }) => key === mending));
  return (
    <>
      {doubts > 0 && doubts < lines.length && (
        <div className="acts">
          <Button onPress={() => setOnlyDoubt(!onlyDoubt)}>
            {t(onlyDoubt ? 'belongings.allLines' : 'belongings.onlyDoubt', { count: doubts })}
          </Button>
        </div>
      )}
      <ol className="lines" aria-label={t('belongings.lines')}>
        {wanted.slice(0, most).map((line) => (
          <LineRow key={line.number} line={line} onDecide={onDecide} onMend={setMending} />
        ))}
      </ol>
      {wanted.length > most && (
        <Button onPress={() => setMost(most + 500)}>
          {t('belongings.moreLines', { count: wanted.length - most })}
        </Button>
      )}
      {mended !== undefined && (
        <LineMend line={mended} onDecide={onDecide} taught={taught} onClose={() => setMending(null)} />
      )}
    </>
  );
}
