import './square-mark.css';

/** Solid, half along the diagonal, a dot, hatched, a cross to add, or outline: told apart without colour. */
export type SquareFill = 'solid' | 'half' | 'dot' | 'hatched' | 'plus' | 'open';

/**
 * The square that says how a thing stands, the same shapes on every sheet and on paper. What a fill means stands in words beside it.
 * `crossed`: it counts for nothing until it is put right.
 */
export function SquareMark({ fill, crossed = false }: { fill: SquareFill; crossed?: boolean }) {
  return (
    <svg className="mark" aria-hidden="true" width="18" height="18" viewBox="0 0 18 18">
      <rect
        x="1.5"
        y="1.5"
        width="15"
        height="15"
        className={fill === 'solid' ? 'mark-solid' : 'mark-open'}
      />
      {fill === 'half' && <path d="M1.5 16.5L16.5 1.5V16.5Z" className="mark-solid" />}
      {fill === 'dot' && <circle cx="9" cy="9" r="3" className="mark-dot" />}
      {fill === 'hatched' && (
        <path
          d="M1.5 6.5L6.5 1.5M1.5 11.5L11.5 1.5M1.5 16.5L16.5 1.5M6.5 16.5L16.5 6.5M11.5 16.5L16.5 11.5"
          className="mark-hatch"
        />
      )}
      {fill === 'plus' && <path d="M5 9H13M9 5V13" className="mark-line" />}
      {crossed && <path d="M1.5 1.5L16.5 16.5M16.5 1.5L1.5 16.5" className="mark-cross" />}
    </svg>
  );
}
