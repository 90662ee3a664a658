import { useMemo } from 'react';
import { useRecord } from '../shell/stores.tsx';
import type { FieldUnit, Typed } from './field-units.ts';
import { fieldUnit } from './field-units.ts';

/** The unit this owner types a quantity in. */
export function useFieldUnit(of: Typed): FieldUnit {
  const { units } = useRecord().garage;
  return useMemo(() => fieldUnit(of, units), [of, units]);
}
