import { useId } from 'react';
import { useTranslation } from 'react-i18next';
import type { Format } from '../../../format/use-format.ts';
import type { ChanceScale } from './chance-scale.ts';
import type { Frame, PlacedGroup } from './geometry.ts';
import { round, stairPath } from './geometry.ts';
import { Balloons } from './balloon-marks.tsx';
import { Break, Chain, type Link } from './chain.tsx';
import { LimitMark } from './limit-mark.tsx';
import type { MassScale } from './mass-scale.ts';
import type { Step } from './steps.ts';
import { WindowedText, widthOf } from './windowed-text.tsx';

export interface CurveDrawingProps {
  readonly frame: Frame;
  readonly mass: MassScale;
  readonly chance: ChanceScale;
  readonly steps: readonly Step[];
  /** Step the handle stands at. */
  readonly at: number;
  /** Chance of needing help with nothing aboard. */
  readonly emptyHelp: number;
  readonly full: { readonly grams: number; readonly words: string } | null;
  readonly balloons: readonly PlacedGroup[];
  readonly links: readonly Link[];
  readonly format: Format;
  readonly unitWord: string;
  readonly unit: number;
}

/** Kilograms to the right, trips without help upwards: the staircase of proven kits between its limits. */
export function CurveDrawing(props: CurveDrawingProps) {
  const { frame, mass, chance, steps, at, emptyHelp, full, balloons, links, format, unit, unitWord } = props;
  const { t } = useTranslation();
  const hatch = useId();
  const { left, right, top, bottom } = frame;
  const floor = steps[0];
  const best = steps.at(-1);
  const here = steps[at];
  if (floor === undefined || best === undefined || here === undefined) return null;
  const compact = frame.width < 560;
  const gapY = chance.y(1 - best.unaided);
  const floorX = mass.x(floor.grams);
  const hereX = round(mass.x(here.grams));
  const hereY = round(chance.y(1 - here.unaided));
  const gapWords = t(compact ? 'kit.gapShort' : 'kit.gapLong', { chance: format.oneIn(1 - best.unaided) });
  return (
    <svg className="curve-drawing" width={frame.width} height={frame.height} aria-hidden="true">
      <defs>
        <pattern
          id={hatch}
          width="11"
          height="11"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" x2="0" y1="0" y2="11" stroke="var(--mid)" strokeWidth="1.4" />
        </pattern>
      </defs>
      {!compact && (
        <text x="0" y="14" fontSize="13" className="second">
          {t('kit.axisChance')}
        </text>
      )}
      {chance.ticks.map(({ help, y }) => (
        <g key={help}>
          <line x1={left} x2={right} y1={round(y)} y2={round(y)} stroke="var(--faint)" />
          <line x1={left - 5} x2={left} y1={round(y)} y2={round(y)} stroke="var(--ink)" />
          <text x={left - 10} y={y + 4.5} fontSize="13" textAnchor="end" className="second">
            {format.oneIn(help)}
          </text>
        </g>
      ))}
      <text x={left - 10} y={top + 5} fontSize="13" textAnchor="end" className="second">
        {t('kit.axisNone')}
      </text>
      <rect x={left} y={top} width={right - left} height={Math.max(0, gapY - top)} fill={`url(#${hatch})`} />
      <line x1={left} x2={right} y1={gapY} y2={gapY} stroke="var(--ink)" />
      <line x1={left} x2={right} y1={top} y2={top} stroke="var(--ink)" strokeWidth="2" />
      <line x1={left} x2={left} y1={top - 6} y2={bottom + 6} stroke="var(--ink)" />
      {gapY - top > 22 && (
        <WindowedText x={(left + right) / 2} y={(top + gapY) / 2 + 5} words={gapWords} anchor="middle" />
      )}
      <LimitMark x={floorX} top={Math.min(gapY + 10, bottom - 40)} bottom={bottom} side="left" />
      {full !== null && <LimitMark x={mass.x(full.grams)} top={gapY + 4} bottom={bottom} side="right" />}
      <path
        d={stairPath(steps, at, steps.length - 1, mass, chance, bottom)}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.5"
      />
      <path
        d={stairPath(steps, 0, at, mass, chance, bottom)}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="3"
      />
      <path d={`M${left} ${bottom}H${round(floorX)}`} stroke="var(--ink)" strokeWidth="3" />
      <path d={`M${round(floorX)} ${bottom}H${right}`} stroke="var(--ink)" strokeWidth="2" />
      {steps.map((step, i) =>
        i > at ? <Point key={step.grams} step={step} mass={mass} chance={chance} /> : null,
      )}
      <FullWords full={full} mass={mass} frame={frame} />
      <Balloons groups={balloons} />
      {!compact && (
        <Turns
          balloons={balloons}
          x={turnsAt(hereX, full === null ? right : mass.x(full.grams), right)}
          from={chance.y(emptyHelp)}
          to={hereY}
          here={hereX}
          lines={[
            t('kit.turns'),
            format.oneIn(emptyHelp),
            t('kit.into', { chance: format.oneIn(1 - here.unaided) }),
          ]}
          bottom={bottom}
        />
      )}
      {mass.ticks.map(({ grams, x, words }) => (
        <g key={grams}>
          <line x1={round(x)} x2={round(x)} y1={bottom} y2={bottom + (words ? 10 : 5)} stroke="var(--ink)" />
          {words && Math.abs(x - hereX) > (compact ? 34 : 40) && (
            <text x={x} y={bottom + 25} fontSize="13" textAnchor="middle" className="second">
              {format.count(Math.round((grams / unit) * 10) / 10)}
            </text>
          )}
        </g>
      ))}
      <text x={compact ? 0 : left - 36} y={bottom + 25} fontSize="13" className="second">
        {unitWord}
      </text>
      {mass.breakBefore !== null && <Break x={mass.breakBefore} y={bottom} />}
      {mass.breakAfter !== null && <Break x={mass.breakAfter} y={bottom} />}
      <line x1={hereX} x2={hereX} y1={hereY} y2={bottom + 4} stroke="var(--hand)" strokeWidth="2" />
      <circle cx={hereX} cy={hereY} r="6" fill="var(--paper)" stroke="var(--hand)" strokeWidth="2.5" />
      <FloorWords
        words={t(compact ? 'kit.floorShort' : 'kit.floorAt', { mass: format.mass(floor.grams) })}
        x={floorX}
        here={hereX}
        frame={frame}
      />
      <Chain links={links} top={compact ? frame.chain - 8 : bottom + 34} y={frame.chain} end={right} />
    </svg>
  );
}

