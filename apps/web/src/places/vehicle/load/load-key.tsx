import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Arrow, LimitLine, MassMark } from '../drawing/marks.tsx';

interface Scale {
  readonly kg: number;
  readonly scale: number;
}

/** What the marks of the side view mean, with an arrow of a round number of kilograms at each scale. */
export function LoadKey({ axle, berth }: { axle: Scale; berth: Scale }) {
  const { t } = useTranslation();
  const format = useFormat();
  const long = axle.kg * axle.scale;
  const short = berth.kg * berth.scale;
  return (
    <figcaption className="load-key small">
      <span>
        <svg width="22" height="56" aria-hidden="true">
          <Arrow x={11} from={28 + long / 2} to={28 - long / 2} width={10} />
        </svg>
        {t('load.keyAxle', { mass: format.load(axle.kg) })}
      </span>
      <span>
        <svg width="16" height="56" aria-hidden="true">
          <Arrow x={8} from={28 - short / 2} to={28 + short / 2} width={3} />
        </svg>
        {t('load.keyBerth', { mass: format.load(berth.kg) })}
      </span>
      <span>
        <svg width="24" height="56" aria-hidden="true">
          <MassMark x={12} y={28} r={9} />
        </svg>
        {t('load.keyMass')}
      </span>
      <span>
        <svg width="52" height="56" aria-hidden="true">
          <LimitLine x={26} y={26} half={24} />
        </svg>
        {t('load.keyLimit')}
      </span>
      <span>
        <svg width="40" height="56" aria-hidden="true">
          <rect x="3" y="16" width="34" height="24" className="d-elsewhere" />
        </svg>
        {t('load.keyElsewhere')}
      </span>
    </figcaption>
  );
}
