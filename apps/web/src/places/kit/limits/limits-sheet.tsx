import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Choice, NumberField } from '../../../look/field.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import type { AimChoice } from '../../../shell/aim.ts';
import { chooseAim, useAim } from '../../../shell/aim.ts';
import { usePlan, useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { Limits } from '../edits.ts';
import { withLimit } from '../edits.ts';
import { NoPlan } from '../no-plan.tsx';
import { LoadsLeft } from '../sheet/loads-left.tsx';
import { tripsSentence } from '../sheet/worth-words.ts';
import { Button } from '../../../look/button.tsx';
import './limits.css';

const AIMS: readonly AimChoice['kind'][] = ['best-chance', 'least-mass', 'must-do'];

/** What is aimed at, and what the kit may weigh, take up and cost. */
export function LimitsSheet() {
  const { t } = useTranslation();
  const { answer, noPlan, proving } = usePlan();
  const { tripId, trip } = useTrip();
  const format = useFormat();
  if (tripId === null || trip === null)
    return (
      <div className="kit-empty">
        <h1>{t('kit.limits')}</h1>
        <p>{t('kit.noTripWords')}</p>
        <Link href="/garage/trip" className="word-link">
          {t('kit.toTrip')}
        </Link>
      </div>
    );
  return (
    <div className="limits">
      <header className="kit-head">
        <h1>{t('kit.limits')}</h1>
        <p className="quiet" role="status">
          {proving
            ? t('kit.planning')
            : answer === null
              ? ''
              : t('kit.nowIs', {
                  sentence: tripsSentence(1 - answer.unaided.kit, format, t),
                  mass: format.mass(answer.kit.massGrams),
                })}
        </p>
      </header>
      <div className="limits-columns">
        <Aim mustDo={trip.mustDo} />
        <TripLimits tripId={tripId} />
      </div>
      {noPlan !== null && <NoPlan sentences={noPlan} />}
      {answer !== null && noPlan === null && <LoadsLeft load={answer.load} />}
    </div>
  );
}

function Aim({ mustDo }: { mustDo: readonly string[] }) {
  const { t } = useTranslation();
  const aim = useAim();
  return (
    <Block title={t('kit.aim')}>
      <OneOf
        label={t('kit.aimAside')}
        value={aim.kind}
        onChange={(kind) => chooseAim({ kind })}
        options={AIMS.map((id) => ({ id, label: t(`kit.aims.${id}`), remark: t(`kit.aimWords.${id}`) }))}
      />
      {aim.kind === 'least-mass' && (
        <NumberField
          label={t('kit.helpAtMost')}
          hint={t('kit.helpHint')}
          value={aim.oneIn}
          least={1.05}
          most={10000}
          digits={1}
          onChange={(oneIn) => oneIn !== null && chooseAim({ oneIn })}
        />
      )}
      {aim.kind === 'must-do' && (
        <>
          <p>{mustDo.length === 0 ? t('kit.noMustDo') : t('kit.mustDoCount', { count: mustDo.length })}</p>
          <Link href="/garage/trip" className="word-link">
            {t('kit.toTrip')}
          </Link>
        </>
      )}
    </Block>
  );
}

function TripLimits({ tripId }: { tripId: string }) {
  const { t } = useTranslation();
  const mass = useFieldUnit('mass');
  const room = useFieldUnit('room');
  const { garage, edit } = useRecord();
  const { trip } = useTrip();
  if (trip === null) return null;
  const set = (what: string, limits: Limits): void =>
    void edit(t('kit.limitChanged', { what }), (before) => withLimit(before, tripId, limits));
  return (
    <Block title={t('kit.limitsOf')} aside={trip.name}>
      <div className="fields">
        <QuantityField
          label={t('kit.massLimit')}
          hint={t('kit.massLimitHint')}
          unit={mass}
          value={trip.limitKg ?? null}
          least={0}
          most={10000}
          onChange={(kg) => set(t('kit.massLimit'), { grams: kg === null ? null : Math.round(kg * 1000) })}
        />
        <QuantityField
          label={t('kit.volumeLimit')}
          hint={t('kit.volumeLimitHint')}
          unit={room}
          value={trip.limitLitres ?? null}
          least={0}
          most={10000}
          onChange={(litres) => set(t('kit.volumeLimit'), { litres })}
        />
        <NumberField
          label={t('kit.budget')}
          hint={t('kit.budgetHint')}
          unit={garage.currency}
          value={trip.budget}
          least={0}
          most={1000000}
          digits={2}
          onChange={(value) => set(t('kit.budget'), { budget: value ?? 0 })}
        />
        <Choice
          label={t('kit.buyFrom')}
          hint={t('kit.buyFromHint')}
          value={trip.buyFrom}
          options={[
            { id: 'listed', label: t('kit.buyListed') },
            { id: 'catalogue', label: t('kit.buyCatalogue') },
          ]}
          onChange={(buyFrom) => set(t('kit.buyFrom'), { buyFrom })}
        />
      </div>
      {trip.limitKg !== undefined && (
        <div className="acts">
          <Button onPress={() => set(t('kit.massLimit'), { grams: null })}>{t('kit.noMassLimit')}</Button>
        </div>
      )}
    </Block>
  );
}
