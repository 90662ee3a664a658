import type { ComparisonAnswer } from '@waymend/planner/answer/plan-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { ScaleBar } from '../sheet/scale-bar.tsx';

/** Nothing, the box from the shop, everything owned, and this kit: mass and trips that need help, on one scale. */
export function WithoutPlan({ rows }: { rows: readonly ComparisonAnswer[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  const most = Math.max(...rows.map((row) => 1 - row.unaided), 1e-9);
  return (
    <Block title={t('compare.without')} aside={t('compare.withoutAside')}>
      <ul className="kept-list">
        {rows.map((row) => (
          <li key={row.kind} className="without">
            <span className={row.kind === 'kit' ? 'decides' : ''}>
              {row.kind === 'boxed-set' ? row.title : t(`compare.kind.${row.kind}`)}
            </span>
            <span className="keep">{format.mass(row.massGrams)}</span>
            <ScaleBar share={(1 - row.unaided) / most} fill={row.kind === 'kit' ? 'solid' : 'outline'} />
            <span className="keep">{format.oneIn(1 - row.unaided)}</span>
            {row.breaks.length > 0 && (
              <span className="small quiet wide">
                {t('compare.breaks', { limits: row.breaks.join('; ') })}
              </span>
            )}
          </li>
        ))}
      </ul>
    </Block>
  );
}
