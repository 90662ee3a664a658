import { useTranslation } from 'react-i18next';
import type { Garage, Leg } from '@waymend/garage/record/schema';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { Choice, NumberField } from '../../../look/field.tsx';
import { More } from '../../../look/more.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { changeLeg, moveLeg, removeLeg } from './edit-trip.ts';

const SURFACES = ['sealed', 'gravel', 'corrugated', 'rock', 'sand'] as const;
const STONES = ['none', 'gravel', 'sharp', 'staked'] as const;
const DEPTHS = ['belowHub', 'hubToSill', 'sillToBonnet', 'aboveIntake'] as const;

export interface LegFormProps {
  readonly id: string;
  readonly leg: Leg;
  readonly number: number;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

/** One leg: how far, on what, how far from help; the rest folded away. Each field says what it changes. */
export function LegForm({ id, leg, number, isFirst, isLast }: LegFormProps) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const act = (change: (before: Garage) => Garage, title = t('trip.leg.changed', { number })) =>
    void edit(title, change);
  const set = (fields: Partial<Leg>) => act((before) => changeLeg(before, id, fields));
  const distance = useFieldUnit('distance');
  return (
    <div className="leg-form" role="group" aria-label={t('trip.leg.group', { number })}>
      <div className="fields">
        <SettledTextField
          label={t('trip.leg.name')}
          value={leg.name ?? ''}
          onSettle={(name) => act((before) => changeLeg(before, id, without('name', name)))}
        />
        <QuantityField
          label={t('trip.leg.km')}
          hint={t('trip.leg.kmHint')}
          unit={distance}
          value={leg.km}
          least={0}
          most={50_000}
          onChange={(km) => km !== null && set({ km })}
        />
        <Choice
          label={t('trip.leg.surface')}
          hint={t(`trip.surfaceHint.${leg.surface}`)}
          value={leg.surface}
          options={SURFACES.map((surface) => ({ id: surface, label: t(`trip.surface.${surface}`) }))}
          onChange={(surface) => set({ surface })}
        />
        <QuantityField
          label={t('trip.leg.help')}
          hint={t('trip.leg.helpHint')}
          unit={distance}
          value={leg.helpKm}
          least={0}
          most={5000}
          onChange={(helpKm) => helpKm !== null && set({ helpKm })}
        />
      </div>
      <More title={t('trip.leg.more')} summary={t('trip.leg.moreSummary')}>
        <MoreFields leg={leg} set={set} />
      </More>
      <div className="acts">
        <Button
          label={t('trip.leg.earlierLabel', { number })}
          isDisabled={isFirst}
          onPress={() => act((before) => moveLeg(before, id, -1), t('trip.leg.moved'))}
        >
          {t('trip.leg.earlier')}
        </Button>
        <Button
          label={t('trip.leg.laterLabel', { number })}
          isDisabled={isLast}
          onPress={() => act((before) => moveLeg(before, id, 1), t('trip.leg.moved'))}
        >
          {t('trip.leg.later')}
        </Button>
        <Button
          label={t('trip.leg.removeLabel', { number })}
          isDisabled={isFirst && isLast}
          onPress={() => act((before) => removeLeg(before, id), t('trip.leg.removed', { number }))}
        >
          {t('trip.leg.remove')}
        </Button>
      </div>
    </div>
  );
}

function MoreFields({ leg, set }: { leg: Leg; set: (fields: Partial<Leg>) => void }) {
  const { t } = useTranslation();
  const temperature = useFieldUnit('temperature');
  const height = useFieldUnit('height');
  const crossings = leg.crossings ?? { belowHub: 0, hubToSill: 0, sillToBonnet: 0, aboveIntake: 0 };
  return (
    <div className="block">
      <div className="fields">
        <Choice
          label={t('trip.leg.stones')}
          hint={t('trip.leg.stonesHint')}
          value={leg.stones}
          options={STONES.map((stones) => ({ id: stones, label: t(`trip.stones.${stones}`) }))}
          onChange={(stones) => set({ stones })}
        />
        <QuantityField
          label={t('trip.leg.maxC')}
          hint={t('trip.leg.maxCHint')}
          unit={temperature}
          value={leg.maxC ?? null}
          onChange={(degrees) => set(optional('maxC', degrees))}
        />
        <QuantityField
          label={t('trip.leg.minC')}
          hint={t('trip.leg.minCHint')}
          unit={temperature}
          value={leg.minC ?? null}
          onChange={(degrees) => set(optional('minC', degrees))}
        />
        <QuantityField
          label={t('trip.leg.altitude')}
          hint={t('trip.leg.altitudeHint')}
          unit={height}
          value={leg.altitudeM ?? null}
          onChange={(metres) => set(optional('altitudeM', metres))}
        />
        <NumberField
          label={t('trip.leg.fills')}
          hint={t('trip.leg.fillsHint')}
          value={leg.doubtfulFills}
          least={0}
          most={1000}
          onChange={(typed) => set({ doubtfulFills: typed ?? 0 })}
        />
        <NumberField
          label={t('trip.leg.iri')}
          hint={t('trip.leg.iriHint')}
          unit="m/km"
          value={leg.iri ?? null}
          least={0}
          most={40}
          digits={1}
          onChange={(typed) => set(optional('iri', typed))}
        />
      </div>
      <div>
        <Check isOn={leg.dusty} onChange={(dusty) => set({ dusty })}>
          {t('trip.leg.dusty')} <span className="small quiet">{t('trip.leg.dustyHint')}</span>
        </Check>
        <Check isOn={leg.resonancePace} onChange={(resonancePace) => set({ resonancePace })}>
          {t('trip.leg.pace')} <span className="small quiet">{t('trip.leg.paceHint')}</span>
        </Check>
        <Check isOn={leg.softTyres} onChange={(softTyres) => set({ softTyres })}>
          {t('trip.leg.soft')} <span className="small quiet">{t('trip.leg.softHint')}</span>
        </Check>
        <Check isOn={leg.winterFuel} onChange={(winterFuel) => set({ winterFuel })}>
          {t('trip.leg.winterFuel')} <span className="small quiet">{t('trip.leg.winterFuelHint')}</span>
        </Check>
      </div>
      <fieldset>
        <legend>{t('trip.leg.crossings')}</legend>
        <p className="small quiet">{t('trip.leg.crossingsHint')}</p>
        <div className="fields">
          {DEPTHS.map((depth) => (
            <NumberField
              key={depth}
              label={t(`trip.depth.${depth}`)}
              value={crossings[depth]}
              least={0}
              most={1000}
              onChange={(typed) => set({ crossings: { ...crossings, [depth]: typed ?? 0 } })}
            />
          ))}
        </div>
      </fieldset>
    </div>
  );
}

/** A field that is cleared is a field that is not there; the edit drops it. */
function optional(key: 'maxC' | 'minC' | 'altitudeM' | 'iri', value: number | null): Partial<Leg> {
  return value === null ? absent(key) : { [key]: value };
}

function without(key: 'name', value: string): Partial<Leg> {
  return value === '' ? absent(key) : { [key]: value };
}

function absent(key: keyof Leg): Partial<Leg> {
  return Object.fromEntries([[key, undefined]]);
}
