import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { listed } from './rail-words.ts';

const SHOWN = 5;

/** The assumed sizes that this trip's repairs lean on most. */
export function MeasureNext({ rail }: { rail: SizeRail }) {
  const { t } = useTranslation();
  const format = useFormat();
  const places = rail.sizes
    .flatMap((s) => s.places.map((place) => ({ place, label: s.label })))
    .filter(({ place }) => place.status === 'assumed' && place.jobs.length > 0 && !place.farSide)
    .sort((a, b) => b.place.stops - a.place.stops)
    .slice(0, SHOWN);
  return (
    <Block title={t('rail.measureNext')} aside={t('rail.measureAside')}>
      {places.length === 0 ? (
        <p className="prose">{t('rail.allLookedAt')}</p>
      ) : (
        <ul className="rows at-size">
          {places.map(({ place, label }) => (
            <li key={place.joint}>
              <div>
                <p className="assumed">
                  {place.title}: {label}?
                </p>
                {place.couldBe.length > 0 && (
                  <p className="small quiet">{t('rail.couldBe', { sizes: listed(place.couldBe, t) })}</p>
                )}
              </div>
              <p className="small quiet end">
                {place.stops > 0 ? format.oneIn(-Math.expm1(-place.stops)) : ''}
              </p>
            </li>
          ))}
        </ul>
      )}
      <p>
        <Link href="/vehicle/walk" className="act as-link">
          {t('rail.toWalk')}
        </Link>
      </p>
    </Block>
  );
}
