import { useTranslation } from 'react-i18next';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { ScaleUnit } from '../mass-units.ts';

const UNITS: readonly ScaleUnit[] = ['g', 'oz'];

/** What the scale shows. */
export function ScaleUnits({ unit, onChange }: { unit: ScaleUnit; onChange: (unit: ScaleUnit) => void }) {
  const { t } = useTranslation();
  return (
    <ToggleButtonGroup
      className="scale-units"
      aria-label={t('belongings.scaleUnit')}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[unit]}
      onSelectionChange={(keys) => {
        const to = UNITS.find((one) => keys.has(one));
        if (to !== undefined) onChange(to);
      }}
    >
      {UNITS.map((one) => (
        <ToggleButton key={one} id={one} className="scale-unit" aria-label={t(`belongings.unit_${one}`)}>
          {one}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
