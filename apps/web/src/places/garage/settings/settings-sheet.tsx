import { useTranslation } from 'react-i18next';
import { OneOf } from '../../../look/one-of.tsx';
import { Block } from '../../../look/parts.tsx';
import { useRecord, useSettings } from '../../../shell/stores.tsx';
import { ShelfBlock } from '../shelf/shelf-block.tsx';
import './settings.css';

const SCHEMES = ['system', 'light', 'dark', 'night', 'amber'] as const;
const UNITS = ['metric', 'inch'] as const;
const TORQUES = ['Nm', 'lb-ft'] as const;
const WORDINGS = ['british', 'american'] as const;

/** How this device shows things. */
export function SettingsSheet() {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { scheme, torque, wording, change } = useSettings();
  return (
    <div className="settings">
      <h1>{t('settings.title')}</h1>
      <p className="prose quiet">{t('settings.what')}</p>
      <div className="settings-columns">
        <Block title={t('settings.scheme')}>
          <OneOf
            label={t('settings.schemeLabel')}
            value={scheme}
            options={SCHEMES.map((id) => ({
              id,
              label: t(`settings.schemes.${id}`),
              remark: t(`settings.schemeRemarks.${id}`),
            }))}
            onChange={(next) => change({ scheme: next })}
          />
          <p className="prose">{t('settings.nightSight')}</p>
        </Block>
        <Block title={t('units.title')}>
          <OneOf
            label={t('settings.units')}
            hint={t('settings.unitsHint')}
            value={garage.units}
            options={UNITS.map((id) => ({ id, label: t(`settings.unit.${id}`) }))}
            onChange={(units) => void edit(t('settings.unitsChanged'), (before) => ({ ...before, units }))}
          />
          <OneOf
            label={t('settings.torque')}
            value={torque}
            options={TORQUES.map((id) => ({ id, label: t(`settings.torques.${id}`) }))}
            onChange={(next) => change({ torque: next })}
          />
          <OneOf
            label={t('settings.wording')}
            hint={t('settings.wordingHint')}
            value={wording}
            options={WORDINGS.map((id) => ({
              id,
              label: t(`settings.wordings.${id}`),
              remark: t(`settings.wordingRemarks.${id}`),
            }))}
            onChange={(next) => change({ wording: next })}
          />
        </Block>
      </div>
      <ShelfBlock />
    </div>
  );
}
