/** A quartered circle: here a mass acts. */
export function MassMark({ x, y, r, tone = '' }: { x: number; y: number; r: number; tone?: string }) {
  return (
    <g>
      <circle cx={x} cy={y} r={r} className={`d-narrow d-paper ${tone}`} />
      <path
        d={`M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${x + r} ${y}ZM${x} ${y}V${y + r}A${r} ${r} 0 0 1 ${x - r} ${y}Z`}
        className="d-solid"
      />
    </g>
  );
}

/** A solid arrow along the sheet's height, from its tail to its tip. */
export function Arrow({ x, from, to, width }: { x: number; from: number; to: number; width: number }) {
  const length = Math.abs(to - from);
  if (length < 0.5) return null;
  const way = to > from ? 1 : -1;
  const head = Math.min(width * 2.4, length);
  const neck = to - way * head;
  const w = width / 2;
  return (
    <path
      d={`M${x - w} ${from}V${neck}H${x - width * 1.15}L${x} ${to}L${x + width * 1.15} ${neck}H${x + w}V${from}Z`}
      className="d-solid"
    />
  );
}

/** A limit across the sheet: dash-dot, with slanted ticks on the side that is not allowed. */
export function LimitLine({ x, y, half }: { x: number; y: number; half: number }) {
  const ticks = Array.from({ length: Math.floor((2 * half) / 11) }, (_, n) => x - half + 4 + n * 11);
  return (
    <g>
      <path d={`M${x - half} ${y}H${x + half}`} className="d-limit" />
      {ticks.map((at) => (
        <path key={at} d={`M${at} ${y + 1}l6 7`} className="d-narrow" />
      ))}
    </g>
  );
}

/** A dimension along the sheet with an arrowhead at each end, its text in a window of paper above the line. */
export function Dimension({
  from,
  to,
  y,
  text,
  red = false,
  textX,
}: {
  from: number;
  to: number;
  y: number;
  text: string;
  red?: boolean;
  textX?: number;
}) {
  const [left, right] = from < to ? [from, to] : [to, from];
  const line = red ? 'd-narrow d-hand' : 'd-narrow';
  const fill = red ? 'd-hand-fill' : 'd-dot';
  const head = Math.min(9, (right - left) / 2);
  return (
    <g>
      <path d={`M${left} ${y}H${right}`} className={line} />
      <path d={`M${left} ${y}l${head} -3v6ZM${right} ${y}l${-head} -3v6Z`} className={fill} />
      <text
        x={textX ?? (left + right) / 2}
        y={y - 5}
        textAnchor="middle"
        className={red ? 'd-red d-window' : 'd-window'}
      >
        {text}
      </text>
    </g>
  );
}
