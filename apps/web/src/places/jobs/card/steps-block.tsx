import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Balloon, Block } from '../../../look/parts.tsx';

/** The steps, one big row each; a press ticks it, and the next one is framed. The ticks outlive the page. */
export function StepsBlock({
  steps,
  done,
  onChange,
}: {
  steps: readonly string[];
  done: ReadonlySet<number>;
  onChange: (done: ReadonlySet<number>) => void;
}) {
  const { t } = useTranslation();
  const next = steps.findIndex((_, n) => !done.has(n));
  const ticked = steps.filter((_, n) => done.has(n)).length;
  const tick = (n: number, isDone: boolean) => {
    const now = new Set(done);
    if (isDone) now.add(n);
    else now.delete(n);
    onChange(now);
  };
  return (
    <Block
      title={t('jobs.card.steps')}
      aside={<span role="status">{t('jobs.card.stepsDone', { done: ticked, count: steps.length })}</span>}
    >
      <ol className="steps">
        {steps.map((step, n) => (
          // The same words may stand twice: the place of a step is what names it.
          // biome-ignore lint/suspicious/noArrayIndexKey: steps of a card never change their order.
          <li key={n} className={n === next ? 'step next' : 'step'}>
            <Check isOn={done.has(n)} onChange={(isDone) => tick(n, isDone)}>
              <span className="step-words">
                <Balloon number={n + 1} />
                <span>{step}</span>
              </span>
            </Check>
          </li>
        ))}
      </ol>
      {ticked > 0 && (
        <p>
          <Button onPress={() => onChange(new Set())}>{t('jobs.card.startOver')}</Button>
        </p>
      )}
    </Block>
  );
}
