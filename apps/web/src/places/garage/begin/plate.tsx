import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useRecord } from '../../../shell/stores.tsx';

const RATINGS = ['ratedGrossKg', 'ratedFrontKg', 'ratedRearKg', 'ratedRoofKg'] as const;

/** How to read the plate, with the pattern's typical ratings standing in until it has been read. */
export function Plate({ vehicleId, vehicle }: { vehicleId: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const unit = useFieldUnit('load');
  const change = (fields: Partial<Vehicle>) =>
    void edit(t('begin.plate.changed', { name: vehicle.name }), (before) => {
      const known = before.vehicles[vehicleId];
      return known === undefined
        ? before
        : { ...before, vehicles: { ...before.vehicles, [vehicleId]: { ...known, ...fields } } };
    });
  return (
    <Block title={t('begin.plate.title')} aside={<span className="assumed">{t('begin.plate.assumed')}</span>}>
      <p className="prose">{t('begin.plate.how')}</p>
      <p className="prose quiet">{t('begin.plate.unknown')}</p>
      <div className="fields">
        <SettledTextField
          label={t('begin.plate.name')}
          value={vehicle.name}
          onSettle={(name) => change({ name: name === '' ? vehicle.name : name })}
        />
        {RATINGS.map((key) => (
          <QuantityField
            key={key}
            label={t(`begin.plate.${key}`)}
            hint={t('begin.plate.typical')}
            unit={unit}
            value={vehicle[key] ?? null}
            least={0}
            onChange={(kg) => kg !== null && change({ [key]: kg })}
          />
        ))}
      </div>
      <div className="acts">
        <Button onPress={() => change({ ratingsAssumed: false })}>{t('begin.plate.read')}</Button>
      </div>
    </Block>
  );
}
