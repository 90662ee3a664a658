import { WindowedText, widthOf } from './windowed-text.tsx';

export interface Link {
  readonly from: number;
  readonly to: number;
  /** Longest first; the first that fits is shown, none when none does. */
  readonly words: readonly string[];
  readonly bold?: boolean;
  /** Where the scale is broken inside this link. */
  readonly broken?: number | null;
}

/** Dimensions in a chain beneath the axis: extension lines, arrows, a measure between them. */
export function Chain({
  links,
  top,
  y,
  end,
}: {
  links: readonly Link[];
  top: number;
  y: number;
  end: number;
}) {
  const ends = [...new Set([...links.flatMap(({ from, to }) => [from, to]), end])];
  return (
    <g>
      <path
        d={ends.map((x) => `M${x} ${top}V${y + 5}`).join('')}
        stroke="var(--ink)"
        strokeWidth="1"
        fill="none"
      />
      {links.map((link) => (
        <Dimension key={link.from} {...link} y={y} />
      ))}
    </g>
  );
}

function Dimension({ from, to, words, bold = false, broken = null, y }: Link & { y: number }) {
  const room = to - from;
  if (room < 2) return null;
  const fitting = words.find((w) => widthOf(w, 13, bold) + 14 <= room);
  const arrows = room >= 20;
  return (
    <g>
      <line x1={from} x2={to} y1={y} y2={y} stroke="var(--ink)" strokeWidth="1" />
      {arrows && <path d={`M${from} ${y}l9 -2.5v5ZM${to} ${y}l-9 -2.5v5Z`} fill="var(--ink)" />}
      {broken !== null && <Break x={broken} y={y} />}
      {fitting !== undefined && (
        <WindowedText x={(from + to) / 2} y={y - 7} words={fitting} anchor="middle" bold={bold} />
      )}
    </g>
  );
}

/** The double slash that says: the scale is broken here. */
export function Break({ x, y }: { x: number; y: number }) {
  return (
    <g>
      <rect x={x - 4} y={y - 3} width="8" height="6" fill="var(--paper)" />
      <path
        d={`M${x - 7} ${y + 7}l6 -14M${x + 1} ${y + 7}l6 -14`}
        stroke="var(--ink)"
        strokeWidth="2"
        fill="none"
      />
    </g>
  );
}
