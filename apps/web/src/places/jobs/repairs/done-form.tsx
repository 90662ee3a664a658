import type { RepairWay } from '@waymend/planner/card/repair-ways';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLocation } from 'wouter';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { LinkButton } from '../../../look/link-button.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import type { JobsReply } from '../../../worker/jobs/protocol.ts';
import { writeTicks } from '../ticks.ts';
import { MOST_KM } from './most-km.ts';
import type { Ended } from './record-done.ts';
import { recordDone, usualEnd } from './record-done.ts';
import { lastShownKm } from './shown-km.ts';
import { useAct } from './use-act.ts';

const PROPERLY = 'properly';
const NOT_A_FAILURE = 'none';
const ENDS: readonly Ended[] = ['mended', 'limped', 'waited', 'towed'];

/** How it was done, at which odometer, and what had failed; the limits come from the card. */
export function DoneForm({
  card,
  trip,
  vehicle,
  known,
  first,
}: {
  /** The job as the card names it, 'SS-04@front'. */
  card: string;
  trip: string;
  vehicle: string;
  known: Extract<JobsReply, { kind: 'jobs/ways' }>;
  first: RepairWay;
}) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { today } = useStores();
  const [, go] = useLocation();
  const unit = useFieldUnit('distance');
  const { refusal, act } = useAct();
  const [wayId, setWayId] = useState(PROPERLY);
  const [km, setKm] = useState(() => lastShownKm(garage, vehicle));
  const [failure, setFailure] = useState(known.causes[0]?.failure ?? NOT_A_FAILURE);
  const [ended, setEnded] = useState<Ended | null>(null);
  const [note, setNote] = useState('');
  const way = known.ways.find(({ expedient }) => (expedient ?? PROPERLY) === wayId) ?? first;
  const title = first.title;
  const end = ended ?? usualEnd(way.limits.lasts);
  const record = () => {
    if (km === null) return;
    const done = {
      repair: freshId('repair'),
      breakdown: freshId('breakdown'),
      vehicle,
      trip,
      job: known.job,
      way,
      failure: failure === NOT_A_FAILURE ? null : failure,
      ended: end,
      on: dateOf(today()),
      atKm: km,
      note,
    };
    if (!act(t('jobs.done.recorded', { title: way.title }), (g) => recordDone(g, done))) return;
    writeTicks(trip, card, new Set());
    go('/jobs/repairs');
  };
  return (
    <div className="jobs-sheet done">
      <h1>{t('jobs.done.headline', { title })}</h1>
      <OneOf
        label={t('jobs.done.way')}
        value={wayId}
        onChange={setWayId}
        options={known.ways.map(({ expedient, title: words }) => ({
          id: expedient ?? PROPERLY,
          label: expedient === null ? t('jobs.done.properly') : words,
        }))}
      />
      <WayLimits way={way} />
      <QuantityField
        label={t('jobs.done.odometer')}
        hint={t('jobs.done.odometerHint')}
        unit={unit}
        value={km}
        onChange={setKm}
        least={0}
        most={MOST_KM}
      />
      <OneOf
        label={t('jobs.done.failed')}
        hint={t('jobs.done.failedHint')}
        value={failure}
        onChange={setFailure}
        options={[
          ...known.causes.map(({ failure: id, title: words }) => ({ id, label: words })),
          { id: NOT_A_FAILURE, label: t('jobs.done.notAFailure') },
        ]}
      />
      {failure !== NOT_A_FAILURE && (
        <Choice
          label={t('jobs.done.ended')}
          value={end}
          onChange={setEnded}
          options={ENDS.map((id) => ({ id, label: t(`jobs.done.end.${id}`) }))}
        />
      )}
      <TextField label={t('jobs.done.note')} value={note} onChange={setNote} lines={2} />
      {refusal !== null && (
        <p role="alert" className="decides prose">
          {refusal} {t('jobs.done.replacedWay')}
        </p>
      )}
      <div className="dock">
        <div className="dock-acts">
          <Button main onPress={record} isDisabled={km === null}>
            {t('jobs.done.record')}
          </Button>
          <LinkButton to={`/jobs/card/${card}`}>{t('jobs.done.back')}</LinkButton>
        </div>
      </div>
    </div>
  );
}

/** What the catalogue says of how far and how fast, before it is recorded. */
function WayLimits({ way: { limits } }: { way: RepairWay }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { lasts, trustKm, speedKmh, lookAgainKm } = limits;
  return (
    <Block title={t('jobs.done.limits')}>
      <Sentence strong>{t(`jobs.repairs.lasts.${lasts}`)}</Sentence>
      <ul className="card-rows">
        {trustKm !== undefined && trustKm > 0 && (
          <li>{t('jobs.done.trusted', { distance: format.distance(trustKm) })}</li>
        )}
        {speedKmh !== undefined && <li>{t('jobs.card.atMost', { distance: format.distance(speedKmh) })}</li>}
        <li>
          {lookAgainKm.length === 0
            ? t('jobs.done.noLook')
            : t('jobs.done.looks', { distances: lookAgainKm.map((one) => format.distance(one)).join(', ') })}
        </li>
      </ul>
      <p className="small prose">{t('jobs.repairs.estimate')}</p>
    </Block>
  );
}
