import type { PartState } from './paper-lines.ts';

/** Solid: understood. Half: look again. Hatched: not understood. Outline: left out. */
export function LineMark({ state }: { state: PartState }) {
  return (
    <svg className="mark" aria-hidden="true" width="18" height="18" viewBox="0 0 18 18">
      <rect
        x="1.5"
        y="1.5"
        width="15"
        height="15"
        className={state === 'understood' || state === 'own' ? 'mark-solid' : 'mark-open'}
      />
      {state === 'doubtful' && <path d="M1.5 16.5V1.5H16.5Z" className="mark-solid" />}
      {state === 'unknown' && (
        <path d="M1.5 10L10 1.5M1.5 16.5L16.5 1.5M8 16.5L16.5 8" className="mark-line" />
      )}
    </svg>
  );
}
