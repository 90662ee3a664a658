import { Button } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Balloon, Block } from '../../../look/parts.tsx';
import type { LoadSpot } from '@waymend/planner/views/load-view';
import { ofLimit, verdict } from './words.ts';

/** The berths as the balloons number them; pressing one picks it. The same scale for every bar. */
export function BerthList({
  spots,
  picked,
  onPick,
}: {
  spots: readonly LoadSpot[];
  picked: string | null;
  onPick: (id: string | null) => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const most = Math.max(1, ...spots.flatMap(({ kg, limitKg }) => [kg, limitKg ?? 0]));
  return (
    <Block title={t('load.berths')} aside={t('load.berthsAside')}>
      <ul className="berth-list">
        {spots.map((spot, n) => (
          <li key={spot.id}>
            <Button
              className={spot.id === picked ? 'berth-row picked' : 'berth-row'}
              aria-pressed={spot.id === picked}
              aria-label={t('load.berthSaid', {
                number: n + 1,
                name: spot.name,
                detail: ofLimit(spot.kg, spot.limitKg, t, format),
                verdict: verdict(spot.marginKg, t, format),
              })}
              onPress={() => onPick(spot.id === picked ? null : spot.id)}
            >
              <Balloon number={n + 1} />
              <span className={spot.assumed ? 'berth-name assumed' : 'berth-name'}>{spot.name}</span>
              <Bar kg={spot.kg} limitKg={spot.limitKg} most={most} />
              <span className="berth-kg">{ofLimit(spot.kg, spot.limitKg, t, format)}</span>
            </Button>
          </li>
        ))}
      </ul>
    </Block>
  );
}

function Bar({ kg, limitKg, most }: { kg: number; limitKg: number | null; most: number }) {
  const share = (value: number) => `${Math.min(97, (value / most) * 97)}%`;
  return (
    <svg className="berth-bar" height="18" aria-hidden="true">
      <rect x="0" y="4" width={share(kg)} height="10" className="d-solid" />
      {limitKg !== null && <line x1={share(limitKg)} x2={share(limitKg)} y1="0" y2="18" className="d-wide" />}
    </svg>
  );
}
