import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { useAim } from '../../../shell/aim.ts';
import { usePlan, useStores } from '../../../shell/stores.tsx';
import type { Curve } from '../curve/use-curve.ts';
import { exchange } from '../curve/steps.ts';
import { tripsSentence } from './worth-words.ts';

/** The answer in a sentence; beneath it what comes, and how sure that it is the best. Follows the handle. */
export function Headline({ answer, curve }: { answer: PlanAnswer; curve: Curve }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { desk } = useStores();
  const { proving, fresh } = usePlan();
  const here = curve.steps[curve.at];
  const help = 1 - (here?.unaided ?? answer.unaided.kit);
  const mass = format.mass(here?.grams ?? answer.kit.massGrams);
  return (
    <header className="kit-headline">
      <div className="kit-headline-answer">
        <h1>{tripsSentence(help, format, t)}</h1>
        {proving && <Button onPress={() => desk.stopProof()}>{t('kit.stop')}</Button>}
      </div>
      <p>
        {t('kit.comesOf', {
          mass,
          owned: format.mass(curve.everything),
          count: here?.pieces ?? 0,
          pieces: format.count(here?.pieces ?? 0),
        })}{' '}
        <span className="quiet" hidden={curve.moved}>
          {t('kit.believed', {
            best: format.oneIn(1 - answer.unaided.high),
            worst: format.oneIn(1 - answer.unaided.low),
          })}
        </span>
      </p>
      <div className="kit-status quiet">
        {curve.moved && fresh ? (
          <Exchanged answer={answer} curve={curve} />
        ) : (
          <Proof answer={answer} mass={mass} />
        )}
      </div>
    </header>
  );
}

/** How sure it is that nothing does better, or how far the proof is. */
function Proof({ answer, mass }: { answer: PlanAnswer; mass: string }) {
  const { t } = useTranslation();
  const format = useFormat();
  const aim = useAim();
  const { proving, fresh, progress, curveDone, curve } = usePlan();
  if (proving || !fresh)
    return (
      <p role="status">
        {progress === null || progress.unaided === null
          ? t('kit.planning')
          : t('kit.proving', {
              mass: format.mass(progress.grams ?? 0),
              chance: format.oneIn(1 - progress.unaided),
              best: format.percent(1 - progress.atBest),
            })}
      </p>
    );
  const sure =
    answer.status !== 'proven'
      ? t('kit.withinGap', { gap: format.percent(answer.gap) })
      : aim.kind === 'best-chance'
        ? t('kit.provenBest', { mass })
        : t(aim.kind === 'least-mass' ? 'kit.provenLeast' : 'kit.provenMust');
  return (
    <p role="status">
      {sure} {!curveDone && t('kit.drawing', { count: curve.length })}{' '}
      {aim.kind !== 'best-chance' && (
        <Link href="/kit/limits">{t(`kit.aimNow.${aim.kind}`, { oneIn: aim.oneIn })}</Link>
      )}
    </p>
  );
}

/** While the handle is moved: what would join and what would stay. */
function Exchanged({ answer, curve }: { answer: PlanAnswer; curve: Curve }) {
  const { t } = useTranslation();
  const from = curve.steps[curve.kit];
  const to = curve.steps[curve.at];
  if (from === undefined || to === undefined) return null;
  const { joins, leaves } = exchange(from, to);
  const names = new Map(
    [...answer.kit.items, ...answer.stayHome, ...answer.shop.left].map(({ id, name }) => [id, name]),
  );
  const said = (ids: readonly string[]): string => {
    const [id = '', ...rest] = ids;
    const name = names.get(id) ?? id;
    return rest.length > 0 ? t('kit.andMore', { names: name, count: rest.length }) : name;
  };
  return (
    <p>
      {joins.length > 0 && t('kit.joins', { names: said(joins) })}{' '}
      {leaves.length > 0 && t('kit.leaves', { names: said(leaves) })}
    </p>
  );
}
