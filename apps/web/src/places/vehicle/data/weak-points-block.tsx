import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Choice, NumberField } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import { putWeakPoint, removeWeakPoint } from '../edits.ts';
import { useFacts } from '../use-facts.ts';

const USUAL_FACTOR = 3;

/** What the owner knows breaks on this vehicle: one failure, so many times likelier. */
export function WeakPointsBlock({ id }: { id: string }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const facts = useFacts();
  const [failure, setFailure] = useState<string | null>(null);
  const [factor, setFactor] = useState<number | null>(USUAL_FACTOR);
  const own = Object.entries(garage.weakPoints).filter(([, w]) => w.vehicle === id);
  const titleOf = (one: string) => facts?.failures.find((f) => f.id === one)?.title ?? one;
  const first = facts?.failures[0]?.id ?? '';
  return (
    <Block title={t('vehicle.weakPoints')}>
      <p className="prose small quiet">{t('vehicle.weakWhat')}</p>
      <ul className="rows">
        {own.map(([key, weak]) => (
          <li key={key} className="weak-row">
            <span>
              {titleOf(weak.failure)}, {t('vehicle.times', { factor: weak.factor })}
            </span>
            <Button
              label={t('vehicle.weakForget', { title: titleOf(weak.failure) })}
              onPress={() =>
                void edit(t('vehicle.weakForget', { title: titleOf(weak.failure) }), (g) =>
                  removeWeakPoint(g, key),
                )
              }
            >
              {t('vehicle.remove')}
            </Button>
          </li>
        ))}
      </ul>
      {facts !== null && (
        <div className="fields">
          <Choice
            label={t('vehicle.weakWhich')}
            value={failure ?? first}
            onChange={setFailure}
            options={facts.failures.map((f) => ({ id: f.id, label: f.title }))}
          />
          <NumberField
            label={t('vehicle.weakFactor')}
            least={0.1}
            most={100}
            digits={1}
            value={factor}
            onChange={setFactor}
          />
        </div>
      )}
      <div className="acts">
        <Button
          isDisabled={facts === null || factor === null}
          onPress={() => {
            const which = failure ?? first;
            if (factor === null) return;
            void edit(t('vehicle.weakAdded', { title: titleOf(which) }), (g) =>
              putWeakPoint(g, freshId(which), { vehicle: id, failure: which, factor }),
            );
          }}
        >
          {t('vehicle.weakAdd')}
        </Button>
      </div>
    </Block>
  );
}
