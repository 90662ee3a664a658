import { MM_PER_INCH } from '@waymend/core/quantity/units';
import { useTranslation } from 'react-i18next';
import type { RailSize, SizeRail } from '@waymend/planner/views/size-rail';
import { useFormat } from '../../../format/use-format.ts';
import { CellMark, HatchPattern, PlaceMark, TieMark } from './cell-mark.tsx';
import type { Row } from './rail-data.ts';
import { bare, cellIn, ends, ROWS } from './rail-data.ts';
import { fitWords } from './rail-words.ts';

const WIDTH = 1290;
const GUTTER = 140;
const INCH_Y = 46;
const PITCH = 8;
const ROW = 34;

/** The rule across a desk: inches above, millimetres below, places stacked on it, pieces in rows under it. */
export function RailDesk({
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
  const scale = (WIDTH - GUTTER - 24) / Math.max(1, to - from);
  const x = (mm: number) => GUTTER + 8 + (mm - from) * scale;
  const metric = rail.sizes.filter((s) => s.system === 'metric');
  const inch = rail.sizes.filter((s) => s.system === 'inch');
  const tallest = Math.max(3, ...metric.map((s) => s.places.length));
  const hanging = Math.max(0, ...inch.map((s) => s.places.length));
  const mmY = INCH_Y + 44 + (hanging + tallest) * PITCH + 24;
  const rowsY = mmY + 62;
  const bottom = rowsY + ROWS.length * ROW;
  const square = Math.min(24, scale * 0.86);
  const rowY = (row: Row) => rowsY + (ROWS.indexOf(row) + 0.5) * ROW;
  return (
    <svg className="drawing rail-desk" viewBox={`0 0 ${WIDTH} ${bottom + 8}`} aria-hidden="true">
      <HatchPattern />
      {rail.sizes
        .filter((s) => s.places.length > 0)
        .map((s) => (
          <path
            key={s.label}
            d={`M${x(s.mm)} ${s.system === 'inch' ? INCH_Y : mmY + 26}V${bottom}`}
            className="rail-faint"
          />
        ))}
      <InchAxis inch={inch} x={x} from={from} to={to} />
      <MetricAxis rail={rail} x={x} y={mmY} from={from} to={to} />
      <text x="0" y={mmY + 42} className="rail-label">
        {t('rail.turnAndHold')}
      </text>
      <path d={`M0 ${rowsY - 8}H${WIDTH}`} className="d-narrow" />
      {ROWS.map((row) => (
        <g key={row}>
          <text x="0" y={rowY(row) + 5} className="rail-label">
            {t(`rail.row.${row}`)}
          </text>
          <path d={`M0 ${rowY(row) + ROW / 2}H${WIDTH}`} className="rail-faint" />
        </g>
      ))}
      {metric.map((s) => (
        <g key={s.label}>
          {s.places.map((place, n) => (
            <PlaceMark
              key={`${place.joint} ${place.farSide}`}
              x={x(s.mm)}
              y={mmY - 9 - n * PITCH}
              length={square}
              status={place.status}
              isKey={place.drive === 'hex-key'}
            />
          ))}
          {s.places.length > 0 && (
            <text
              x={x(s.mm)}
              y={mmY - 12 - s.places.length * PITCH}
              textAnchor="middle"
              className="d-quiet d-small"
            >
              {s.places.length}
            </text>
          )}
          {s.tie !== null && <TieMark x={x(s.mm)} y={mmY + 37} tie={s.tie} />}
        </g>
      ))}
      {inch.map((s) =>
        s.places.map((place, n) => (
          <PlaceMark
            key={`${place.joint} ${place.farSide}`}
            x={x(s.mm)}
            y={INCH_Y + 10 + n * PITCH}
            length={square}
            status={place.status}
            isKey={place.drive === 'hex-key'}
          />
        )),
      )}
      <Callouts rail={rail} x={x} />
      {flag !== null && (
        <path
          d={`M${x(flag.mm)} ${flag.system === 'inch' ? INCH_Y : mmY - 30}V${bottom}`}
          className="d-wide d-hand"
        />
      )}
      {rail.sizes.map((s) =>
        ROWS.map((row) => {
          const cell = cellIn(s, row);
          return cell === null ? null : (
            <CellMark
              key={`${s.label} ${row}`}
              cell={cell}
              x={x(s.mm)}
              y={rowY(row)}
              size={square}
              width={s.system === 'metric' && !Number.isInteger(s.mm) ? scale * 0.26 : square}
            />
          );
        }),
      )}
      {flag !== null && (
        <Flag
          x={x(flag.mm)}
          y={flag.system === 'inch' ? INCH_Y + 40 : mmY - 30 - (flag.places.length + 1) * PITCH}
          label={bare(flag.label)}
        />
      )}
      {rail.sizes
        .filter((s) => s.places.length > 0 || s.cells.length > 0)
        .map((s) => (
          <rect
            key={s.label}
            x={x(s.mm) - square / 2}
            y={s.system === 'inch' ? 0 : mmY - 40 - tallest * PITCH}
            width={square}
            height={s.system === 'inch' ? INCH_Y + 30 : bottom - mmY + 40 + tallest * PITCH}
            className="d-hit d-pick"
            onClick={() => onFlag(s.label)}
          />
        ))}
    </svg>
  );
}

function Flag({ x, y, label }: { x: number; y: number; label: string }) {
  const half = Math.max(22, label.length * 5 + 8);
  return (
    <g>
      <path
        d={`M${x - half} ${y - 22}H${x + half}V${y + 4}L${x} ${y + 18}L${x - half} ${y + 4}Z`}
        className="rail-flag"
      />
      <text x={x} y={y} textAnchor="middle" className="rail-flag-text">
        {label}
      </text>
    </g>
  );
}

interface AxisProps {
  readonly x: (mm: number) => number;
  readonly from: number;
  readonly to: number;
}

function InchAxis({ inch, x, from, to }: AxisProps & { readonly inch: readonly RailSize[] }) {
  const sixteenths = Array.from({ length: Math.ceil((to / MM_PER_INCH) * 16) + 1 }, (_, n) => n).filter(
    (n) => (n / 16) * MM_PER_INCH >= from && (n / 16) * MM_PER_INCH <= to,
  );
  const named = new Set(inch.filter((s) => s.places.length > 0).map((s) => s.label));
  return (
    <g>
      <text x="0" y={INCH_Y + 4} className="rail-label">
        in
      </text>
      <path d={`M${x(from)} ${INCH_Y}H${x(to)}`} className="d-wide" />
      {sixteenths.map((n) => (
        <path
          key={n}
          d={`M${x((n / 16) * MM_PER_INCH)} ${INCH_Y}v${n % 2 === 0 ? -10 : -5}`}
          className="d-narrow"
        />
      ))}
      {sixteenths
        .filter((n) => n % 2 === 0 || named.has(`${inchLabel(n)} in`))
        .map((n) => (
          <text
            key={n}
            x={x((n / 16) * MM_PER_INCH)}
            y={INCH_Y - 16}
            textAnchor="middle"
            className={named.has(`${inchLabel(n)} in`) ? 'rail-number' : 'd-quiet d-small'}
          >
            {inchLabel(n)}
          </text>
        ))}
    </g>
  );
}

/** Sixteenths as they are marked: 12 is '3/4', 18 is '1-1/8'. */
function inchLabel(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let above = sixteenths % 16;
  let below = 16;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  if (above === 0) return String(whole);
  return whole === 0 ? `${above}/${below}` : `${whole}-${above}/${below}`;
}

function MetricAxis({ rail, x, y, from, to }: AxisProps & { readonly rail: SizeRail; readonly y: number }) {
  const numbers = Array.from({ length: to - from + 1 }, (_, n) => from + n);
  const taken = new Set(rail.sizes.filter((s) => s.places.length > 0).map((s) => s.mm));
  const owned = new Set(rail.sizes.filter((s) => s.cells.length > 0).map((s) => s.mm));
  return (
    <g>
      <text x="0" y={y + 4} className="rail-label">
        mm
      </text>
      <path d={`M${x(from)} ${y}H${x(to)}`} className="d-wide" />
      {numbers.map((n) => (
        <g key={n}>
          <path d={`M${x(n)} ${y}v9`} className="d-narrow" />
          {n < to && <path d={`M${x(n + 0.5)} ${y}v5`} className="d-narrow" />}
          {(taken.has(n) || owned.has(n) || n % 5 === 0) && (
            <text
              x={x(n)}
              y={y + 24}
              textAnchor="middle"
              className={taken.has(n) ? 'rail-number' : 'd-quiet d-small'}
            >
              {n}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

/** What one would try on the inch heads of this vehicle, said beside them. */
function Callouts({ rail, x }: { rail: SizeRail; x: (mm: number) => number }) {
  const { t } = useTranslation();
  const format = useFormat();
  const heads = rail.sizes.filter((s) => s.system === 'inch' && s.places.length > 0);
  return (
    <>
      {heads.slice(0, 4).map((head) => {
        const fit = rail.fits.find((f) => f.head === head.label);
        if (fit === undefined) return null;
        const at = x(head.mm);
        const left = at > WIDTH - 420;
        return (
          <g key={head.label}>
            <path
              d={`M${at} ${INCH_Y + 22}L${at + (left ? -22 : 22)} ${INCH_Y + 40}h${left ? -8 : 8}`}
              className="d-narrow"
            />
            <text
              x={at + (left ? -36 : 36)}
              y={INCH_Y + 44}
              textAnchor={left ? 'end' : 'start'}
              className="d-window"
            >
              {fitWords(fit, t, format)}
            </text>
          </g>
        );
      })}
    </>
  );
}
