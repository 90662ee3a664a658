import type { Outline } from '../../../worker/bags/protocol.ts';

export interface SilhouetteProps {
  readonly outline: Outline;
  /** Pixels; the long side lies across. */
  readonly width: number;
  readonly height: number;
}

/** A piece as it lies in its pocket, in outlines of our own: the kind is drawn, the size is true. */
export function Silhouette({ outline, width, height }: SilhouetteProps) {
  const { solid, paper } = SHAPES[outline](width, height);
  return (
    <>
      <path d={solid} className="piece-solid" />
      {paper !== '' && <path d={paper} className="piece-paper" />}
    </>
  );
}

interface Shape {
  readonly solid: string;
  /** Holes, drawn in paper. */
  readonly paper: string;
}

const n = (x: number): string => x.toFixed(1);
const rect = (x: number, y: number, w: number, h: number): string =>
  `M${n(x)} ${n(y)}h${n(w)}v${n(h)}h${n(-w)}Z`;
const circle = (x: number, y: number, r: number): string =>
  `M${n(x - r)} ${n(y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
const hexagon = (x: number, y: number, r: number): string =>
  `${[0, 1, 2, 3, 4, 5]
    .map(
      (k) =>
        `${k === 0 ? 'M' : 'L'}${n(x + r * Math.cos((k * Math.PI) / 3))} ${n(y + r * Math.sin((k * Math.PI) / 3))}`,
    )
    .join('')}Z`;

const SHAPES: Readonly<Record<Outline, (w: number, h: number) => Shape>> = {
  wrench: (w, h) => {
    const r = Math.min(h / 2, w / 5);
    const y = h / 2;
    return {
      solid: circle(r, y, r) + rect(r, y - r * 0.36, w - 2 * r, r * 0.72) + circle(w - r, y, r),
      paper: hexagon(r, y, r * 0.58) + rect(w - r * 1.05, y - r * 0.4, r * 1.1, r * 0.8),
    };
  },
  socket: (w, h) => ({
    solid: rect(0, 0, w * 0.58, h) + rect(w * 0.58, h * 0.13, w * 0.42, h * 0.74),
    paper: rect(0, h * 0.28, w * 0.1, h * 0.44),
  }),
  ratchet: (w, h) => {
    const r = Math.min(h / 2, w / 5);
    const y = h / 2;
    return {
      solid:
        circle(r, y, r) +
        rect(r, y - r * 0.34, w * 0.45, r * 0.68) +
        rect(w * 0.45, y - r * 0.6, w * 0.55, r * 1.2),
      paper: rect(r * 0.7, y - r * 0.3, r * 0.6, r * 0.6),
    };
  },
  bar: (w, h) => ({
    solid:
      rect(0, 0, w * 0.14, h) +
      rect(w * 0.14, h * 0.22, w * 0.8, h * 0.56) +
      rect(w * 0.94, h * 0.3, w * 0.06, h * 0.4),
    paper: '',
  }),
  pliers: (w, h) => {
    const y = h / 2;
    return {
      solid:
        `M0 ${n(y - h * 0.06)}L${n(w * 0.3)} ${n(y - h * 0.3)}L${n(w * 0.42)} ${n(y - h * 0.12)}L${n(w)} 0V${n(h * 0.26)}L${n(w * 0.42)} ${n(y + h * 0.1)}Z` +
        `M0 ${n(y + h * 0.06)}L${n(w * 0.3)} ${n(y + h * 0.3)}L${n(w * 0.42)} ${n(y + h * 0.12)}L${n(w)} ${n(h)}V${n(h * 0.74)}L${n(w * 0.42)} ${n(y - h * 0.1)}Z`,
      paper: circle(w * 0.34, y, Math.max(1, h * 0.07)),
    };
  },
  driver: (w, h) => ({
    solid: rect(0, h * 0.36, w * 0.58, h * 0.28) + rect(w * 0.58, 0, w * 0.42, h),
    paper:
      rect(w * 0.66, h * 0.3, w * 0.28, Math.max(1, h * 0.06)) +
      rect(w * 0.66, h * 0.64, w * 0.28, Math.max(1, h * 0.06)),
  }),
  // A box or a packet: its lid is drawn, and the rest is left as paper, so that a shelf of them does not weigh down the sheet.
  box: (w, h) => ({
    solid: rect(0, 0, w, h),
    paper: rect(1, Math.min(8, h * 0.3), w - 2, h - Math.min(8, h * 0.3) - 1),
  }),
};
