import { Arrow, LimitLine } from './marks.tsx';
import type { SideLayout } from './side-layout.ts';

export interface DrawnAxle {
  readonly title: string;
  readonly xMm: number;
  readonly kg: number;
  readonly limitKg: number | null;
  /** '29 kg left'. */
  readonly verdict: string;
  /** '1,751 of 1,780'. */
  readonly detail: string;
  readonly decides: boolean;
}

/** What the ground presses on an axle with, as an arrow from below to scale, against its dash-dot limit. */
export function Axle({ axle, at, side }: { axle: DrawnAxle; at: SideLayout; side: 'start' | 'end' }) {
  const x = at.x(axle.xMm);
  const tail = at.ground + 4 + axle.kg * at.axleScale;
  const limit = axle.limitKg === null ? null : at.ground + 4 + axle.limitKg * at.axleScale;
  const narrow = at.width < 600;
  const width = narrow ? 9 : 12;
  const end = Math.max(tail, limit ?? 0);
  // On a desk the words stand on the outer side of the arrow, on a phone under it.
  const words = narrow
    ? { x: Math.min(Math.max(x, 52), at.width - 52), y: end + 24, anchor: 'middle' as const }
    : side === 'start' && x > 170
      ? { x: x - 58, y: end - 24, anchor: 'end' as const }
      : { x: x + 58, y: end - 24, anchor: 'start' as const };
  return (
    <g>
      <Arrow x={x} from={tail} to={at.ground + 2} width={width} />
      {limit !== null && <LimitLine x={x} y={limit} half={narrow ? 26 : 46} />}
      <text x={words.x} y={words.y} textAnchor={words.anchor} className="d-window">
        {axle.title}
      </text>
      <text x={words.x} y={words.y + 18} textAnchor={words.anchor} className="d-answer d-window">
        {axle.verdict}
      </text>
      <text x={words.x} y={words.y + 35} textAnchor={words.anchor} className="d-quiet d-small d-window">
        {axle.detail}
      </text>
    </g>
  );
}
