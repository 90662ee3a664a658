import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { More } from '../../../look/more.tsx';
import { finePercent } from '../sheet/worth-words.ts';
import type { Step } from './steps.ts';

/** The curve in words: one row for each point. */
export function PointsTable({ steps, done }: { steps: readonly Step[]; done: boolean }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <More title={t('kit.table')} summary={t('kit.tablePoints', { count: steps.length })}>
      <table className="curve-table">
        <caption className="hidden-text">{t('kit.curve')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('kit.mass')}</th>
            <th scope="col">{t('kit.pieces')}</th>
            <th scope="col">{t('kit.needHelp')}</th>
            <th scope="col">{t('kit.share')}</th>
            <th scope="col">{t('kit.proof')}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr key={step.grams} className={step.kit ? 'kit-here' : ''}>
              <td>
                {format.mass(step.grams)}
                {step.kit ? ` ${t('kit.thisKit')}` : ''}
              </td>
              <td>{format.count(step.pieces)}</td>
              <td>{format.oneIn(1 - step.unaided)}</td>
              <td>{finePercent(1 - step.unaided)}</td>
              <td>{step.proven ? t('kit.proven') : t('kit.within', { gap: format.percent(step.gap) })}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {!done && <p className="quiet small">{t('kit.curveGrowing')}</p>}
    </More>
  );
}
