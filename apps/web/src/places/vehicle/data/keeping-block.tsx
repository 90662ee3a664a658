import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { useFormat } from '../../../format/use-format.ts';
import { Check } from '../../../look/check.tsx';
import { Choice, NumberField } from '../../../look/field.tsx';
import { Block } from '../../../look/parts.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { useFacts } from '../use-facts.ts';
import { useChange } from './use-change.ts';

const CARE = ['fresh', 'good', 'average', 'neglected'] as const;
const DEFAULT_INDEX = 112;

/** Tyres, ages, distance and care: what makes failures rarer or likelier. */
export function KeepingBlock({ id, vehicle }: { id: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const format = useFormat();
  const facts = useFacts();
  const change = useChange(id);
  const mass = useFieldUnit('mass');
  const distance = useFieldUnit('distance');
  const length = useFieldUnit('length');
  const { tyre } = vehicle;
  const kg = tyre === undefined ? undefined : facts?.tyreKg[tyre.loadIndex];
  const years = (key: 'ageYears' | 'batteryAgeYears', label: string) => (
    <NumberField
      label={label}
      unit={t('vehicle.years')}
      least={0}
      most={99}
      digits={1}
      value={vehicle[key] ?? null}
      onChange={(value) => change(label, { [key]: value ?? undefined })}
    />
  );
  return (
    <Block title={t('vehicle.keeping')}>
      <div className="fields">
        <NumberField
          label={t('vehicle.loadIndex')}
          hint={
            kg === undefined
              ? t('vehicle.loadIndexHint')
              : t('vehicle.loadIndexKg', { mass: format.load(kg) })
          }
          least={0}
          most={279}
          value={tyre?.loadIndex ?? null}
          onChange={(loadIndex) =>
            change(t('vehicle.loadIndex'), {
              tyre:
                loadIndex === null
                  ? undefined
                  : { passenger: false, ...tyre, loadIndex: Math.round(loadIndex) },
            })
          }
        />
        <NumberField
          label={t('vehicle.tyreAge')}
          hint={t('vehicle.tyreAgeHint')}
          unit={t('vehicle.years')}
          least={0}
          most={40}
          digits={1}
          value={tyre?.ageYears ?? null}
          onChange={(ageYears) => {
            const { ageYears: _, ...rest } = tyre ?? { loadIndex: DEFAULT_INDEX, passenger: false };
            change(t('vehicle.tyreAge'), { tyre: ageYears === null ? rest : { ...rest, ageYears } });
          }}
        />
        <QuantityField
          label={t('vehicle.wheelMass')}
          unit={mass}
          least={1}
          value={vehicle.wheelMassKg ?? null}
          onChange={(value) => change(t('vehicle.wheelMass'), { wheelMassKg: value ?? undefined })}
        />
        <QuantityField
          label={t('vehicle.odometer')}
          unit={distance}
          least={0}
          value={vehicle.odometerKm ?? null}
          onChange={(value) => change(t('vehicle.odometer'), { odometerKm: value ?? undefined })}
        />
        {years('ageYears', t('vehicle.age'))}
        {years('batteryAgeYears', t('vehicle.batteryAge'))}
        <Choice
          label={t('vehicle.care')}
          value={vehicle.care}
          onChange={(care) => change(t('vehicle.care'), { care })}
          options={CARE.map((care) => ({ id: care, label: t(`vehicle.careWords.${care}`) }))}
        />
        <QuantityField
          label={t('vehicle.lift')}
          unit={length}
          least={0}
          value={vehicle.liftMm}
          onChange={(value) => change(t('vehicle.lift'), { liftMm: value ?? 0 })}
        />
        <NumberField
          label={t('vehicle.oversize')}
          unit="%"
          least={0}
          value={vehicle.tyreOversizePct}
          onChange={(value) => change(t('vehicle.oversize'), { tyreOversizePct: value ?? 0 })}
        />
        <NumberField
          label={t('vehicle.circuits')}
          least={0}
          value={vehicle.addedCircuits}
          onChange={(value) => change(t('vehicle.circuits'), { addedCircuits: Math.round(value ?? 0) })}
        />
      </div>
      <div className="checks">
        <Check isOn={vehicle.rusty} onChange={(rusty) => change(t('vehicle.rusty'), { rusty })}>
          {t('vehicle.rusty')}
        </Check>
        {tyre !== undefined && (
          <Check
            isOn={tyre.passenger}
            onChange={(passenger) => change(t('vehicle.passengerTyre'), { tyre: { ...tyre, passenger } })}
          >
            {t('vehicle.passengerTyre')}
          </Check>
        )}
      </div>
      {facts !== null && (
        <div role="group" aria-label={t('vehicle.recentWork')}>
          <p>{t('vehicle.recentWork')}</p>
          <div className="checks">
            {facts.groups.map((group) => (
              <Check
                key={group.id}
                isOn={vehicle.recentWork.includes(group.id)}
                onChange={(on) =>
                  change(t('vehicle.recentWork'), {
                    recentWork: on
                      ? [...vehicle.recentWork, group.id]
                      : vehicle.recentWork.filter((one) => one !== group.id),
                  })
                }
              >
                {group.title}
              </Check>
            ))}
          </div>
        </div>
      )}
    </Block>
  );
}
