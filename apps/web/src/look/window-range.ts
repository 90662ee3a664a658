/** Which rows of equal height lie in sight. */
export interface RowRange {
  readonly from: number;
  /** One past the last. */
  readonly to: number;
}

/** Rows drawn beyond each end of what is in sight, so that a flick does not outrun the drawing. */
const SPARE = 8;
/** The range moves in steps of so many rows, so that most pixels scrolled redraw nothing. */
const STEP = 4;

/**
 * Rows to draw of a list whose top lies at `top` (pixels from the top of what can be seen, negative once scrolled past), where
 * `seen` pixels can be seen.
 */
export function rowRange(top: number, seen: number, rowHeight: number, count: number): RowRange {
  const first = Math.floor(Math.max(0, -top) / rowHeight) - SPARE;
  const last = Math.ceil((Math.max(0, -top) + Math.max(0, seen)) / rowHeight) + SPARE;
  const from = Math.max(0, Math.floor(first / STEP) * STEP);
  return { from: Math.min(from, count), to: Math.min(count, Math.max(from, Math.ceil(last / STEP) * STEP)) };
}
