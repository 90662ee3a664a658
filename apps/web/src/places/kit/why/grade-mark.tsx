import { useId } from 'react';

export type Mark = 'proper' | 'with-care' | 'last-resort' | 'missing';

/** The mark of a grade: solid, half along the diagonal, a dot, and hatched for what is not there. */
export function GradeMark({ mark }: { mark: Mark }) {
  const hatch = useId();
  return (
    <svg width="18" height="18" aria-hidden="true">
      {mark === 'missing' && (
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" x2="0" y1="0" y2="6" stroke="var(--ink)" strokeWidth="1.4" />
        </pattern>
      )}
      <rect
        x="1"
        y="1"
        width="16"
        height="16"
        fill={mark === 'proper' ? 'var(--solid)' : mark === 'missing' ? `url(#${hatch})` : 'var(--paper)'}
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
      {mark === 'with-care' && <path d="M1 17L17 1V17Z" fill="var(--solid)" />}
      {mark === 'last-resort' && <circle cx="9" cy="9" r="3" fill="var(--solid)" />}
    </svg>
  );
}

/** The grade words of an answer as a mark; null is what is missing. */
export function markOf(grade: string | null): Mark {
  return grade === 'proper' || grade === 'with-care' || grade === 'last-resort' ? grade : 'missing';
}
