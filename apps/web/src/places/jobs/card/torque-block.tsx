import type { JobCard } from '@waymend/planner/answer/card-answer';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';

/** What each nut is done up to, between what limits, and what the figure stands on. */
export function TorqueBlock({ torques }: { torques: JobCard['torques'] }) {
  const { t } = useTranslation();
  const format = useFormat();
  if (torques.length === 0) return null;
  return (
    <Block title={t('jobs.card.torque')}>
      <ul className="card-rows">
        {alike(torques).map(({ places, torque: { nm, from, to, recorded, basis, sentences } }) => (
          <li key={places.join()} className="torque">
            <span className="torque-head">
              <span>{places.join('; ')}</span>
              <span className="torque-value">
                <b className={recorded ? '' : 'assumed'}>{format.torque(nm)}</b>
                <span className="small torque-limits">
                  <span className="keep">{t('jobs.card.least', { torque: format.torque(from) })}</span>
                  <span className="keep">{t('jobs.card.most', { torque: format.torque(to) })}</span>
                </span>
              </span>
            </span>
            <span className="small quiet">{basis}.</span>
            {sentences.map((sentence) => (
              <span key={sentence} className="small">
                {sentence}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </Block>
  );
}

interface Alike {
  readonly places: readonly string[];
  readonly torque: JobCard['torques'][number];
}

/** Fasteners that take the same torque for the same reasons stand in one row. */
function alike(torques: JobCard['torques']): readonly Alike[] {
  const rows = new Map<string, Alike>();
  for (const torque of torques) {
    const { place, ...rest } = torque;
    const key = JSON.stringify(rest);
    rows.set(key, { places: [...(rows.get(key)?.places ?? []), place], torque });
  }
  return [...rows.values()];
}
