import { useTranslation } from 'react-i18next';
import type { RailSize, SizeRail } from '@waymend/planner/views/size-rail';
import { CellMark, HatchPattern, PlaceMark, TieMark } from './cell-mark.tsx';
import { bare, cellIn, ends, ROWS } from './rail-data.ts';
import { sizeSaid } from './rail-words.ts';

/** One millimetre is one thumb. */
export const MM = 48;
const WIDTH = 358;
const RULE = 112;
const COLUMNS = 176;
const EACH = 31;
const SQUARE = 23;

/** The rule upright: places to its left, pieces to its right, one row of a thumb's height for every size. */
export function RailPhone({
  rail,
  flag,
  onFlag,
}: {
  rail: SizeRail;
  flag: RailSize | null;
  onFlag: (label: string) => void;
}) {
  const { t } = useTranslation();
  const { from, to } = ends(rail);
  const y = (mm: number) => (mm - from + 0.6) * MM;
  const height = (to - from + 1.2) * MM;
  const numbers = Array.from({ length: to - from + 1 }, (_, n) => from + n);
  const taken = new Set(rail.sizes.filter((s) => s.places.length > 0).map((s) => s.mm));
  const column = (n: number) => COLUMNS + n * EACH + EACH / 2;
  return (
    <div className="rail-phone">
      <div className="rail-phone-head small" aria-hidden="true">
        <span>{t('rail.placesHead')}</span>
        <span>mm</span>
        {ROWS.map((row) => (
          <span key={row} className="rail-phone-kind">
            {t(`rail.short.${row}`)}
          </span>
        ))}
      </div>
      <div className="rail-phone-body" style={{ height }}>
        <svg className="drawing" viewBox={`0 0 ${WIDTH} ${height}`} aria-hidden="true">
          <HatchPattern />
          <path d={`M${RULE} 0V${height}`} className="d-wide" />
          <path d={`M${COLUMNS - 6} 0V${height}`} className="d-narrow" />
          {numbers.map((n) => (
            <g key={n}>
              <path d={`M${RULE} ${y(n)}h10M${RULE} ${y(n + 0.5)}h5`} className="d-narrow" />
              <text
                x={COLUMNS - 14}
                y={y(n) + 6}
                textAnchor="end"
                className={taken.has(n) ? 'rail-phone-number' : 'd-quiet'}
              >
                {n}
              </text>
              <path d={`M${COLUMNS} ${y(n + 0.5)}H${WIDTH}`} className="rail-faint" />
            </g>
          ))}
          {rail.sizes.map((s) => (
            <Size key={s.label} size={s} y={y(s.mm)} column={column} />
          ))}
          {flag !== null && (
            <rect x="1.5" y={y(flag.mm) - MM / 2} width={WIDTH - 3} height={MM} className="d-wide d-hand" />
          )}
        </svg>
        {rail.sizes
          .filter((s) => s.places.length > 0 || s.cells.length > 0)
          .map((s) => (
            <button
              key={s.label}
              id={`rail-${s.label.replaceAll(/[^a-z0-9]/g, '-')}`}
              type="button"
              className={s.system === 'inch' ? 'rail-hit inch' : 'rail-hit'}
              style={{ top: y(s.mm) - MM / 2 }}
              aria-pressed={s.label === flag?.label}
              aria-label={sizeSaid(s, t)}
              onClick={() => onFlag(s.label)}
            />
          ))}
      </div>
    </div>
  );
}

function Size({ size, y, column }: { size: RailSize; y: number; column: (n: number) => number }) {
  const inch = size.system === 'inch';
  const apart = Math.min(6.5, (RULE - 34) / Math.max(1, size.places.length));
  const last = RULE - 8 - size.places.length * apart;
  return (
    <g>
      {size.places.map((place, n) => (
        <PlaceMark
          key={`${place.joint} ${place.farSide}`}
          x={RULE - 8 - n * apart}
          y={inch ? y + 17 : y}
          length={inch ? 10 : 24}
          status={place.status}
          isKey={place.drive === 'hex-key'}
          upright
        />
      ))}
      {size.places.length > 0 && (
        <text x={last - 2} y={(inch ? y + 17 : y) + 5} textAnchor="end" className="d-quiet">
          {inch ? `${bare(size.label)} in, ${size.places.length}` : size.places.length}
        </text>
      )}
      {size.tie !== null && !inch && <TieMark x={RULE + 21} y={y + 15} tie={size.tie} />}
      {ROWS.map((row, n) => {
        const cell = cellIn(size, row);
        return cell === null ? null : <CellMark key={row} cell={cell} x={column(n)} y={y} size={SQUARE} />;
      })}
    </g>
  );
}
