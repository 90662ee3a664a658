import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../../format/use-field-unit.ts';
import { useFormat } from '../../../../format/use-format.ts';
import { Check } from '../../../../look/check.tsx';
import { Choice, NumberField } from '../../../../look/field.tsx';
import { More } from '../../../../look/more.tsx';
import { OneOf } from '../../../../look/one-of.tsx';
import { QuantityField } from '../../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../../look/settled-field.tsx';
import { useRecord } from '../../../../shell/stores.tsx';
import type { Row } from '../rows.ts';
import { useCatalogue } from '../use-catalogue.ts';
import { useEditThing } from '../use-edit-thing.ts';
import { BerthAway } from './berth-away.tsx';
import { BerthChoice } from './berth-choice.tsx';
import { EntryField } from './entry-field.tsx';
import { MassField } from './mass-field.tsx';
import { SizeField } from './size-field.tsx';

const STATES = ['ready', 'flat', 'expired', 'damaged', 'lent', 'unproven'] as const;
const PINS = ['none', 'always', 'never'] as const;

/** Everything recorded of one belonging; each field is kept when it is left. */
export function ThingFields({ row }: { row: Row }) {
  const { t } = useTranslation();
  const format = useFormat();
  const length = useFieldUnit('length');
  const catalogue = useCatalogue();
  const { currency } = useRecord().garage;
  const { belonging, name } = row;
  const { change } = useEditThing(row.id, name);
  const line = belonging.is === undefined ? null : (catalogue?.byId.get(belonging.is) ?? null);
  const isSet = belonging.set !== undefined;
  const rename = (next: string): void =>
    next === '' || next === line?.name
      ? change(t('belongings.name'), {}, ['name'])
      : change(t('belongings.name'), { name: next });
  return (
    <>
      <div className="fields">
        <SettledTextField label={t('belongings.name')} value={name} onSettle={rename} />
        {!isSet && (
          <NumberField
            label={t('belongings.copies')}
            value={belonging.copies}
            least={1}
            most={10_000}
            onChange={(copies) =>
              copies !== null && copies !== belonging.copies && change(t('belongings.copies'), { copies })
            }
          />
        )}
      </div>
      {!isSet && <EntryField row={row} />}
      <MassField row={row} line={line} />
      <BerthAway row={row} />
      <div className="fields">
        <BerthChoice row={row} />
        <Choice
          label={t('belongings.state')}
          value={belonging.state}
          onChange={(state) => change(t('belongings.state'), { state })}
          options={STATES.map((id) => ({ id, label: t(`belongings.state_${id}`) }))}
        />
      </div>
      <OneOf
        label={t('belongings.pin')}
        across
        value={belonging.pin ?? 'none'}
        onChange={(pin) =>
          pin === 'none' ? change(t('belongings.pin'), {}, ['pin']) : change(t('belongings.pin'), { pin })
        }
        options={PINS.map((id) => ({ id, label: t(`belongings.pin_${id}`) }))}
      />
      <div className="fields">
        <Check
          isOn={belonging.forSale}
          onChange={(forSale) => change(t('belongings.forSaleTick'), { forSale })}
        >
          {t('belongings.forSaleTick')}
        </Check>
        <NumberField
          label={t('belongings.price')}
          value={belonging.price ?? null}
          unit={currency}
          least={0}
          most={10_000_000}
          digits={2}
          {...(line === null || belonging.price !== undefined
            ? {}
            : { hint: t('belongings.priceHint', { euro: Math.round(line.cents / 100) }) })}
          onChange={(price) =>
            price === null
              ? change(t('belongings.price'), {}, ['price'])
              : change(t('belongings.price'), { price })
          }
        />
      </div>
      <More title={t('belongings.more')} summary={t('belongings.moreSummary')}>
        <div className="fields">
          {!isSet && <SizeField row={row} usual={line?.size ?? null} />}
          <QuantityField
            label={t('belongings.length')}
            value={belonging.lengthMm ?? null}
            unit={length}
            least={0}
            most={10_000}
            {...(line === null
              ? {}
              : { hint: t('belongings.usually', { value: format.length(line.lengthMm) }) })}
            onChange={(lengthMm) =>
              lengthMm === null
                ? change(t('belongings.length'), {}, ['lengthMm'])
                : change(t('belongings.length'), { lengthMm })
            }
          />
          {line !== null && line.stock !== null && (
            <NumberField
              label={t('belongings.stock')}
              value={belonging.stock ?? null}
              least={0}
              most={10_000}
              digits={1}
              hint={t('belongings.stockHint', { usual: line.stock })}
              onChange={(stock) =>
                stock === null
                  ? change(t('belongings.stock'), {}, ['stock'])
                  : change(t('belongings.stock'), { stock })
              }
            />
          )}
          {line?.kind === 'spare' && (
            <Check
              isOn={belonging.doesNotFit}
              onChange={(doesNotFit) => change(t('belongings.doesNotFit'), { doesNotFit })}
            >
              {t('belongings.doesNotFit')}
            </Check>
          )}
        </div>
        <SettledTextField
          label={t('belongings.note')}
          value={belonging.note ?? ''}
          lines={3}
          longest={2000}
          onSettle={(note) =>
            note === '' ? change(t('belongings.note'), {}, ['note']) : change(t('belongings.note'), { note })
          }
        />
        {belonging.line !== undefined && (
          <p className="small quiet">{t('belongings.line', { line: belonging.line })}</p>
        )}
      </More>
    </>
  );
}
