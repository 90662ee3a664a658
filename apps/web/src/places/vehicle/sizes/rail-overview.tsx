import { useEffect, useState } from 'react';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { ends } from './rail-data.ts';
import { MM } from './rail-phone.tsx';

const WIDTH = 358;

/** The whole rule small, with a red frame round what is in sight below it. */
export function RailOverview({ rail }: { rail: SizeRail }) {
  const { from, to } = ends(rail);
  const sight = useSight(from, to);
  const x = (mm: number) => 8 + ((mm - from) / Math.max(1, to - from)) * (WIDTH - 16);
  const most = Math.max(1, ...rail.sizes.map((s) => s.places.length));
  return (
    <svg className="drawing rail-overview" viewBox={`0 0 ${WIDTH} 74`} aria-hidden="true">
      <path d={`M4 44H${WIDTH - 4}`} className="d-wide" />
      {rail.sizes.map((s) => (
        <g key={s.label}>
          {s.places.length > 0 && (
            <path d={`M${x(s.mm)} 43v${-4 - (s.places.length / most) * 32}`} className="rail-bar" />
          )}
          {s.hole && (
            <rect
              x={x(s.mm) - 5}
              y="49"
              width="10"
              height="10"
              className="rail-cell"
              fill="url(#rail-hatch)"
            />
          )}
        </g>
      ))}
      <text x="4" y="70" className="d-quiet">
        {from}
      </text>
      <text x={WIDTH - 4} y="70" textAnchor="end" className="d-quiet">
        {to}
      </text>
      <rect
        x={x(sight.from)}
        y="2"
        width={Math.max(12, x(sight.to) - x(sight.from))}
        height="60"
        className="d-wide d-hand"
      />
    </svg>
  );
}

/** The millimetres that are on the screen. */
function useSight(from: number, to: number): { readonly from: number; readonly to: number } {
  const [sight, setSight] = useState({ from, to });
  useEffect(() => {
    const look = () => {
      const body = document.querySelector('.rail-phone-body')?.getBoundingClientRect();
      if (body === undefined) return;
      const at = (px: number) => Math.min(to, Math.max(from, from - 0.6 + (px - body.top) / MM));
      setSight({ from: at(190), to: at(innerHeight - 240) });
    };
    look();
    addEventListener('scroll', look, { passive: true });
    addEventListener('resize', look);
    return () => {
      removeEventListener('scroll', look);
      removeEventListener('resize', look);
    };
  }, [from, to]);
  return sight;
}
