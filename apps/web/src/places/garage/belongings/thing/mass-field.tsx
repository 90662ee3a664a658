import { isOddMass } from '@waymend/garage/record/odd-mass';
import type { CatalogueLine } from '@waymend/planner/views/catalogue-view';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../../format/use-field-unit.ts';
import { useFormat } from '../../../../format/use-format.ts';
import { Button } from '../../../../look/button.tsx';
import { Check } from '../../../../look/check.tsx';
import { QuantityField } from '../../../../look/quantity-field.tsx';
import type { Row } from '../rows.ts';
import { useEditThing } from '../use-edit-thing.ts';

/** Mass of one, weighed or not. A mass far from what is usual is asked about before it is believed. */
export function MassField({ row, line }: { row: Row; line: CatalogueLine | null }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { change } = useEditThing(row.id, row.name);
  const [asked, setAsked] = useState<number | null>(null);
  const { belonging } = row;
  const unit = useFieldUnit('piece');
  const caseOf = belonging.set;
  const value = caseOf === undefined ? belonging.grams : caseOf.caseGrams;
  const keep = (grams: number, confirmed: boolean): void => {
    setAsked(null);
    if (caseOf !== undefined) change(t('belongings.caseMass'), { set: { ...caseOf, caseGrams: grams } });
    else change(t('belongings.mass'), { grams, weighed: true, ...(confirmed ? { confirmed } : {}) });
  };
  const settle = (reading: number | null): void => {
    if (reading === null) {
      setAsked(null);
      if (caseOf === undefined && belonging.grams !== undefined)
        change(t('belongings.mass'), { weighed: false }, ['grams']);
      return;
    }
    const grams = Math.round(reading);
    if (grams === value) return;
    if (caseOf === undefined && isOddMass(grams, line?.grams ?? null)) setAsked(grams);
    else keep(grams, false);
  };
  return (
    <>
      <div className="fields">
        <QuantityField
          label={caseOf === undefined ? t('belongings.mass') : t('belongings.caseMass')}
          value={value ?? null}
          unit={unit}
          least={0}
          most={1_000_000}
          onChange={settle}
          {...(line === null ? {} : { hint: t('belongings.usually', { value: format.mass(line.grams) }) })}
        />
        {caseOf === undefined && (
          <Check
            isOn={belonging.weighed}
            isDisabled={belonging.grams === undefined}
            onChange={(weighed) => change(t('belongings.weighed'), { weighed })}
          >
            {t('belongings.weighed')}
          </Check>
        )}
      </div>
      {asked !== null && (
        <div className="thing-asks" role="alert">
          <p>
            {line === null
              ? t('belongings.oddOwn', { mass: format.mass(asked) })
              : t('belongings.oddMass', { mass: format.mass(asked), usual: format.mass(line.grams) })}
          </p>
          <div className="acts">
            <Button onPress={() => keep(asked, true)}>{t('belongings.oddYes')}</Button>
            <Button onPress={() => setAsked(null)}>{t('belongings.oddNo')}</Button>
          </div>
        </div>
      )}
    </>
  );
}
