import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useChange } from './use-change.ts';

/** What the plate allows and what the vehicle weighs empty, each with where it is read off. */
export function RatingsBlock({ id, vehicle }: { id: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const change = useChange(id);
  const load = useFieldUnit('load');
  const length = useFieldUnit('length');
  const trailer = vehicle.kind === 'trailer';
  const rating = (key: 'ratedFrontKg' | 'ratedRearKg' | 'ratedGrossKg', label: string, hint: string) => (
    <QuantityField
      label={label}
      hint={hint}
      unit={load}
      least={1}
      value={vehicle[key]}
      onChange={(kg) => kg !== null && change(label, { [key]: kg })}
    />
  );
  const empty = (key: 'emptyFrontKg' | 'emptyRearKg', label: string) => (
    <QuantityField
      label={label}
      unit={load}
      least={0}
      value={vehicle[key]}
      onChange={(kg) => kg !== null && change(label, { [key]: kg })}
    />
  );
  return (
    <Block
      title={t('vehicle.ratings')}
      aside={vehicle.ratingsAssumed === true ? t('vehicle.ratingsAssumed') : t('vehicle.ratingsRead')}
    >
      <p className="prose small quiet">{t('vehicle.whereRatings')}</p>
      <div className="fields">
        <SettledTextField
          label={t('vehicle.name')}
          value={vehicle.name}
          onSettle={(name) => change(t('vehicle.name'), { name })}
        />
        {rating(
          'ratedFrontKg',
          t(trailer ? 'vehicle.ratedNose' : 'vehicle.ratedFront'),
          t('vehicle.onPlate'),
        )}
        {rating('ratedRearKg', t(trailer ? 'vehicle.ratedAxle' : 'vehicle.ratedRear'), t('vehicle.onPlate'))}
        {rating('ratedGrossKg', t('vehicle.ratedGross'), t('vehicle.onPlate'))}
        <QuantityField
          label={t('vehicle.ratedRoof')}
          hint={t('vehicle.roofHint')}
          unit={load}
          least={0}
          value={vehicle.ratedRoofKg ?? null}
          onChange={(kg) => change(t('vehicle.ratedRoof'), { ratedRoofKg: kg ?? undefined })}
        />
        {empty('emptyFrontKg', t(trailer ? 'vehicle.emptyNose' : 'vehicle.emptyFront'))}
        {empty('emptyRearKg', t(trailer ? 'vehicle.emptyAxle' : 'vehicle.emptyRear'))}
        <QuantityField
          label={t(trailer ? 'vehicle.toCoupling' : 'vehicle.wheelbase')}
          hint={t('vehicle.wheelbaseHint')}
          unit={length}
          least={500}
          most={9000}
          value={vehicle.wheelbaseMm}
          onChange={(mm) => mm !== null && change(t('vehicle.wheelbase'), { wheelbaseMm: mm })}
        />
      </div>
      {vehicle.ratingsAssumed === true && (
        <div className="acts">
          <Button onPress={() => change(t('vehicle.ratings'), { ratingsAssumed: false })}>
            {t('vehicle.ratingsAreRead')}
          </Button>
        </div>
      )}
    </Block>
  );
}
