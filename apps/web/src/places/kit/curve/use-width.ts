import { useLayoutEffect, useRef, useState } from 'react';

/** Width of an element in CSS pixels as it is laid out; 0 until it is known. */
export function useWidth(): { readonly ref: React.RefObject<HTMLDivElement | null>; readonly width: number } {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const measure = (): void => setWidth(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
