import { useId } from 'react';

export type BarFill = 'solid' | 'outline' | 'hatched';

/** A bar to the list's scale; worth nothing is a single stroke. */
export function ScaleBar({ share, fill }: { share: number; fill: BarFill }) {
  const hatch = useId();
  if (!(share > 0))
    return (
      <svg className="scale-bar" width="100%" height="14" aria-hidden="true">
        <line x1="1" x2="1" y1="1" y2="13" stroke="var(--ink)" strokeWidth="1.25" />
      </svg>
    );
  const paint = { solid: 'var(--solid)', outline: 'var(--paper)', hatched: `url(#${hatch})` }[fill];
  return (
    <svg className="scale-bar" width="100%" height="14" aria-hidden="true">
      {fill === 'hatched' && (
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" x2="0" y1="0" y2="6" stroke="var(--ink)" strokeWidth="1.4" />
        </pattern>
      )}
      <rect
        x="1"
        y="1"
        width={`${Math.max(1.2, Math.min(1, share) * 98)}%`}
        height="12"
        fill={paint}
        stroke="var(--ink)"
      />
    </svg>
  );
}
