import { useTranslation } from 'react-i18next';
import type { Vehicle } from '@waymend/garage/record/schema';
import { Check } from '../../../look/check.tsx';
import { More } from '../../../look/more.tsx';
import { Block } from '../../../look/parts.tsx';
import { FEATURE_GROUPS, GROUP_IDS } from './feature-groups.ts';
import type { FeatureId } from './feature-groups.ts';
import { useChange } from './use-change.ts';

/** What the vehicle has, as made and as changed: it decides which failures, jobs and places there are. */
export function FeaturesBlock({ id, vehicle }: { id: string; vehicle: Vehicle }) {
  const { t } = useTranslation();
  const change = useChange(id);
  const has = new Set<FeatureId>(vehicle.features);
  return (
    <Block
      title={t('vehicle.features')}
      aside={t('vehicle.featuresCount', { count: vehicle.features.length })}
    >
      <p className="prose small quiet">{t('vehicle.featuresWhat')}</p>
      {GROUP_IDS.map((group) => {
        const all: readonly FeatureId[] = FEATURE_GROUPS[group];
        const on = all.filter((f) => has.has(f));
        return (
          <More
            key={group}
            title={t(`vehicle.group.${group}`)}
            summary={
              on.length === 0 ? t('vehicle.nothing') : on.map((f) => t(`vehicle.feature.${f}`)).join(', ')
            }
          >
            <div className="checks">
              {all.map((feature) => (
                <Check
                  key={feature}
                  isOn={has.has(feature)}
                  onChange={(isOn) =>
                    change(t(`vehicle.feature.${feature}`), {
                      features: isOn
                        ? [...vehicle.features, feature]
                        : vehicle.features.filter((f) => f !== feature),
                    })
                  }
                >
                  {t(`vehicle.feature.${feature}`)}
                </Check>
              ))}
            </div>
          </More>
        );
      })}
    </Block>
  );
}
