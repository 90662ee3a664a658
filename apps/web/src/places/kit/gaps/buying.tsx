import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Button } from '../../../look/button.tsx';
import { Block } from '../../../look/parts.tsx';
import { onBuyingList } from '../../../shell/buying-list.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { asBought, offShopList } from '../edits.ts';
import { tiny } from '../sheet/worth-words.ts';

/** What the plan buys and what it comes to, what it leaves in the shop and why, and the swaps that save mass. */
export function Buying({ answer, onWhy }: { answer: PlanAnswer; onWhy: (id: string) => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { buy, shop, swaps } = answer;
  return (
    <>
      <Block
        title={t('gaps.buyTitle')}
        aside={t('gaps.spent', {
          spent: format.money(shop.spentCents),
          budget: format.money(shop.budgetCents),
        })}
      >
        {buy.length === 0 && <p>{t(shop.budgetCents > 0 ? 'gaps.buysNothing' : 'gaps.noBudget')}</p>}
        <ul className="cure-list">
          {buy.map((item) => (
            <li key={item.id} className="cure">
              <Line name={item.name} money={format.money(item.cents)} />
              <p className="small quiet">
                {format.mass(item.grams)}
                {item.worth > 0 && `, ${t('gaps.saves', { chance: tiny(item.worth, format, t) })}`}
              </p>
              <div className="acts">
                <BuyAct id={item.id} name={item.name} />
                <Button onPress={() => onWhy(item.id)} label={t('gaps.whyOf', { title: item.name })}>
                  {t('gaps.why')}
                </Button>
              </div>
            </li>
          ))}
        </ul>
        {buy.length > 0 && (
          <p className="gap-total decides">
            <span>{t('gaps.total')}</span>
            <span>{format.money(shop.spentCents)}</span>
          </p>
        )}
        <Link href="/kit/limits" className="word-link">
          {t('gaps.toBudget')}
        </Link>
      </Block>
      {shop.left.length > 0 && (
        <Block title={t('gaps.leftTitle')} aside={t('gaps.leftAside', { count: shop.left.length })}>
          <ul className="cure-list">
            {shop.left.map((item) => (
              <li key={item.id} className="cure">
                <Line name={item.name} money={format.money(item.cents)} />
                <p className="small quiet">
                  {item.needs.length > 0
                    ? t('kit.onlyWith', { names: item.needs.join(', ') })
                    : item.couldAdd > 1e-6
                      ? t('gaps.overLimit', { chance: tiny(item.couldAdd, format, t) })
                      : t(`gaps.left.${item.why}`)}
                </p>
                <div className="acts">
                  <BuyAct id={item.id} name={item.name} />
                  <TakeOff id={item.id} name={item.name} />
                </div>
              </li>
            ))}
          </ul>
        </Block>
      )}
      {swaps.length > 0 && (
        <Block title={t('gaps.swaps')} aside={t('gaps.swapsAside')}>
          <ul className="cure-list">
            {swaps.map((swap) => (
              <li key={swap.id} className="cure">
                <p>{t('gaps.swap', { instead: swap.name, with: swap.withName })}</p>
                <p className="small quiet">
                  {t('gaps.lighter', { mass: format.mass(swap.savedGrams) })}
                  {swap.owned
                    ? `, ${t('why.owned')}`
                    : `, ${t('gaps.about', { money: format.money(swap.cents) })}`}
                </p>
              </li>
            ))}
          </ul>
        </Block>
      )}
    </>
  );
}

function Line({ name, money }: { name: string; money: string }) {
  return (
    <p className="gap-head">
      <span>{name}</span>
      <span className="keep">{money}</span>
    </p>
  );
}

/** What is listed in the garage can be marked as bought; what the catalogue offers goes on the list first. */
function BuyAct({ id, name }: { id: string; name: string }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  const { client } = useStores();
  if (garage.belongings[id] !== undefined)
    return (
      <Button
        label={`${t('gaps.bought')}: ${name}`}
        onPress={() => void edit(t('gaps.boughtTitle', { name }), (before) => asBought(before, id))}
      >
        {t('gaps.bought')}
      </Button>
    );
  if (!id.startsWith('buy:')) return null;
  const list = async (): Promise<void> => {
    const reply = await client.once({ kind: 'kit/shop', items: [id] });
    if (reply.kind === 'kit/shop')
      await edit(t('gaps.listed', { words: name }), (before) => onBuyingList(before, reply.items));
  };
  return (
    <Button label={`${t('gaps.list')}: ${name}`} onPress={() => void list()}>
      {t('gaps.list')}
    </Button>
  );
}

function TakeOff({ id, name }: { id: string; name: string }) {
  const { t } = useTranslation();
  const { garage, edit } = useRecord();
  if (garage.belongings[id] === undefined) return null;
  return (
    <Button
      label={`${t('gaps.takeOff')}: ${name}`}
      onPress={() => void edit(t('gaps.takenOff', { name }), (before) => offShopList(before, id))}
    >
      {t('gaps.takeOff')}
    </Button>
  );
}
