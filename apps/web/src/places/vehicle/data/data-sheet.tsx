import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useRecord } from '../../../shell/stores.tsx';
import { NoVehicle, useChosenVehicle, VehicleChoice } from '../vehicle-choice.tsx';
import { BerthsBlock } from './berths-block.tsx';
import { FeaturesBlock } from './features-block.tsx';
import { KeepingBlock } from './keeping-block.tsx';
import { RatingsBlock } from './ratings-block.tsx';
import { WeakPointsBlock } from './weak-points-block.tsx';
import { WeighInBlock } from './weigh-in-block.tsx';
import './data.css';

/** Data: what the plates and a scale say, what the vehicle has, where things ride in it. Every field is kept as it is left. */
export function DataSheet() {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const [id, setId] = useChosenVehicle();
  const vehicle = id === null ? undefined : garage.vehicles[id];
  if (id === null || vehicle === undefined) return <NoVehicle title={t('vehicle.data')} />;
  return (
    <div className="data" key={id}>
      <header>
        <h1>{vehicle.name}</h1>
        <p className="quiet">{t('vehicle.dataWhat')}</p>
      </header>
      <VehicleChoice value={id} onChange={setId} />
      <div className="data-blocks">
        <RatingsBlock id={id} vehicle={vehicle} />
        {vehicle.kind === 'vehicle' && <WeighInBlock id={id} vehicle={vehicle} />}
        <KeepingBlock id={id} vehicle={vehicle} />
        <WeakPointsBlock id={id} />
      </div>
      <BerthsBlock id={id} vehicle={vehicle} />
      <FeaturesBlock id={id} vehicle={vehicle} />
      <p>
        <Link href="/garage/begin" className="act as-link">
          {t('vehicle.another')}
        </Link>
      </p>
    </div>
  );
}
