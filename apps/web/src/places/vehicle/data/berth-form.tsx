import { useTranslation } from 'react-i18next';
import { useFieldUnit } from '../../../format/use-field-unit.ts';
import { Button } from '../../../look/button.tsx';
import { Check } from '../../../look/check.tsx';
import { QuantityField } from '../../../look/quantity-field.tsx';
import { SettledTextField } from '../../../look/settled-field.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import type { Berth, Loose } from '../edits.ts';
import { changeBerth, removeBerth } from '../edits.ts';
import { BERTH_RANGE_MM } from './berth-step.ts';

/** One berth: its name, where it is, what it bears and holds. */
export function BerthForm({
  id,
  berth,
  onPlace,
  onGone,
}: {
  id: string;
  berth: Berth;
  onPlace: (xMm: number) => void;
  onGone: () => void;
}) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const load = useFieldUnit('load');
  const length = useFieldUnit('length');
  const room = useFieldUnit('room');
  const change = (what: string, fields: Loose<Berth>) =>
    void edit(t('vehicle.changed', { name: berth.name, what }), (g) => changeBerth(g, id, fields));
  return (
    <div className="block">
      <div className="fields">
        <SettledTextField
          label={t('vehicle.berthName')}
          value={berth.name}
          onSettle={(name) => change(t('vehicle.berthName'), { name })}
        />
        <QuantityField
          label={t('vehicle.berthX')}
          hint={t('vehicle.berthXHint')}
          unit={length}
          least={BERTH_RANGE_MM.least}
          most={BERTH_RANGE_MM.most}
          value={berth.xMm}
          onChange={(xMm) => xMm !== null && onPlace(xMm)}
        />
        <QuantityField
          label={t('vehicle.berthLimit')}
          unit={load}
          least={0}
          value={berth.limitKg ?? null}
          onChange={(kg) => change(t('vehicle.berthLimit'), { limitKg: kg ?? undefined })}
        />
        <QuantityField
          label={t('vehicle.berthLitres')}
          unit={room}
          least={0}
          value={berth.litres ?? null}
          onChange={(litres) => change(t('vehicle.berthLitres'), { litres: litres ?? undefined })}
        />
      </div>
      <Check isOn={berth.roof} onChange={(roof) => change(t('vehicle.onRoof'), { roof })}>
        {t('vehicle.onRoof')}
      </Check>
      <div className="acts">
        <Button
          onPress={() => {
            onGone();
            void edit(t('vehicle.berthGone', { name: berth.name }), (g) => removeBerth(g, id));
          }}
        >
          {t('vehicle.removeBerth', { name: berth.name })}
        </Button>
      </div>
    </div>
  );
}
