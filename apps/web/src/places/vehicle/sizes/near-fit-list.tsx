import { useTranslation } from 'react-i18next';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { fitWords } from './rail-words.ts';

/** Near fits of what is owned on what the vehicle takes; those that never fit come first, because they hurt. */
export function NearFitList({ rail }: { rail: SizeRail }) {
  const { t } = useTranslation();
  const format = useFormat();
  const never = rail.fits.filter((f) => f.grade === null);
  const some = rail.fits.filter((f) => f.grade !== null);
  if (rail.fits.length === 0) return null;
  return (
    <Block title={t('rail.nearFits')} aside={t('rail.nearAside')}>
      <ul className="rows near-fits">
        {never.map((fit) => (
          <li key={`${fit.tool} ${fit.head}`}>
            <svg width="18" height="18" aria-hidden="true">
              <path d="M1.5 1.5h15v15h-15ZM1.5 1.5l15 15M16.5 1.5l-15 15" className="d-narrow" />
            </svg>
            {fitWords(fit, t, format)}
          </li>
        ))}
        {some.map((fit) => (
          <li key={`${fit.tool} ${fit.head}`}>
            <svg width="18" height="18" aria-hidden="true">
              <path d="M1.5 1.5h15v15h-15Z" className="d-narrow" />
              <path d="M1.5 1.5v15h15Z" className="d-solid" />
            </svg>
            {fitWords(fit, t, format)}
          </li>
        ))}
      </ul>
    </Block>
  );
}
