import type { Point, Shape } from './shapes.ts';
import type { SideLayout } from './side-layout.ts';

/** The vehicle in plain line: body, windows, seams, wheels with a small cross, and the ground. */
export function Outline({ shape, wheelbase, at }: { shape: Shape; wheelbase: number; at: SideLayout }) {
  const { x, y, pxPerMm } = at;
  const point = ([px, py]: Point) => `${x(px).toFixed(1)} ${y(py).toFixed(1)}`;
  const line = (points: readonly Point[]) => `M${points.map(point).join('L')}`;
  const wheels = shape.coupling ? [wheelbase] : [0, wheelbase];
  return (
    <g>
      {shape.windows.map((points, n) => (
        <path key={n} d={`${line(points)}Z`} className="d-mid" />
      ))}
      {shape.seams.map((points, n) => (
        <path key={n} d={line(points)} className="d-mid" />
      ))}
      <path d={body(shape, wheels, at)} className="d-body" />
      {wheels.map((centre) => (
        <g key={centre}>
          <circle cx={x(centre)} cy={y(shape.wheel)} r={shape.wheel * pxPerMm} className="d-wide d-paper" />
          <circle cx={x(centre)} cy={y(shape.wheel)} r={shape.wheel * 0.54 * pxPerMm} className="d-narrow" />
          <path
            d={`M${x(centre) - 7} ${y(shape.wheel)}h14M${x(centre)} ${y(shape.wheel) - 7}v14`}
            className="d-narrow"
          />
        </g>
      ))}
      {shape.coupling && <circle cx={x(0)} cy={y(480)} r={60 * pxPerMm + 2} className="d-wide d-paper" />}
      <path d={`M2 ${y(0)}H${at.width - 2}`} className="d-wide" />
    </g>
  );
}

/** Over the roof, then back along the sill with an arch over each wheel. */
function body(shape: Shape, wheels: readonly number[], { x, y, pxPerMm }: SideLayout): string {
  const { top, sill, wheel, arch } = shape;
  const half = Math.sqrt(Math.max(0, arch ** 2 - (sill - wheel) ** 2));
  const radius = arch * pxPerMm;
  const large = sill < wheel ? 1 : 0;
  const over = top
    .map(([px, py], n) => `${n === 0 ? 'M' : 'L'}${x(px).toFixed(1)} ${y(py).toFixed(1)}`)
    .join('');
  const under = [...wheels]
    .reverse()
    .map(
      (centre) =>
        `L${x(centre + half).toFixed(1)} ${y(sill).toFixed(1)}A${radius.toFixed(1)} ${radius.toFixed(1)} 0 ${large} 0 ${x(centre - half).toFixed(1)} ${y(sill).toFixed(1)}`,
    )
    .join('');
  return `${over}${under}Z`;
}
