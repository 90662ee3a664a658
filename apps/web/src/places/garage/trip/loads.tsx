import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Trip } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Choice } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import type { Load } from './edit-trip.ts';
import { addLoad, changeLoad, removeLoad } from './edit-trip.ts';

/** What trips usually carry besides the kit, with a typical mass to correct (common practice, no source). */
const USUAL = [
  { kind: 'water', kg: 40 },
  { kind: 'fuel', kg: 17 },
  { kind: 'recovery', kg: 25 },
  { kind: 'medical', kg: 3 },
  { kind: 'air', kg: 2 },
  { kind: 'camping', kg: 60 },
  { kind: 'other', kg: 20 },
] as const;
const NONE = '';

/** Other loads: counted where they ride, never chosen. */
export function Loads({ tripId, trip }: { tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage, edit } = useRecord();
  const loads = trip.loads.flatMap((id) => {
    const load = garage.loads[id];
    return load === undefined ? [] : [[id, load] as const];
  });
  const whereIs = useWhere();
  const [open, setOpen] = useState<string | null>(null);
  const kg = loads.reduce((sum, [, load]) => sum + load.kg, 0);
  return (
    <Block title={t('trip.loads.title')} aside={t('trip.loads.sum', { mass: format.load(kg) })}>
      <p className="prose quiet">{t('trip.loads.hint')}</p>
      <ul className="rows">
        {loads.map(([id, load]) => (
          <li key={id} className="row">
            <More
              title={load.name}
              summary={t('trip.loads.summary', { mass: format.load(load.kg), where: whereIs(load) })}
              isOpen={id === open}
              onOpenChange={(isOpen) => setOpen(isOpen ? id : null)}
            >
              {id === open && <LoadForm id={id} load={load} tripId={tripId} vehicle={trip.vehicle} />}
            </More>
          </li>
        ))}
      </ul>
      <div className="acts" role="group" aria-label={t('trip.loads.add')}>
        {USUAL.map(({ kind, kg: usual }) => (
          <Button
            key={kind}
            label={t('trip.loads.addLabel', { kind: t(`trip.kind.${kind}`) })}
            onPress={() => {
              const name = t(`trip.kind.${kind}`);
              const id = freshId(kind);
              setOpen(id);
              void edit(t('trip.loads.added', { name }), (before) =>
                addLoad(before, tripId, id, {
                  name,
                  kg: usual,
                  kind,
                  ...(trip.kitBerth === undefined ? {} : { berth: trip.kitBerth }),
                }),
              );
            }}
          >
            {t('trip.loads.plus', { kind: t(`trip.kind.${kind}`) })}
          </Button>
        ))}
      </div>
    </Block>
  );
}

function LoadForm({
  id,
  load,
  tripId,
  vehicle,
}: {
  id: string;
  load: Load;
  tripId: string;
  vehicle: string;
}) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const unit = useFieldUnit('load');
  const set = (fields: Partial<Load>) =>
    void edit(t('trip.loads.changed', { name: load.name }), (before) => changeLoad(before, id, fields));
  const berths = Object.entries(garage.berths).filter(([, berth]) => berth.vehicle === vehicle);
  const nowhere = useNowhere();
  const here = berths.some(([berth]) => berth === load.berth) ? (load.berth ?? NONE) : NONE;
  return (
    <div className="load-form" role="group" aria-label={load.name}>
      <SettledTextField
        label={t('trip.loads.name')}
        value={load.name}
        onSettle={(name) => {
          if (name !== '') set({ name });
        }}
      />
      <QuantityField
        label={t('trip.loads.mass')}
        unit={unit}
        value={load.kg}
        least={0}
        most={10_000}
        onChange={(kg) => kg !== null && set({ kg })}
      />
      <Choice
        label={t('trip.loads.berth')}
        value={here}
        options={[
          { id: NONE, label: nowhere(load) },
          ...berths.map(([berth, { name }]) => ({ id: berth, label: name })),
        ]}
        onChange={(berth) => set(Object.fromEntries([['berth', berth === NONE ? undefined : berth]]))}
      />
      <Button
        label={t('trip.loads.removeLabel', { name: load.name })}
        onPress={() =>
          void edit(t('trip.loads.removed', { name: load.name }), (before) => removeLoad(before, tripId, id))
        }
      >
        {t('trip.loads.remove')}
      </Button>
    </div>
  );
}

/** Where a load rides that is in no berth. */
function useNowhere(): (load: Load) => string {
  const { t } = useTranslation();
  return ({ kind, xMm }) => {
    if (kind === 'trailer-nose') return t('trip.loads.onHitch');
    return t(xMm === undefined ? 'trip.loads.overAxle' : 'trip.loads.own');
  };
}

function useWhere(): (load: Load) => string {
  const { garage } = useRecord();
  const nowhere = useNowhere();
  return (load) => (load.berth === undefined ? undefined : garage.berths[load.berth]?.name) ?? nowhere(load);
}
