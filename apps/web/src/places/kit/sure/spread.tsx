import { useTranslation } from 'react-i18next';

/** A length of the drawing for a chance: equal steps for equal factors, because "1 in 10" is to "1 in 20" as "1 in 20" to "1 in 40". */
const WIDE = 334;
const LEFT = 14;
const MOST = 1;
const LEAST = 1 / 200;
const MARKS = [2, 5, 10, 20, 50, 100, 200];

export interface SpreadProps {
  /** Chances that help is needed. */
  readonly best: number;
  readonly planned: number;
  readonly worst: number;
  readonly words: string;
}

/** Where the chance may lie: a rule of trips, the believed span dimensioned on it, the planned chance as a wide tick. */
export function Spread({ best, planned, worst, words }: SpreadProps) {
  const { t } = useTranslation();
  const x = (chance: number): number => {
    const held = Math.min(MOST, Math.max(LEAST, chance));
    return LEFT + (WIDE * Math.log(held / LEAST)) / Math.log(MOST / LEAST);
  };
  const [low, mid, high] = [x(best), x(planned), x(worst)];
  return (
    <svg className="sure-spread" role="img" aria-label={words} viewBox="0 0 360 84" width="360" height="84">
      <path d={`M${LEFT} 46H${LEFT + WIDE}`} stroke="var(--ink)" strokeWidth="1" fill="none" />
      {MARKS.map((n) => (
        <g key={n}>
          <path d={`M${x(1 / n)} 46V53`} stroke="var(--ink)" strokeWidth="1" fill="none" />
          <text x={x(1 / n)} y="70" textAnchor="middle" fontSize="12" fill="var(--ink-2)">
            {n}
          </text>
        </g>
      ))}
      <text x={LEFT + WIDE} y="82" textAnchor="end" fontSize="12" fill="var(--ink)">
        {t('sure.axis')}
      </text>
      <path
        d={`M${low} 46V16M${high} 46V16M${low} 22H${high}M${low} 22l7 -3v6zM${high} 22l-7 -3v6z`}
        stroke="var(--ink)"
        strokeWidth="1"
        fill="var(--ink)"
      />
      <path d={`M${low} 46H${high}`} stroke="var(--ink)" strokeWidth="5" fill="none" />
      <path d={`M${mid} 32V58`} stroke="var(--hand)" strokeWidth="3" fill="none" />
    </svg>
  );
}
