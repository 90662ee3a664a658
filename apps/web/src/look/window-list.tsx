import type { KeyboardEvent, ReactNode } from 'react';
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { RowRange } from './window-range.ts';
import { rowRange } from './window-range.ts';
import './window-list.css';

export interface WindowListProps<T> {
  readonly label: string;
  readonly items: readonly T[];
  readonly keyOf: (item: T) => string;
  /** Height of every row in rem, on a phone and on a desk. */
  readonly rem: { readonly phone: number; readonly desk: number };
  /** The inside of a row. Its main button has `data-main` and the given tabIndex. */
  readonly children: (item: T, tabIndex: 0 | -1) => ReactNode;
  /** Right arrow opens, left arrow closes, where a row can. */
  readonly onArrow?: (item: T, way: 'open' | 'close') => void;
}

/**
 * A list of any length that draws only the rows in sight, whether the page scrolls or the list does. One stop of the Tab key;
 * arrows, Page keys, Home and End move along it. A screen reader hears the place of each row among all of them.
 */
export function WindowList<T>({ label, items, keyOf, rem, children, onArrow }: WindowListProps<T>) {
  const list = useRef<HTMLUListElement>(null);
  const rowHeight = useRowHeight(rem);
  const [range, setRange] = useState<RowRange>({ from: 0, to: 24 });
  const [currentKey, setCurrentKey] = useState<string | null>(null);
  const focusNext = useRef(false);
  const count = items.length;

  const measure = useCallback(() => {
    const box = list.current?.getBoundingClientRect();
    if (box === undefined) return;
    const frame = list.current?.parentElement?.getBoundingClientRect();
    const start = Math.max(0, frame?.top ?? 0);
    const end = Math.min(window.innerHeight, frame?.bottom ?? window.innerHeight);
    const next = rowRange(box.top - start, end - start, rowHeight, count);
    setRange((before) => (before.from === next.from && before.to === next.to ? before : next));
  }, [rowHeight, count]);

  useLayoutEffect(() => {
    measure();
    // Scrolling does not bubble: whichever of page and list scrolls is heard on the way down.
    document.addEventListener('scroll', measure, { capture: true, passive: true });
    window.addEventListener('resize', measure);
    return () => {
      document.removeEventListener('scroll', measure, { capture: true });
      window.removeEventListener('resize', measure);
    };
  }, [measure]);

  const found = useMemo(
    () => (currentKey === null ? -1 : items.findIndex((item) => keyOf(item) === currentKey)),
    [items, keyOf, currentKey],
  );
  const current = found < 0 ? 0 : found;

  useLayoutEffect(() => {
    if (!focusNext.current) return;
    const row = list.current?.querySelector<HTMLElement>(`[data-row="${current}"] [data-main]`);
    if (row === null || row === undefined) return;
    focusNext.current = false;
    row.focus({ preventScroll: true });
    row.closest('li')?.scrollIntoView({ block: 'nearest' });
  });

  const moveTo = (index: number): void => {
    const item = items[Math.max(0, Math.min(count - 1, index))];
    if (item === undefined) return;
    focusNext.current = true;
    setCurrentKey(keyOf(item));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const item = items[current];
    const page = Math.max(1, range.to - range.from - 2 * 8);
    const to: Readonly<Record<string, number>> = {
      ArrowDown: current + 1,
      ArrowUp: current - 1,
      PageDown: current + page,
      PageUp: current - page,
      Home: 0,
      End: count - 1,
    };
    const target = to[event.key];
    if (target !== undefined) moveTo(target);
    else if (event.key === 'ArrowRight' && item !== undefined) onArrow?.(item, 'open');
    else if (event.key === 'ArrowLeft' && item !== undefined) onArrow?.(item, 'close');
    else return;
    event.preventDefault();
  };

  const drawn: number[] = [];
  for (let i = range.from; i < Math.min(range.to, count); i++) drawn.push(i);
  // The row that holds the focus stays, however far it is scrolled away.
  if (count > 0 && !drawn.includes(current)) drawn.push(current);
  return (
    <div className="window-frame">
      <ul
        ref={list}
        className="window-list"
        aria-label={label}
        style={{ height: count * rowHeight }}
        onKeyDown={onKeyDown}
      >
        {drawn.map((i) => {
          const item = items[i];
          if (item === undefined) return null;
          const key = keyOf(item);
          return (
            <li
              key={key}
              data-row={i}
              className="window-row"
              aria-setsize={count}
              aria-posinset={i + 1}
              style={{ transform: `translateY(${i * rowHeight}px)`, height: rowHeight }}
              onFocus={() => setCurrentKey(key)}
            >
              {children(item, i === current ? 0 : -1)}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

const DESK = '(min-width: 900px)';

/** Rows grow with the reader's letters. */
function useRowHeight({ phone, desk }: { readonly phone: number; readonly desk: number }): number {
  const measure = useCallback(
    () =>
      Math.round(
        (matchMedia(DESK).matches ? desk : phone) *
          Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
      ),
    [phone, desk],
  );
  const [height, setHeight] = useState(measure);
  useLayoutEffect(() => {
    const change = (): void => setHeight(measure());
    change();
    window.addEventListener('resize', change);
    return () => window.removeEventListener('resize', change);
  }, [measure]);
  return height;
}
