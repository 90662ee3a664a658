import type { CureAnswer, GapAnswer } from '@waymend/planner/answer/plan-answer';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { onBuyingList } from '../../../shell/buying-list.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { asReady, asRenewed, withPin } from '../edits.ts';

/** One way to close a gap, what it costs in grams and money, and the act that does it. */
export function Cure({ cure, gap }: { cure: CureAnswer; gap: GapAnswer }) {
  const { t } = useTranslation();
  const format = useFormat();
  const best = cure.best.map((what) => t(`gaps.best.${what}`)).join(', ');
  return (
    <li className="cure">
      <p>{cure.words}</p>
      <p className="small quiet">
        {cure.grams > 0 ? format.mass(cure.grams) : t('gaps.noMass')}
        {', '}
        {cure.cents > 0 ? t('gaps.about', { money: format.money(cure.cents) }) : t('gaps.noMoney')}
        {best === '' ? '' : `; ${best}`}
      </p>
      <div className="acts">
        <Act cure={cure} gap={gap} />
      </div>
    </li>
  );
}

function Act({ cure, gap }: { cure: CureAnswer; gap: GapAnswer }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { client } = useStores();
  const { vehicleId } = useTrip();
  const owned = cure.items.filter((id) => !id.startsWith('buy:') && !id.startsWith('set:'));
  const unready = cure.items.filter((id) => id.startsWith('ready:'));
  const said = (act: string): string => `${act}: ${cure.words}`;
  switch (cure.kind) {
    case 'carry':
      return (
        <Button
          label={said(t('gaps.bring'))}
          onPress={() =>
            void edit(t('gaps.brought', { words: cure.words }), (before) => withPin(before, owned, 'always'))
          }
        >
          {t('gaps.bring')}
        </Button>
      );
    case 'make-ready':
      return (
        <Button
          label={said(t('gaps.ready'))}
          onPress={() =>
            void edit(t('gaps.readied', { words: cure.words }), (before) => asReady(before, unready))
          }
        >
          {t('gaps.ready')}
        </Button>
      );
    case 'buy': {
      const list = async (): Promise<void> => {
        const reply = await client.once({ kind: 'kit/shop', items: cure.items });
        if (reply.kind !== 'kit/shop') return;
        await edit(t('gaps.listed', { words: cure.words }), (before) => onBuyingList(before, reply.items));
      };
      const wanted = cure.items.filter((id) => id.startsWith('buy:')).map((id) => id.slice(4));
      const known = new Set(
        Object.values(garage.belongings).flatMap((b) => (b.forSale && b.is !== undefined ? [b.is] : [])),
      );
      if (wanted.length === 0 || wanted.every((is) => known.has(is)))
        return <p className="small quiet">{t('gaps.onList')}</p>;
      return (
        <Button label={said(t('gaps.list'))} onPress={() => void list()}>
          {t('gaps.list')}
        </Button>
      );
    }
    case 'renew-at-home': {
      const renew = async (): Promise<void> => {
        const reply = await client.once({ kind: 'kit/renewal', failure: gap.failure });
        if (reply.kind !== 'kit/renewal' || vehicleId === null) return;
        await edit(t('gaps.renewedTitle', { title: gap.title }), (before) =>
          asRenewed(before, vehicleId, gap.failure, reply),
        );
      };
      const known = Object.values(garage.weakPoints).some(
        (w) => w.failure === gap.failure && w.vehicle === vehicleId,
      );
      if (known) return <p className="small quiet">{t('gaps.ownFactor')}</p>;
      return (
        <Button label={said(t('gaps.renewed'))} onPress={() => void renew()}>
          {t('gaps.renewed')}
        </Button>
      );
    }
    case 'learn':
      return (
        <Link href="/garage/people" className="word-link">
          {t('kit.toPeople')}
        </Link>
      );
    case 'bring-a-person':
      return (
        <Link href="/garage/trip" className="word-link">
          {t('kit.toTrip')}
        </Link>
      );
  }
}
