import { insideBag } from '@waymend/garage/road/count-pieces';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLocation } from 'wouter';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { OneOf } from '../../../look/one-of.tsx';
import { Block } from '../../../look/parts.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { freshId } from '../../../shell/fresh-id.ts';
import { usePlan, useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { JobPicker } from '../../garage/job-picker.tsx';
import { useActing } from '../use-acting.ts';
import type { Things } from '../use-things.ts';
import type { Wanted } from './acts.ts';
import { openWith } from './acts.ts';

type For = 'kit' | 'bags' | 'job';

/** Opens a muster: for the whole kit, for bags, or for one job, whose pieces the worker names. */
export function NewMuster({ things }: { things: Things | null }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { reader, today } = useStores();
  const { answer } = usePlan();
  const { tripId, vehicleId } = useTrip();
  const { refused, act } = useActing();
  const [, go] = useLocation();
  const [what, setWhat] = useState<For>('kit');
  const [bags, setBags] = useState<readonly string[]>([]);
  const [job, setJob] = useState<{ readonly id: string; readonly title: string } | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const filled = Object.entries(garage.bags).filter(([id]) => insideBag(garage, id).length > 0);
  const kit = (answer?.kit.items ?? []).filter(({ bought }) => !bought);
  if (vehicleId === null) return <p className="sentence">{t('bags.muster.noVehicle')}</p>;
  const open = (wanted: readonly Wanted[], note: string | null, forJob: string | null): void => {
    if (wanted.length === 0) {
      setSaid(t('bags.muster.nothingToCount'));
      return;
    }
    const id = freshId('muster');
    const start = {
      id,
      vehicle: vehicleId,
      on: dateOf(today()),
      ...(tripId === null ? {} : { trip: tripId }),
      ...(forJob === null ? {} : { job: forJob }),
      ...(note === null ? {} : { note }),
    };
    if (act(t('bags.muster.stepOpen'), (g) => openWith(g, start, wanted, freshId))) go(`/bags/muster/${id}`);
  };
  const begin = (): void => {
    setSaid(null);
    if (what === 'kit')
      open(
        kit.map(({ id, copies }) => ({ belonging: id, pieces: copies })),
        t('bags.muster.kitNote'),
        null,
      );
    else if (what === 'bags') {
      const names = bags.map((bag) => garage.bags[bag]?.name ?? bag).join(', ');
      open(
        bags
          .flatMap((bag) => insideBag(garage, bag))
          .map((belonging) => ({ belonging, pieces: garage.belongings[belonging]?.copies ?? 1 })),
        names.slice(0, 200),
        null,
      );
    } else if (job !== null && tripId !== null) {
      const lines = kit.map(({ id, copies }) => ({ id, copies }));
      void reader.once({ kind: 'bags/job', garage, trip: tripId, kit: lines, job: job.id }).then((reply) => {
        if (reply.kind === 'bags/job') open(reply.pieces, null, job.id);
        else if (reply.kind === 'refused') setSaid(reply.refusals[0]?.message ?? null);
      });
    }
  };
  const ready =
    things !== null &&
    (what === 'kit' ? kit.length > 0 : what === 'bags' ? bags.length > 0 : job !== null && kit.length > 0);
  return (
    <Block title={t('bags.muster.newTitle')}>
      <OneOf
        label={t('bags.muster.forWhat')}
        value={what}
        onChange={setWhat}
        across
        options={[
          { id: 'kit', label: t('bags.muster.forKit') },
          { id: 'bags', label: t('bags.muster.forBags') },
          { id: 'job', label: t('bags.muster.forJob') },
        ]}
      />
      {what === 'kit' && (
        <p className="quiet">
          {kit.length === 0 ? t('bags.muster.kitComing') : t('bags.muster.kitWords', { count: kit.length })}
        </p>
      )}
      {what === 'bags' &&
        (filled.length === 0 ? (
          <p className="quiet">{t('bags.muster.noBags')}</p>
        ) : (
          <div className="bag-checks">
            {filled.map(([id, bag]) => (
              <Check
                key={id}
                isOn={bags.includes(id)}
                onChange={(isOn) => setBags(isOn ? [...bags, id] : bags.filter((one) => one !== id))}
              >
                {t('bags.muster.bagLine', { name: bag.name, count: insideBag(garage, id).length })}
              </Check>
            ))}
          </div>
        ))}
      {what === 'job' && (
        <JobPicker
          chosen={job === null ? [] : [job.id]}
          onAdd={(id, title) => setJob({ id, title })}
          onRemove={() => setJob(null)}
          label={t('bags.muster.jobLabel')}
          hint={t('bags.muster.jobHint')}
          none={t('bags.muster.jobNone')}
        />
      )}
      {(refused ?? said) !== null && <p role="alert">{refused ?? said}</p>}
      <div className="acts">
        <Button main isDisabled={!ready} onPress={begin}>
          {t('bags.muster.open')}
        </Button>
      </div>
    </Block>
  );
}
