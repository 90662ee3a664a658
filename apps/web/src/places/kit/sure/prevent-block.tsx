import type { SureAnswer } from '@waymend/planner/answer/sure-answer';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';

const FIRST = 10;

/** What renewing or checking before leaving adds, without a gram. */
export function PreventBlock({ answer }: { answer: SureAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const [all, setAll] = useState(false);
  const { prevent } = answer;
  return (
    <Block title={t('sure.prevent')} aside={t('sure.preventAside')}>
      <ul>
        {(all ? prevent : prevent.slice(0, FIRST)).map(({ failure, title, what, gain }) => (
          <li key={failure} className="sure-row">
            <span>{what}</span>
            <span>{format.oneIn(gain)}</span>
            <span className="small quiet">{title}</span>
          </li>
        ))}
      </ul>
      <div className="acts">
        {prevent.length > FIRST && (
          <Button onPress={() => setAll(!all)}>
            {all ? t('kit.showFewer') : t('gaps.showAll', { count: prevent.length })}
          </Button>
        )}
      </div>
      <p>
        <Link href="/kit/gaps" className="word-link">
          {t('sure.toGaps')}
        </Link>
      </p>
    </Block>
  );
}
