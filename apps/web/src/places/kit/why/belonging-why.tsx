import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { BelongingWhy } from '@waymend/planner/answer/why-answer';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { homeWorth, itemWorth, tiny } from '../sheet/worth-words.ts';
import { JobLinks } from './job-links.tsx';
import { Pins } from './pins.tsx';

/** Why a belonging comes or stays: what it is worth, its jobs, what would do instead; and the owner's own mark. */
export function BelongingWhySheet({
  why,
  answer,
  open,
}: {
  why: BelongingWhy;
  answer: PlanAnswer;
  open: (id: string) => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  const { garage } = useRecord();
  const belonging = garage.belongings[why.id];
  const item = answer.kit.items.find(({ id }) => id === why.id);
  const home = answer.stayHome.find(({ id }) => id === why.id);
  const weighed = belonging?.weighed ?? false;
  const worth =
    item !== undefined
      ? itemWorth(item, format, t)
      : home !== undefined
        ? homeWorth(home, format, t)
        : tiny(why.worth, format, t);
  return (
    <>
      <p>{why.words}</p>
      <dl className="why-facts">
        <dt>{t('kit.mass')}</dt>
        <dd>
          <span className={weighed ? '' : 'assumed'}>{format.mass(why.grams)}</span>
          {!weighed && ` ${t('why.neverWeighed')}`}
        </dd>
        <dt>{t(why.comes ? 'why.worthLost' : 'why.worthAdded')}</dt>
        <dd className="decides">{worth}</dd>
        {home !== undefined && (
          <>
            <dt>{t('why.staysBecause')}</dt>
            <dd>
              {home.needs.length > 0
                ? t('kit.onlyWith', { names: home.needs.join(', ') })
                : t(`kit.homeWhy.${home.why}`)}
            </dd>
          </>
        )}
      </dl>
      {belonging !== undefined && <Pins id={why.id} name={why.name} />}
      {why.jobs.length > 0 && (
        <Block title={t('why.jobsLost')} aside={t('why.count', { count: why.jobs.length })} level={3}>
          <JobLinks jobs={why.jobs} open={open} />
        </Block>
      )}
      {why.comes && (
        <Block title={t('why.instead')} level={3}>
          {why.substitutes.length === 0 ? (
            <p>{t('why.noSubstitute')}</p>
          ) : (
            <ul className="why-rows">
              {why.substitutes.map((sub) => (
                <li key={sub.id} className="why-row">
                  <span>{sub.name}</span>
                  <span className="keep">{format.mass(sub.grams)}</span>
                  <span className="small quiet">
                    {sub.owned ? t('why.owned') : t('why.forMoney', { money: format.money(sub.cents) })}
                  </span>
                  <span className="small quiet">
                    {sub.chanceLost > 1e-6
                      ? t('why.losesOneIn', { chance: tiny(sub.chanceLost, format, t) })
                      : t('why.losesNothing')}
                  </span>
                </li>
              ))}
            </ul>
          )}
        </Block>
      )}
      {belonging !== undefined && (
        <p>
          <Link href="/garage/belongings" className="word-link">
            {t('kit.toBelongings')}
          </Link>
        </p>
      )}
    </>
  );
}
