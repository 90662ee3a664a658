import type { Clearable } from '@waymend/garage/edit';
import { carrySet, changeBelonging, removeBelonging, takeOutOfSet } from '@waymend/garage/edit';
import type { Belonging, Garage } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { useRecord } from '../../../shell/stores.tsx';

export interface EditThing {
  /** Each is one step of undo, named after the thing. */
  readonly change: (what: string, fields: Partial<Belonging>, clear?: readonly Clearable[]) => void;
  readonly remove: () => void;
  readonly takeOut: () => void;
  readonly carry: (how: 'whole' | 'loose') => void;
}

/** Edits of one belonging; one that another tab has removed meanwhile stays removed. */
export function useEditThing(id: string, name: string): EditThing {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const step = (what: string, apply: (garage: Garage) => ReturnType<typeof removeBelonging>): void => {
    void edit(t('belongings.step', { what, name }), (garage) => {
      const next = apply(garage);
      return next.ok ? next.value : garage;
    });
  };
  return {
    change: (what, fields, clear = []) => step(what, (garage) => changeBelonging(garage, id, fields, clear)),
    remove: () => step(t('belongings.stepRemoved'), (garage) => removeBelonging(garage, id)),
    takeOut: () => step(t('belongings.stepTakenOut'), (garage) => takeOutOfSet(garage, id)),
    carry: (how) =>
      step(t(how === 'whole' ? 'belongings.stepWhole' : 'belongings.stepLoose'), (garage) =>
        carrySet(garage, id, how),
      ),
  };
}
