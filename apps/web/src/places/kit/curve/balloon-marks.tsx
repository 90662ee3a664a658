import { round, type PlacedGroup } from './geometry.ts';

/** Leaders and circled numbers that tie a riser of the staircase to rows of the list. */
export function Balloons({ groups }: { groups: readonly PlacedGroup[] }) {
  return groups.map(({ step, at, x, y, numbers, more }) => (
    <g key={step}>
      <path
        d={`M${round(at.x)} ${round(at.y)}L${round(x)} ${round(y)}`}
        stroke="var(--ink)"
        strokeWidth="1"
      />
      <circle cx={at.x} cy={at.y} r="2.5" fill="var(--ink)" />
      {numbers.map((number, i) => (
        <g key={number}>
          <circle
            cx={x + i * 27}
            cy={y}
            r="12.5"
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth="1.25"
          />
          <text x={x + i * 27} y={y + 4} fontSize="12" textAnchor="middle">
            {number}
          </text>
        </g>
      ))}
      {more > 0 && (
        <text x={x + numbers.length * 27 - 8} y={y + 4} fontSize="12">
          +{more}
        </text>
      )}
    </g>
  ));
}
