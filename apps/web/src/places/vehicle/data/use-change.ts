import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { useRecord } from '../../../shell/stores.tsx';
import type { Loose } from '../edits.ts';
import { changeVehicle } from '../edits.ts';

/** Changes fields of one vehicle as one step, titled by what was changed. */
export function useChange(id: string): (what: string, fields: Loose<Vehicle>) => void {
  const { t } = useTranslation();
  const { edit, garage } = useRecord();
  const name = garage.vehicles[id]?.name ?? id;
  return (what, fields) => {
    void edit(t('vehicle.changed', { name, what }), (g) => changeVehicle(g, id, fields));
  };
}
