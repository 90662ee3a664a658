/** A limit: dash-dot, with short slanted ticks on the side that is not allowed. */
export function LimitMark({
  x,
  top,
  bottom,
  side,
}: {
  x: number;
  top: number;
  bottom: number;
  side: 'left' | 'right';
}) {
  const way = side === 'left' ? -1 : 1;
  const ticks: number[] = [];
  for (let y = top + 14; y < bottom - 4; y += 14) ticks.push(y);
  return (
    <g stroke="var(--ink)">
      <line x1={x} x2={x} y1={top} y2={bottom} className="limit-line" />
      <path
        d={ticks.map((y) => `M${x} ${y}l${way * 8} ${way < 0 ? -8 : 8}`).join('')}
        strokeWidth="1"
        fill="none"
      />
    </g>
  );
}
