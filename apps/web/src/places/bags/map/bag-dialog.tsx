import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Dialog } from '../../../look/dialog.tsx';
import { Choice, TextField } from '../../../look/field.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { freshId } from '../../../shell/fresh-id.ts';
import { useRecord } from '../../../shell/stores.tsx';
import type { Bag } from './map-acts.ts';
import { removeBag, saveBag } from './map-acts.ts';

const KINDS = ['roll', 'pouch', 'bag', 'box', 'case'] as const;
const SIZES = ['lengthMm', 'widthMm', 'heightMm'] as const;
const NOWHERE = '';
const LONGEST_NAME = 120;
const MOST_MM = 5000;

/** A bag as its owner describes it: name, kind, inside size, where it rides. `id` null: a new one. */
export function BagDialog({
  id,
  vehicle,
  onClose,
}: {
  id: string | null;
  vehicle: string;
  onClose: () => void;
}) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const length = useFieldUnit('length');
  const before = id === null ? undefined : garage.bags[id];
  const [bag, setBag] = useState<Bag>(before ?? { name: '', grams: 0 });
  const name = bag.name.trim();
  const berths = Object.entries(garage.berths).filter(([, berth]) => berth.vehicle === vehicle);
  const without = (field: keyof Bag): Bag => {
    const next = { ...bag };
    Reflect.deleteProperty(next, field);
    return next;
  };
  const save = (): void => {
    const key = id ?? freshId(name);
    void edit(t('bags.map.stepBag', { name }), (g) => saveBag(g, key, { ...bag, name }));
    onClose();
  };
  return (
    <Dialog title={before?.name ?? t('bags.map.newBag')} isOpen onClose={onClose}>
      <div className="fate bag-fields">
        <TextField
          label={t('bags.map.name')}
          value={bag.name}
          onChange={(typed) => setBag({ ...bag, name: typed.slice(0, LONGEST_NAME) })}
        />
        <Choice
          label={t('bags.map.kind')}
          value={bag.kind ?? 'bag'}
          onChange={(kind) => setBag({ ...bag, kind })}
          options={KINDS.map((kind) => ({ id: kind, label: t(`bags.map.kinds.${kind}`) }))}
        />
        <Choice
          label={t('bags.map.berth')}
          value={bag.berth ?? NOWHERE}
          onChange={(berth) => setBag(berth === NOWHERE ? without('berth') : { ...bag, berth })}
          options={[
            { id: NOWHERE, label: t('bags.map.noBerth') },
            ...berths.map(([berth, { name: label }]) => ({ id: berth, label })),
          ]}
        />
        {SIZES.map((field) => (
          <QuantityField
            key={field}
            label={t(`bags.map.sizes.${field}`)}
            unit={length}
            least={1}
            most={MOST_MM}
            value={bag[field] ?? null}
            onChange={(value) => setBag(value === null ? without(field) : { ...bag, [field]: value })}
          />
        ))}
        <p className="small quiet">{t('bags.map.sizesHint')}</p>
        <Check
          isOn={bag.firstGrab === true}
          onChange={(isOn) => setBag(isOn ? { ...bag, firstGrab: true } : without('firstGrab'))}
        >
          {t('bags.map.firstGrab')}
        </Check>
        <Check
          isOn={bag.spillproof === true}
          onChange={(isOn) => setBag(isOn ? { ...bag, spillproof: true } : without('spillproof'))}
        >
          {t('bags.map.spillproof')}
        </Check>
        <div className="acts">
          <Button main isDisabled={name === ''} onPress={save}>
            {t('bags.map.saveBag')}
          </Button>
          {id !== null && (
            <Button
              label={t('bags.map.removeBagLabel', { name: bag.name })}
              onPress={() => {
                void edit(t('bags.map.stepRemoved', { name: bag.name }), (g) => {
                  const next = removeBag(g, id);
                  return next.ok ? next.value : g;
                });
                onClose();
              }}
            >
              {t('bags.map.removeBag')}
            </Button>
          )}
        </div>
      </div>
    </Dialog>
  );
}
