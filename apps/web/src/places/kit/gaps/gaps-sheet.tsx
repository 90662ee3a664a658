import type { GapAnswer, PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useEffect, useRef, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { ScaleBar } from '../sheet/scale-bar.tsx';
import { tiny } from '../sheet/worth-words.ts';
import { WhyDialog } from '../why/why-dialog.tsx';
import { Buying } from './buying.tsx';
import { Cure } from './cure.tsx';
import { Renewed } from './renewed.tsx';
import './gaps.css';

const FIRST = 12;

/** What nothing aboard answers, largest first, each with its cures; and the money. */
export function GapsSheet({ answer, chosen }: { answer: PlanAnswer; chosen: string | null }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { gaps, standing } = answer;
  const at = gaps.findIndex(({ failure }) => failure === chosen);
  const [all, setAll] = useState(at >= FIRST);
  const [why, setWhy] = useState<string | null>(null);
  const shown = all ? gaps : gaps.slice(0, FIRST);
  const most = Math.max(...gaps.map((g) => g.worth), 1e-9);
  return (
    <div className="gaps">
      <header className="kit-head">
        <h1>{gaps.length === 0 ? t('gaps.none') : t('gaps.headline', { count: gaps.length })}</h1>
        <p className="quiet prose">{standing.step}</p>
      </header>
      <div className="gaps-columns">
        <Block title={t('gaps.title')} aside={t('gaps.aside', { chance: tiny(most, format, t) })}>
          {gaps.length === 0 && <p>{t('gaps.noneWords')}</p>}
          <ul className="gap-list">
            {shown.map((gap) => (
              <Gap
                key={gap.failure}
                gap={gap}
                bar={gap.worth / most}
                chosen={gap.failure === chosen}
                onWhy={() => setWhy(gap.failure)}
              />
            ))}
          </ul>
          {gaps.length > FIRST && (
            <div className="acts">
              <Button onPress={() => setAll(!all)}>
                {all ? t('kit.showFewer') : t('gaps.showAll', { count: gaps.length })}
              </Button>
            </div>
          )}
        </Block>
        <div className="gaps-side">
          <Buying answer={answer} onWhy={setWhy} />
          <Renewed />
        </div>
      </div>
      <WhyDialog answer={answer} what={why} onClose={() => setWhy(null)} />
    </div>
  );
}

function Gap({
  gap,
  bar,
  chosen,
  onWhy,
}: {
  gap: GapAnswer;
  bar: number;
  chosen: boolean;
  onWhy: () => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const ref = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen) ref.current?.scrollIntoView({ block: 'start' });
  }, [chosen]);
  const floor = gap.reason === 'floor';
  return (
    <li ref={ref} className={chosen ? 'gap chosen' : 'gap'}>
      <div className="gap-head">
        <h3>{gap.title}</h3>
        <span className="keep decides">
          {gap.worth > 0 ? tiny(gap.worth, format, t) : t(`gaps.reason.${gap.reason}`)}
        </span>
      </div>
      {!floor && (
        <div className="gap-bar">
          <ScaleBar share={bar} fill="hatched" />
        </div>
      )}
      <p className="small">{t('gaps.because', { words: gap.words })}</p>
      {gap.cures.length === 0 ? (
        <p className="small quiet">{t('gaps.noCure')}</p>
      ) : (
        <ul className="cure-list" aria-label={t('gaps.curesOf', { title: gap.title })}>
          {gap.cures.map((cure) => (
            <Cure key={cure.kind + cure.words} cure={cure} gap={gap} />
          ))}
        </ul>
      )}
      {!floor && (
        <div className="acts">
          <Button onPress={onWhy} label={t('gaps.whyOf', { title: gap.title })}>
            {t('gaps.why')}
          </Button>
        </div>
      )}
    </li>
  );
}
