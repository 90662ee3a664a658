import { useTranslation } from 'react-i18next';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { Block } from '../../../look/parts.tsx';
import { listed, placeVerdict } from './rail-words.ts';

/** Sizes that no millimetre of the rule stands for: lobes, cross and slot heads, squares, ring nuts. */
export function OtherSizes({ rail }: { rail: SizeRail }) {
  const { t } = useTranslation();
  if (rail.others.length === 0) return null;
  return (
    <Block title={t('rail.others')} aside={t('rail.othersAside')}>
      <ul className="rows at-size">
        {rail.others.map((other) => (
          <li key={`${other.drive} ${other.label}`}>
            <div>
              <p className={other.hole ? 'decides' : ''}>
                {t(`fittings.drive.${other.drive}`)}, {other.label}
              </p>
              <p className="small quiet">{listed([...new Set(other.places.map(({ title }) => title))], t)}</p>
            </div>
            <p className="end">{listed([...new Set(other.places.map((p) => placeVerdict(p, t)))], t)}</p>
          </li>
        ))}
      </ul>
    </Block>
  );
}
