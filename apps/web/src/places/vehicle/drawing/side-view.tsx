import type { DrawnAxle } from './axle.tsx';
import { Axle } from './axle.tsx';
import type { DrawnSpot } from './berth-mark.tsx';
import { BerthMark } from './berth-mark.tsx';
import { Dimension, MassMark } from './marks.tsx';
import { Outline } from './outline.tsx';
import type { ShapeId } from './shapes.ts';
import { SHAPES } from './shapes.ts';
import type { Paper, SideLayout } from './side-layout.ts';
import { sideLayout } from './side-layout.ts';
import './drawing.css';

/** Where something picked could go instead. */
export interface Ghost {
  readonly fromMm: number;
  readonly toMm: number;
  readonly toId: string;
  readonly text: string;
}

export interface SideViewProps {
  readonly title: string;
  readonly shape: ShapeId;
  readonly wheelbaseMm: number;
  readonly wheelbaseText: string;
  readonly spots: readonly DrawnSpot[];
  readonly axles: readonly DrawnAxle[];
  /** The centre of all mass, with its dimension in words; null leaves it out. */
  readonly centre: { readonly xMm: number; readonly text: string } | null;
  readonly paper: Paper;
  readonly picked: string | null;
  readonly onPick?: (id: string) => void;
  readonly ghost: Ghost | null;
}

/**
 * The vehicle from the side, drawn to one scale along and up: berths and where their mass acts, axle forces from below, their
 * limits. Its list of berths says the same in words, so for a reader of the screen it is one picture with a title.
 */
export function SideView(props: SideViewProps) {
  const { title, shape: id, wheelbaseMm, spots, axles, centre, paper, picked, onPick, ghost } = props;
  const shape = SHAPES[id](wheelbaseMm);
  const at = layoutOf(props);
  const byId = new Map(at.spots.map((p) => [p.id, p]));
  const marks = [...spots].sort((a, b) => Number(a.id === picked) - Number(b.id === picked));
  return (
    <svg className="drawing" viewBox={`0 0 ${at.width} ${at.height}`} role="img" aria-label={title}>
      <Outline shape={shape} wheelbase={wheelbaseMm} at={at} />
      {marks.map((spot) => {
        const placed = byId.get(spot.id);
        return placed === undefined ? null : (
          <BerthMark
            key={spot.id}
            spot={spot}
            placed={placed}
            at={at}
            paper={paper}
            picked={spot.id === picked}
            onPick={onPick}
          />
        );
      })}
      {ghost !== null && <GhostMark ghost={ghost} at={at} paper={paper} />}
      <Below {...props} at={at} />
      {axles.map((axle, n) => (
        <Axle key={axle.title} axle={axle} at={at} side={n === 0 ? 'start' : 'end'} />
      ))}
      {centre !== null && (
        <MassMark x={at.x(centre.xMm)} y={at.y(shape.sill + 40)} r={paper.width < 600 ? 8 : 13} />
      )}
    </svg>
  );
}

/** The layout a side view with these properties is drawn by; the key beside it reads the scales off it. */
export function layoutOf({
  shape,
  wheelbaseMm,
  spots,
  axles,
  paper,
}: Pick<SideViewProps, 'shape' | 'wheelbaseMm' | 'spots' | 'axles' | 'paper'>): SideLayout {
  const most = Math.max(1, ...axles.flatMap(({ kg, limitKg }) => [kg, limitKg ?? 0]));
  return sideLayout(SHAPES[shape](wheelbaseMm), spots, most, paper);
}

/** Wheelbase and the way to the centre of all mass, as dimensions under the ground. */
function Below({
  wheelbaseMm,
  wheelbaseText,
  centre,
  at,
  shape,
}: SideViewProps & { readonly at: SideLayout }) {
  const left = at.x(0);
  const right = at.x(wheelbaseMm);
  const first = at.ground + 26;
  const second = first + 26;
  return (
    <g>
      <Dimension
        from={left + 8}
        to={right - 8}
        y={first}
        text={wheelbaseText}
        textX={left + (right - left) * (at.width < 600 ? 0.5 : 0.62)}
      />
      {centre !== null && shape !== 'trailer' && (
        <>
          <path
            d={`M${at.x(centre.xMm)} ${at.y(SHAPES[shape](wheelbaseMm).sill)}V${second + 5}`}
            className="d-narrow"
          />
          <Dimension from={left + 8} to={at.x(centre.xMm)} y={second} text={centre.text} />
        </>
      )}
    </g>
  );
}

function GhostMark({ ghost, at, paper }: { ghost: Ghost; at: SideLayout; paper: Paper }) {
  const to = at.spots.find(({ id }) => id === ghost.toId);
  const x = at.x(ghost.toMm);
  const from = at.x(ghost.fromMm);
  const y = (to?.y ?? at.ground - 60) - paper.boxHeight * 1.15;
  const w = paper.boxWidth / 2 + 5;
  return (
    <g>
      <rect
        x={x - w}
        y={(to?.y ?? 0) - paper.boxHeight / 2 - 5}
        width={2 * w}
        height={paper.boxHeight + 10}
        className="d-elsewhere"
      />
      <path d={`M${from} ${y - 6}v12M${x} ${y - 6}v${paper.boxHeight * 0.6}`} className="d-narrow d-hand" />
      <Dimension from={from} to={x} y={y} text={ghost.text} red />
    </g>
  );
}
