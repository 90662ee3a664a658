import { useLayoutEffect, useRef, useState } from 'react';

/** Rows kept above and below what is seen, so that the keyboard and a flick find them there. */
const SPARE = 12;
/** Lists up to this length are simply drawn. */
const SHORT = 80;

export interface Window {
  readonly ref: React.RefObject<HTMLDivElement | null>;
  readonly from: number;
  readonly to: number;
  /** Room of the rows that are not drawn, px. */
  readonly above: number;
  readonly below: number;
}

/** Of a long list on a page that scrolls, the rows near the screen; every row is `height` px high. */
export function useWindow(count: number, height: number): Window {
  const ref = useRef<HTMLDivElement>(null);
  const [{ from, to }, setRange] = useState({ from: 0, to: SHORT });
  const long = count > SHORT;
  useLayoutEffect(() => {
    if (!long) return undefined;
    let frame = 0;
    const look = (): void => {
      frame = 0;
      const top = ref.current?.getBoundingClientRect().top ?? 0;
      const first = Math.max(0, Math.floor(-top / height) - SPARE);
      const last = Math.max(first + SPARE, Math.ceil((innerHeight - top) / height) + SPARE);
      setRange((now) => (now.from === first && now.to === last ? now : { from: first, to: last }));
    };
    const soon = (): void => {
      if (frame === 0) frame = requestAnimationFrame(look);
    };
    look();
    addEventListener('scroll', soon, { passive: true });
    addEventListener('resize', soon);
    return () => {
      removeEventListener('scroll', soon);
      removeEventListener('resize', soon);
      cancelAnimationFrame(frame);
    };
  }, [long, height]);
  if (!long) return { ref, from: 0, to: count, above: 0, below: 0 };
  const end = Math.min(to, count);
  const start = Math.min(from, end);
  return { ref, from: start, to: end, above: start * height, below: (count - end) * height };
}
