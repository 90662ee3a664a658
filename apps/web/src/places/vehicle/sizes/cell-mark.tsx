import type { DrawnCell } from './rail-data.ts';

/** Copies told apart in one square; more are the same stripe. */
const MOST = 4;

/** A square of the rail: one stripe for each copy, solid when it comes along, outline when it stays home; hatched for a hole. */
export function CellMark({
  cell,
  x,
  y,
  size,
  width = size,
}: {
  cell: DrawnCell;
  x: number;
  y: number;
  size: number;
  /** Narrower where a half millimetre stands between two whole ones. */
  width?: number;
}) {
  const left = x - width / 2;
  const top = y - size / 2;
  if (cell.hole && cell.along + cell.home === 0)
    return (
      <rect x={left} y={top} width={width} height={size} className="rail-cell" fill="url(#rail-hatch)" />
    );
  const copies = [
    ...Array.from({ length: cell.along }, () => true),
    ...Array.from({ length: cell.home }, () => false),
  ].slice(0, MOST);
  const gap = copies.length > 1 ? 2 : 0;
  const each = (size - gap * (copies.length - 1)) / copies.length;
  return (
    <g>
      {copies.map((along, n) => (
        <rect
          key={n}
          x={left + 0.75}
          y={top + n * (each + gap) + 0.75}
          width={width - 1.5}
          height={each - 1.5}
          className={along ? 'rail-cell solid' : 'rail-cell'}
        />
      ))}
      {cell.bring && (
        <path d={`M${left - 3} ${top + size + 4}H${left + width + 3}`} className="d-wide d-hand" />
      )}
    </g>
  );
}

/** The hatch of a hole: 45 degrees, 6 px apart. */
export function HatchPattern() {
  return (
    <defs>
      <pattern
        id="rail-hatch"
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0V6" className="rail-hatch-line" />
      </pattern>
    </defs>
  );
}

/** One place: wide when measured, narrow when read, dashed while it is only assumed; a ring on it takes a key. */
export function PlaceMark({
  x,
  y,
  length,
  status,
  isKey,
  upright = false,
}: {
  x: number;
  y: number;
  length: number;
  status: 'assumed' | 'read' | 'measured';
  isKey: boolean;
  upright?: boolean;
}) {
  const half = length / 2;
  const d = upright ? `M${x} ${y - half}V${y + half}` : `M${x - half} ${y}H${x + half}`;
  return (
    <g>
      <path d={d} className={`rail-place ${status}`} />
      {isKey && <circle cx={x} cy={y} r="3.2" className="d-narrow d-paper" />}
    </g>
  );
}

/** Turn and hold: two tied dots, filled when both come along; an open tie is a missing half. */
export function TieMark({ x, y, tie }: { x: number; y: number; tie: 'both' | 'one' | 'neither' }) {
  const first = tie === 'neither' ? 'd-narrow d-paper' : 'd-solid';
  const second = tie === 'both' ? 'd-solid' : 'd-narrow d-paper';
  return (
    <g>
      {tie === 'both' && <path d={`M${x - 5} ${y}H${x + 5}`} className="d-wide" />}
      <circle cx={x - 6} cy={y} r="4.5" className={first} />
      <circle cx={x + 6} cy={y} r="4.5" className={second} />
    </g>
  );
}
