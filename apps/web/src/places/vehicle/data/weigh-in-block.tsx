import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Block, Sentence } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { VehicleRequest } from '../../../worker/vehicle/protocol.ts';
import { changeVehicle } from '../edits.ts';
import { dateOf } from '../../../shell/date-of.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { useKit } from '../use-kit.ts';

/** Two readings of a scale, axle by axle, with what was aboard: its moments are taken off again. */
export function WeighInBlock({ id, vehicle }: { id: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const format = useFormat();
  const load = useFieldUnit('load');
  const { garage, edit } = useRecord();
  const { today, reader } = useStores();
  const { tripId, trip } = useTrip();
  const { kit } = useKit();
  const [front, setFront] = useState<number | null>(null);
  const [rear, setRear] = useState<number | null>(null);
  const [aboard, setAboard] = useState<ReadonlySet<string>>(new Set());
  const [refused, setRefused] = useState<string | null>(null);
  const ours = trip?.vehicle === id ? tripId : null;
  const request = useMemo(
    (): VehicleRequest | null => (ours === null ? null : { kind: 'vehicle/load', garage, trip: ours, kit }),
    [garage, ours, kit],
  );
  const { reply } = useAsk(request);
  const things = reply?.kind === 'vehicle/load' ? reply.view.spots.flatMap((s) => s.aboard) : [];
  const single = things.filter(({ kind }) => kind !== 'kit');
  const pieces = things.filter(({ kind }) => kind === 'kit');
  const mark = (ids: readonly string[], on: boolean) => {
    const next = new Set(aboard);
    for (const one of ids) {
      if (on) next.add(one);
      else next.delete(one);
    }
    setAboard(next);
  };
  const record = async (emptyFrontKg: number, emptyRearKg: number) => {
    const names = [
      ...single.filter((s) => aboard.has(s.id)).map(({ name }) => name),
      ...(pieces.some((p) => aboard.has(p.id)) ? [t('load.kit')] : []),
    ];
    const line = t('vehicle.weighedNote', {
      date: dateOf(today()),
      front: format.load(front ?? 0),
      rear: format.load(rear ?? 0),
      aboard: names.length === 0 ? t('vehicle.nothing') : names.join(', '),
    });
    const note = [vehicle.note, line].filter((part) => part !== undefined && part !== '').join('\n');
    await edit(t('vehicle.weighedTitle', { name: vehicle.name }), (g) =>
      changeVehicle(g, id, { emptyFrontKg, emptyRearKg, weighed: true, note: note.slice(-2000) }),
    );
    setFront(null);
    setRear(null);
  };
  const act = async () => {
    if (front === null || rear === null) return;
    setRefused(null);
    if (ours === null) return record(front, rear);
    const said = await reader.once({
      kind: 'vehicle/weigh-in',
      garage,
      trip: ours,
      kit,
      frontKg: front,
      rearKg: rear,
      aboard: [...aboard],
    });
    if (said.kind === 'vehicle/weigh-in') return record(said.weighed.emptyFrontKg, said.weighed.emptyRearKg);
    setRefused(said.kind === 'refused' ? (said.refusals[0]?.message ?? '') : t('vehicle.weighBroken'));
  };
  return (
    <Block title={t('vehicle.weighIn')} aside={vehicle.weighed ? t('load.weighed') : t('load.notWeighed')}>
      <p className="prose small quiet">{t('vehicle.weighHow')}</p>
      <div className="fields">
        <QuantityField
          label={t('vehicle.scaleFront')}
          unit={load}
          least={0}
          value={front}
          onChange={setFront}
        />
        <QuantityField label={t('vehicle.scaleRear')} unit={load} least={0} value={rear} onChange={setRear} />
      </div>
      {things.length > 0 && (
        <div role="group" aria-label={t('vehicle.aboardThen')}>
          <p>{t('vehicle.aboardThen')}</p>
          <div className="checks">
            {single.map(({ id: one, name, kg }) => (
              <Check key={one} isOn={aboard.has(one)} onChange={(on) => mark([one], on)}>
                {name}, {format.load(kg)}
              </Check>
            ))}
            {pieces.length > 0 && (
              <Check
                isOn={pieces.every((p) => aboard.has(p.id))}
                onChange={(on) =>
                  mark(
                    pieces.map((p) => p.id),
                    on,
                  )
                }
              >
                {t('vehicle.wholeKit', { mass: format.load(pieces.reduce((sum, p) => sum + p.kg, 0)) })}
              </Check>
            )}
          </div>
        </div>
      )}
      {refused !== null && (
        <div role="alert">
          <Sentence strong>{refused}</Sentence>
        </div>
      )}
      <div className="acts">
        <Button isDisabled={front === null || rear === null} onPress={() => void act()}>
          {t('vehicle.recordWeighing')}
        </Button>
      </div>
      {vehicle.note !== undefined && <p className="note small quiet">{vehicle.note}</p>}
    </Block>
  );
}
