import { Arrow, MassMark } from './marks.tsx';
import type { PlacedSpot, SideLayout, Paper } from './side-layout.ts';

export interface DrawnSpot {
  readonly id: string;
  readonly name: string;
  readonly xMm: number;
  readonly roof: boolean;
  readonly kg: number;
  readonly assumed: boolean;
}

/** A berth: its box and its mass where it acts, an arrow for its load, a leader to its balloon. */
export function BerthMark({
  spot,
  placed,
  at,
  paper,
  picked,
  onPick,
}: {
  spot: DrawnSpot;
  placed: PlacedSpot;
  at: SideLayout;
  paper: Paper;
  picked: boolean;
  onPick: ((id: string) => void) | undefined;
}) {
  const { x, y, balloonX, number } = placed;
  const w = paper.boxWidth / 2;
  const h = paper.boxHeight / 2;
  // Wider as well as red: at night there is only one hue.
  const tone = picked ? 'd-hand d-picked' : '';
  const boxTop = y - h;
  const r = Math.min(h, w) * 0.52;
  const elbow = at.balloonY + paper.balloon + 10 + (balloonX === x ? 0 : 8);
  return (
    <g className={onPick === undefined ? undefined : 'd-pick'} onClick={() => onPick?.(spot.id)}>
      <path
        d={`M${balloonX} ${at.balloonY + paper.balloon}V${elbow}L${x} ${Math.min(elbow + Math.abs(balloonX - x) * 0.6, boxTop)}V${boxTop}`}
        className={`d-narrow ${tone}`}
      />
      <rect
        x={x - w}
        y={y - h}
        width={2 * w}
        height={2 * h}
        className={`d-wide d-paper ${spot.assumed ? 'd-assumed' : ''} ${tone}`}
      />
      <circle cx={x} cy={boxTop} r="2.5" className={picked ? 'd-hand-fill' : 'd-dot'} />
      <Arrow x={x} from={y + r} to={y + r + spot.kg * at.berthScale} width={3} />
      <MassMark x={x} y={y} r={r} tone={tone} />
      <circle cx={balloonX} cy={at.balloonY} r={paper.balloon} className={`d-narrow d-paper ${tone}`} />
      <text
        x={balloonX}
        y={at.balloonY + 4}
        textAnchor="middle"
        className={picked ? 'd-small d-red' : 'd-small'}
      >
        {number}
      </text>
      <rect x={balloonX - 24} y={at.balloonY - 24} width="48" height="48" className="d-hit" />
    </g>
  );
}
