import { useEffect, useRef } from 'react';

export interface HandleProps {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  /** '40 kg, about 1 in 7'. */
  readonly valueText: string;
  readonly index: number;
  readonly count: number;
  /** Another step under the hand; nothing is changed yet. */
  readonly onMove: (index: number) => void;
  /** The hand has let go. */
  readonly onRelease: () => void;
  /** Step under a place across the drawing. */
  readonly stepAt: (x: number) => number;
}

/** Keys let go by themselves after this long. */
const PAUSE_MS = 700;

/** The five-sided grip, knurled: by touch, by mouse, and by arrow keys from one proven point to the next. */
export function Handle({ x, y, label, valueText, index, count, onMove, onRelease, stepAt }: HandleProps) {
  const ref = useRef<HTMLDivElement>(null);
  const held = useRef<number | null>(null);
  const pause = useRef<ReturnType<typeof setTimeout> | null>(null);
  const release = useRef(onRelease);
  useEffect(() => {
    release.current = onRelease;
  });
  useEffect(
    () => () => {
      if (pause.current !== null) clearTimeout(pause.current);
    },
    [],
  );
  const settle = (): void => {
    if (pause.current === null) return;
    clearTimeout(pause.current);
    pause.current = null;
    release.current();
  };
  const move = (event: React.PointerEvent): void => {
    const drawing = ref.current?.offsetParent?.getBoundingClientRect();
    if (drawing !== undefined) onMove(stepAt(event.clientX - drawing.left));
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    const to = keyStep(event.key, index, count);
    if (event.key === 'Enter' || event.key === ' ') settle();
    if (to === null) return;
    event.preventDefault();
    onMove(to);
    if (pause.current !== null) clearTimeout(pause.current);
    pause.current = setTimeout(settle, PAUSE_MS);
  };
  return (
    <div
      ref={ref}
      className="curve-handle"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation="horizontal"
      aria-valuemin={0}
      aria-valuemax={Math.max(0, count - 1)}
      aria-valuenow={index}
      aria-valuetext={valueText}
      style={{ left: x - 28, top: y }}
      onKeyDown={onKeyDown}
      onBlur={settle}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        held.current = event.pointerId;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => {
        if (held.current === event.pointerId) move(event);
      }}
      onPointerUp={(event) => {
        if (held.current !== event.pointerId) return;
        held.current = null;
        move(event);
        onRelease();
      }}
      onPointerCancel={() => {
        held.current = null;
        onMove(-1);
      }}
    >
      <svg width="56" height="56" aria-hidden="true">
        <path className="grip" d="M28 2L50 18V50H6V18Z" />
        <path className="knurl" d="M18 27V43M23 27V43M28 27V43M33 27V43M38 27V43" />
      </svg>
    </div>
  );
}

function keyStep(key: string, index: number, count: number): number | null {
  const to = {
    ArrowRight: index + 1,
    ArrowUp: index + 1,
    ArrowLeft: index - 1,
    ArrowDown: index - 1,
    PageUp: index + 5,
    PageDown: index - 5,
    Home: 0,
    End: count - 1,
  }[key];
  return to === undefined ? null : Math.min(count - 1, Math.max(0, to));
}
