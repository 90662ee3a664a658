import type { PatternId } from './outlines.ts';
import { bodyPath, EXTENT, OUTLINES, polygonPath } from './outlines.ts';

/** A kind of vehicle from the side, wide line for the body, narrow for its windows; every kind on one scale. */
export function PatternOutline({ of }: { of: PatternId }) {
  const outline = OUTLINES[of];
  const { fromMm, toMm, topMm } = EXTENT;
  const { wheels, wheelMm, windows } = outline;
  const r = wheelMm / 2;
  return (
    <svg
      className="pattern-outline"
      aria-hidden="true"
      viewBox={`${fromMm} ${-topMm - 60} ${toMm - fromMm} ${topMm + 120}`}
      fill="none"
      stroke="currentColor"
    >
      <path d={bodyPath(outline)} className="outline-wide" />
      {windows.map((points) => (
        <path key={points.join(' ')} d={polygonPath(points)} className="outline-narrow" />
      ))}
      {wheels.map((x) => (
        <g key={x}>
          <circle cx={x} cy={-r} r={r} className="outline-wide" fill="var(--paper)" />
          <circle cx={x} cy={-r} r={r * 0.55} className="outline-narrow" />
        </g>
      ))}
      <path d={`M${fromMm} 0H${toMm}`} className="outline-narrow" />
    </svg>
  );
}
