import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import type { LeverRow } from './levers.ts';
import { leverSizes } from './levers.ts';

const NUT_X = 34;
const BAR_Y = 106;
const HEIGHT = 178;

/** The bar to scale, the pull as an arrow in kilograms at the hand, the measure from the nut to the hand below. */
export function LeverFigure({ row }: { row: LeverRow }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { pull, tighten } = row;
  const { pxPerMm, barPx, undoPx, tightenPx } = leverSizes(row);
  const hand = NUT_X + barPx;
  const measure = BAR_Y + 62;
  const ticks = Array.from(
    { length: Math.floor(pull.leverMm / 100) },
    (_, n) => NUT_X + (n + 1) * 100 * pxPerMm,
  );
  // A short bar leaves its words room on the far side of the hand.
  const before = barPx > 190;
  const words = before ? hand - 12 : hand + 14;
  const anchor = before ? 'end' : 'start';
  return (
    <figure className="lever">
      <svg viewBox={`0 0 330 ${HEIGHT}`} width="100%" aria-hidden="true" className="lever-drawing">
        <circle cx={NUT_X} cy={BAR_Y} r="19" className="line-narrow" />
        <path d={hexagon(NUT_X, BAR_Y, 12)} className="line-wide" />
        <path
          d={`M${NUT_X + 18} ${BAR_Y - 5}H${hand + 10}A5 5 0 0 1 ${hand + 10} ${BAR_Y + 5}H${NUT_X + 18}`}
          className="line-wide"
        />
        {[0, 4, 8].map((dx) => (
          <path key={dx} d={`M${hand - 4 + dx} ${BAR_Y - 5}V${BAR_Y + 5}`} className="line-knurl" />
        ))}
        <path d={`M${hand} ${BAR_Y - 12 - undoPx}V${BAR_Y - 18}`} className="line-wide" />
        <path d={`M${hand} ${BAR_Y - 8}L${hand - 6} ${BAR_Y - 22}H${hand + 6}Z`} className="solid" />
        <text x={words} y={BAR_Y - 46} textAnchor={anchor} className="lever-kg">
          {format.load(pull.kg)}
        </text>
        <text x={words} y={BAR_Y - 26} textAnchor={anchor} className="lever-text">
          {t('jobs.card.toUndo')}
        </text>
        {tighten !== null && (
          <>
            <path d={`M${hand} ${BAR_Y + 12 + tightenPx * 0.6}V${BAR_Y + 18}`} className="line-narrow" />
            <path d={`M${hand} ${BAR_Y + 9}L${hand - 4} ${BAR_Y + 19}H${hand + 4}Z`} className="solid" />
            <text x={words} y={BAR_Y + 30} textAnchor={anchor} className="lever-text">
              {t('jobs.card.toTighten', { pull: format.load(tighten.kg), torque: format.torque(tighten.nm) })}
            </text>
          </>
        )}
        <path
          d={`M${NUT_X} ${BAR_Y + 42}V${measure + 6}M${hand} ${BAR_Y + 42}V${measure + 6}`}
          className="line-narrow"
        />
        <path d={`M${NUT_X} ${measure}H${hand}`} className="line-narrow" />
        {ticks.map((x) => (
          <path key={x} d={`M${x} ${measure - 3}V${measure + 3}`} className="line-narrow" />
        ))}
        <path d={`M${NUT_X} ${measure}l9 -3v6ZM${hand} ${measure}l-9 -3v6Z`} className="solid" />
        <text x={(NUT_X + hand) / 2} y={measure - 7} textAnchor="middle" className="lever-text">
          {format.length(pull.leverMm)}
        </text>
      </svg>
      <figcaption className="lever-words">
        <span className="small quiet">{t('jobs.card.leverScale')}</span>
        <span>
          <b>{row.what}.</b> {pull.words}
        </span>
      </figcaption>
    </figure>
  );
}

function hexagon(x: number, y: number, r: number): string {
  const points = Array.from({ length: 6 }, (_, n) => {
    const a = (n * Math.PI) / 3;
    return `${(x + r * Math.cos(a)).toFixed(1)} ${(y + r * Math.sin(a)).toFixed(1)}`;
  });
  return `M${points.join('L')}Z`;
}
