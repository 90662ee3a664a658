import type { SideLayout } from '../drawing/side-layout.ts';

/** Near enough to what a tape measures along a vehicle. */
const STEP_MM = 10;
/** How near a finger must come to its mark, px of the screen. */
const REACH_PX = 36;

interface Drag {
  readonly onMove: (xMm: number) => void;
  /** Null: the pointer was taken away. */
  readonly onEnd: (xMm: number | null) => void;
}

/** Follows a pointer that takes hold of the picked berth's mark; a press elsewhere is left alone. Distances to 10 mm. */
export function dragBerth(
  event: React.PointerEvent,
  figure: HTMLElement,
  layout: SideLayout,
  startMm: number,
  { onMove, onEnd }: Drag,
): void {
  const box = figure.getBoundingClientRect();
  const perPx = layout.width / box.width;
  const markX = box.left + layout.x(startMm) / perPx;
  if (Math.abs(event.clientX - markX) > REACH_PX) return;
  event.preventDefault();
  const from = event.clientX;
  let at = startMm;
  const move = (now: PointerEvent) => {
    at = Math.round((startMm + ((now.clientX - from) * perPx) / layout.pxPerMm) / STEP_MM) * STEP_MM;
    onMove(at);
  };
  const over = (end: () => void) => () => {
    removeEventListener('pointermove', move);
    removeEventListener('pointerup', up);
    removeEventListener('pointercancel', cancel);
    end();
  };
  const up = over(() => onEnd(at));
  const cancel = over(() => onEnd(null));
  addEventListener('pointermove', move);
  addEventListener('pointerup', up);
  addEventListener('pointercancel', cancel);
}
