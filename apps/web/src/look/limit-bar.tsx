import { useId } from 'react';
import './limit-bar.css';

export interface LimitBarProps {
  readonly title: string;
  /** 'kg left' or 'kg over', said in words. */
  readonly verdict: string;
  /** '1,751 kg of 1,780 kg'. */
  readonly detail: string;
  readonly value: number;
  /** Null: nothing limits it. */
  readonly limit: number | null;
}

/** Solid length against a dash-dot limit with ticks beyond it; over the limit the bar crosses the line and the words say so. */
export function LimitBar({ title, verdict, detail, value, limit }: LimitBarProps) {
  const id = useId();
  // The limit stands at the same place in every bar of a column, so that they are read together.
  const at = 86;
  const length = limit === null || limit <= 0 ? at : Math.min(100, (value / limit) * at);
  return (
    <div className="limit-bar" role="group" aria-labelledby={id}>
      <div className="limit-bar-head">
        <span id={id}>{title}</span>
        <span className="decides keep">{verdict}</span>
      </div>
      <svg width="100%" height="20" aria-hidden="true">
        <rect
          x="0"
          y="4"
          width={`${Math.max(0, length)}%`}
          height="12"
          fill="var(--solid)"
          stroke="var(--ink)"
        />
        {limit !== null && (
          <g>
            <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="20" className="limit-line" />
            {[1, 6, 11].map((y) => (
              <svg key={y} x={`${at}%`} y={y} width="7" height="7" overflow="visible">
                <line x1="0" y1="6" x2="6" y2="0" stroke="var(--ink)" strokeWidth="1" />
              </svg>
            ))}
          </g>
        )}
      </svg>
      <span className="small quiet">{detail}</span>
    </div>
  );
}
