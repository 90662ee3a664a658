import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../format/use-format.ts';
import { Button } from '../../look/button.tsx';
import { chooseAim } from '../../shell/aim.ts';
import { usePlan, useRecord } from '../../shell/stores.tsx';
import { useTrip } from '../../shell/use-trip.ts';
import type { Clash } from '../../worker/protocol.ts';
import { withLimit } from './edits.ts';

/** No kit keeps all the limits: which clash, by how much, and the ways to give. */
export function NoPlan({ sentences }: { sentences: readonly string[] }) {
  const { t } = useTranslation();
  const { clashes } = usePlan();
  return (
    <div className="kit-empty">
      <h1>{t('kit.noPlan')}</h1>
      <p className="quiet">{t('kit.noPlanWords')}</p>
      <ul className="kit-warnings">
        {sentences.map((words) => (
          <li key={words}>
            <p className="sentence decides">{words}</p>
          </li>
        ))}
      </ul>
      <div className="acts">
        {clashes.map((clash) => (
          <Loosen key={clash.limit} clash={clash} />
        ))}
      </div>
      <p>
        <Link href="/kit/limits" className="word-link">
          {t('kit.toLimits')}
        </Link>
      </p>
    </div>
  );
}

function Loosen({ clash }: { clash: Clash }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { edit } = useRecord();
  const { tripId, trip } = useTrip();
  if (tripId === null || trip === null) return null;
  const { limit, shortBy } = clash;
  const change = (title: string, limits: Parameters<typeof withLimit>[2]) => (
    <Button main onPress={() => void edit(title, (garage) => withLimit(garage, tripId, limits))}>
      {title}
    </Button>
  );
  switch (limit.split(' ')[0]) {
    case 'mass': {
      const grams = Math.round((trip.limitKg ?? 0) * 1000) + shortBy;
      return change(t('kit.loosenMass', { mass: format.mass(grams) }), { grams });
    }
    case 'volume': {
      const litres = Math.ceil((trip.limitLitres ?? 0) * 10 + shortBy / 100) / 10;
      return change(t('kit.loosenVolume', { litres }), { litres });
    }
    case 'money': {
      const budget = Math.ceil(trip.budget + shortBy / 100);
      return change(t('kit.loosenMoney', { money: format.money(budget * 100) }), { budget });
    }
    case 'max-loss':
      return (
        <Button main onPress={() => chooseAim({ kind: 'best-chance' })}>
          {t('kit.loosenChance')}
        </Button>
      );
    default:
      return (
        <Link href="/garage/trip" className="word-link">
          {t('kit.loosenLoad')}
        </Link>
      );
  }
}
