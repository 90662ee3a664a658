import { GRAMS_PER_POUND } from '@waymend/core/quantity/units';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { TFunction } from 'i18next';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import type { Format } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { finePercent } from '../sheet/worth-words.ts';
import { balloonGroups, nearestGroups } from './balloons.ts';
import type { Link } from './chain.tsx';
import { chanceScale } from './chance-scale.ts';
import { CurveDrawing } from './curve-drawing.tsx';
import { BESIDE_GRIP, frameFor, placeBalloons } from './geometry.ts';
import { Handle } from './handle.tsx';
import { massScale } from './mass-scale.ts';
import { nearestStep } from './steps.ts';
import type { Curve } from './use-curve.ts';
import { useWidth } from './use-width.ts';
import './curve.css';

export interface CurveFigureProps {
  readonly answer: PlanAnswer;
  readonly curve: Curve;
  /** Height of the plot itself, px. */
  readonly plot: number;
  /** Belongings in the order of the list whose balloons the picture points to. */
  readonly listed: readonly string[];
}

/** The drawing with its handle, and the two steps beside it in words. */
export function CurveFigure({ answer, curve, plot, listed }: CurveFigureProps) {
  const { t } = useTranslation();
  const format = useFormat();
  const { ref, width } = useWidth();
  const { steps, at, full, everything } = curve;
  const frame = frameFor(width, plot);
  const here = steps[at];
  const floor = steps[0];
  const unit = format.units === 'inch' ? GRAMS_PER_POUND : 1000;
  const emptyHelp = 1 - answer.unaided.empty;
  const mass = massScale(
    {
      floor: floor?.grams ?? 0,
      heaviest: steps.at(-1)?.grams ?? 0,
      full: full?.grams ?? null,
      everything,
    },
    frame.left,
    frame.right,
    unit,
  );
  const shownFull = full !== null && full.grams > 0 && full.grams < everything ? full : null;
  const chance = chanceScale(
    Math.max(emptyHelp, ...steps.map((s) => 1 - s.unaided)),
    frame.top,
    frame.bottom,
  );
  const x = mass.x(here?.grams ?? 0);
  return (
    <figure className="curve" aria-label={t('kit.curve')}>
      <div ref={ref} className="curve-place" style={{ height: frame.height }}>
        {width > 0 && here !== undefined && (
          <>
            <CurveDrawing
              frame={frame}
              mass={mass}
              chance={chance}
              steps={steps}
              at={at}
              emptyHelp={emptyHelp}
              full={
                shownFull === null
                  ? null
                  : {
                      grams: shownFull.grams,
                      words: t(`kit.full${width < 560 ? 'Short' : ''}.${shownFull.what}`, {
                        mass: format.mass(shownFull.grams),
                      }),
                    }
              }
              balloons={placeBalloons(
                width < 560
                  ? nearestGroups(balloonGroups(steps, listed, steps.length), at, 2, 2)
                  : balloonGroups(steps, listed, 6),
                steps,
                mass,
                chance,
                frame,
                x,
              )}
              links={linksOf(curve, shownFull?.grams ?? null, mass, frame, format, t)}
              format={format}
              unit={unit}
              unitWord={format.units === 'inch' ? 'lb' : 'kg'}
            />
            <Handle
              x={x}
              y={frame.bottom + 2}
              label={t('kit.handle')}
              valueText={t('kit.handleValue', {
                mass: format.mass(here.grams),
                chance: format.chance(1 - here.unaided),
              })}
              index={at}
              count={steps.length}
              onMove={curve.move}
              onRelease={curve.release}
              stepAt={(px) => nearestStep(steps, mass.grams(px))}
            />
          </>
        )}
      </div>
      <div className="curve-steps">
        <StepButton curve={curve} to={at - 1} kind="lighter" />
        <StepButton curve={curve} to={at + 1} kind="heavier" />
      </div>
    </figure>
  );
}

function StepButton({ curve, to, kind }: { curve: Curve; to: number; kind: 'lighter' | 'heavier' }) {
  const { t } = useTranslation();
  const format = useFormat();
  const step = curve.steps[to];
  if (step === undefined)
    return (
      <Button isDisabled onPress={() => undefined}>
        <span>{t(kind === 'lighter' ? 'kit.lightest' : 'kit.heaviest')}</span>
      </Button>
    );
  return (
    <Button onPress={() => curve.choose(to)}>
      <span className="keep">{t(`kit.${kind}`, { mass: format.mass(step.grams) })}</span>
      <span className="quiet small keep">
        {format.oneIn(1 - step.unaided)}, {finePercent(1 - step.unaided)}
      </span>
    </Button>
  );
}

type Words = TFunction;

function linksOf(
  { steps, at, everything }: Curve,
  full: number | null,
  mass: ReturnType<typeof massScale>,
  frame: ReturnType<typeof frameFor>,
  format: Format,
  t: Words,
): readonly Link[] {
  const grams = steps[at]?.grams ?? 0;
  const here = mass.x(grams);
  const beside = frame.width < 560 ? BESIDE_GRIP : 0;
  const broken = { start: mass.breakBefore, end: mass.breakAfter };
  const along: Link = {
    from: frame.left,
    to: here - beside,
    words: [t('kit.along', { mass: format.mass(grams) }), format.mass(grams)],
    bold: true,
    broken: broken.start,
  };
  const last = (from: number, over: number, key: 'past' | 'home'): Link => ({
    from,
    to: frame.right,
    words: [t(`kit.${key}`, { mass: format.mass(over) }), t(`kit.${key}Short`, { mass: format.mass(over) })],
    broken: broken.end,
  });
  if (full === null) return [along, last(here + beside, Math.max(0, everything - grams), 'home')];
  const limit = mass.x(full);
  if (full <= grams) return [along, last(here + beside, everything - grams, 'home')];
  const free: Link = {
    from: here + beside,
    to: limit,
    words: [
      t('kit.free', { mass: format.mass(full - grams) }),
      t('kit.freeShort', { mass: format.mass(full - grams) }),
    ],
  };
  return [along, free, last(limit, everything - full, 'past')];
}