/** A proven point at home is an open circle; one with a gap is the range it may still win. */
function Point({ step, mass, chance }: { step: Step; mass: MassScale; chance: ChanceScale }) {
  const x = round(mass.x(step.grams));
  const y = round(chance.y(1 - step.unaided));
  if (step.proven) return <circle cx={x} cy={y} r="3.2" fill="var(--paper)" stroke="var(--ink)" />;
  const reach = chance.y((1 - step.unaided) * (1 - step.gap));
  return <path d={`M${x - 3} ${reach}h6M${x} ${reach}V${y}`} stroke="var(--ink)" fill="none" />;
}

/** Left of its limit where there is room; else a leader takes the words past the handle's line. */
function FloorWords({ words, x, here, frame }: { words: string; x: number; here: number; frame: Frame }) {
  const wide = widthOf(words, 13);
  const y = frame.bottom - 12;
  if (x - frame.left > wide + 60) return <WindowedText x={x - 14} y={y} words={words} anchor="end" />;
  const start = here > x + 4 && here < x + wide + 28 ? here + 12 : x + 16;
  return (
    <g>
      <path d={`M${x} ${y - 4}H${start - 4}`} stroke="var(--ink)" />
      <circle cx={x} cy={y - 4} r="2.5" fill="var(--ink)" />
      <WindowedText x={start} y={y} words={words} />
    </g>
  );
}

function FullWords({
  full,
  mass,
  frame,
}: {
  full: CurveDrawingProps['full'];
  mass: MassScale;
  frame: Frame;
}) {
  if (full === null) return null;
  const x = mass.x(full.grams);
  const wide = widthOf(full.words, 13);
  const y = frame.bottom - (frame.width < 560 ? 40 : 70);
  if (frame.right - x > wide + 20) return <WindowedText x={x + 14} y={y} words={full.words} />;
  return <WindowedText x={x - 8} y={y} words={full.words} anchor="end" />;
}

/** Beside the handle, before the next limit. */
function turnsAt(here: number, limit: number, right: number): number | null {
  const x = here + 56;
  return x + 110 < Math.max(limit, right - 10) ? x : null;
}

/** The dimension that says what the kit does: from nothing aboard up to this kit. */
function Turns({
  x,
  here,
  from,
  to,
  bottom,
  lines,
  balloons,
}: {
  balloons: readonly PlacedGroup[];
  x: number | null;
  here: number;
  from: number;
  to: number;
  bottom: number;
  lines: readonly string[];
}) {
  const low = Math.min(from, bottom);
  if (x === null || low - to < 90) return null;
  const inTheWay = balloons.some(
    (group) =>
      group.x - 13 < x + 110 &&
      group.x + (group.numbers.length - 1) * 27 + (group.more > 0 ? 38 : 13) > x - 6 &&
      group.y > to,
  );
  if (inTheWay) return null;
  const middle = (low + to) / 2;
  return (
    <g>
      <path
        d={`M${x} ${to}V${low}M${here + 8} ${to}H${x + 5}M${x - 5} ${low}H${x + 5}`}
        stroke="var(--ink)"
        fill="none"
      />
      <path d={`M${x} ${to}l-2.5 9h5ZM${x} ${low}l-2.5 -9h5Z`} fill="var(--ink)" />
      {lines.map((line, i) => (
        <WindowedText key={line} x={x + 10} y={middle - 12 + i * 18} words={line} />
      ))}
    </g>
  );
}
