import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { SureAnswer } from '@waymend/planner/answer/sure-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { usePlan } from '../../../shell/stores.tsx';
import { AnyWay } from './any-way.tsx';
import { MeasureNextBlock } from './measure-next-block.tsx';
import { PreventBlock } from './prevent-block.tsx';
import { Spread } from './spread.tsx';
import type { SureState } from './use-sure.ts';
import { useSure } from './use-sure.ts';
import './sure.css';

/** How far the chance may be off, what comes in any case, and what would make the plan surer. */
export function SureSheet({ answer }: { answer: PlanAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { state, look, stop } = useSure(answer);
  const { kit, low, high } = answer.unaided;
  const said = {
    best: format.oneIn(1 - high),
    planned: format.oneIn(1 - kit),
    worst: format.oneIn(1 - low),
  };
  return (
    <div className="sure">
      <header className="kit-head">
        <h1>{t('sure.headline', said)}</h1>
        <p className="prose">{t('sure.why', said)}</p>
        <Spread best={1 - high} planned={1 - kit} worst={1 - low} words={t('sure.band', said)} />
        {state.kind === 'sure' && (
          <p className="prose">
            {t('sure.together', {
              best: format.oneIn(1 - state.answer.together.high),
              worst: format.oneIn(1 - state.answer.together.low),
            })}
          </p>
        )}
      </header>
      {state.kind === 'sure' ? (
        <Found answer={state.answer} />
      ) : (
        <Asking state={state} onLook={look} onStop={stop} />
      )}
    </div>
  );
}

function Asking({
  state,
  onLook,
  onStop,
}: {
  state: Exclude<SureState, { kind: 'sure' }>;
  onLook: () => void;
  onStop: () => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const { proving, fresh } = usePlan();
  const words = (): string => {
    if (state.kind === 'looking')
      return state.of === 0
        ? t('sure.starting')
        : t('sure.looking', { done: format.count(state.done), count: state.of });
    if (state.kind === 'stopped') return t('sure.stopped');
    if (state.kind === 'refused') return t('sure.refused', { sentence: state.sentence });
    return proving || !fresh ? t('sure.waiting') : t('sure.askWords');
  };
  return (
    <div className="sure-ask">
      <p className="prose" role="status">
        {words()}
      </p>
      <div className="acts">
        {state.kind === 'looking' ? (
          <Button onPress={onStop}>{t('sure.stop')}</Button>
        ) : (
          <Button onPress={onLook} isDisabled={proving || !fresh}>
            {state.kind === 'not-asked' ? t('sure.ask') : t('sure.again')}
          </Button>
        )}
      </div>
    </div>
  );
}

function Found({ answer }: { answer: SureAnswer }) {
  return (
    <div className="sure-columns">
      <MeasureNextBlock answer={answer} />
      <AnyWay answer={answer} />
      <PreventBlock answer={answer} />
    </div>
  );
}
