import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { TFunction } from 'i18next';
import type { Format } from '../../../format/use-format.ts';
import type { Garage } from '@waymend/garage/record/schema';
import type { RowListProps } from './row-list.tsx';
import { enlarged, homeWorth, itemWorth, tiny } from './worth-words.ts';

type Words = TFunction;

export interface KitList {
  readonly id: 'along' | 'home' | 'gaps' | 'buy';
  readonly title: string;
  /** Under the title on a phone's tab. */
  readonly short: string;
  readonly aside: string;
  readonly rows: RowListProps['rows'];
  readonly rest: (hidden: number) => string;
  readonly empty: string;
}

interface Made {
  readonly answer: PlanAnswer;
  readonly garage: Garage;
  readonly format: Format;
  readonly t: Words;
  /** Rows that get a balloon. */
  readonly balloons: number;
  readonly open: (what: string) => void;
  readonly openGap: (failure: string) => void;
}

/** The four lists of a plan, each in order of worth, all on the bar scale of what comes along. */
export function listsOf({ answer, garage, format, t, balloons, open, openGap }: Made): readonly KitList[] {
  const { kit, stayHome, gaps, buy } = answer;
  const most = Math.max(kit.items[0]?.worth ?? 0, 1e-9);
  const sum = (items: readonly { readonly grams: number }[]): number =>
    items.reduce((grams, item) => grams + item.grams, 0);
  const pieces = (items: readonly { readonly copies: number }[]): number =>
    items.reduce((n, item) => n + item.copies, 0);
  const mark = (id: string): string | null => {
    const pin = garage.belongings[id]?.pin;
    return pin === undefined ? null : t(`kit.pin.${pin}`);
  };
  const named = (name: string, copies: number): string => (copies > 1 ? `${copies} x ${name}` : name);
  const assumedMass = (grams: number, weighed: boolean): string =>
    weighed ? format.mass(grams) : t('kit.estimated', { mass: format.mass(grams) });
  const scale = (times: number): string => (times > 1 ? t('kit.bars', { times: format.count(times) }) : '');

  const homeTimes = enlarged(most, Math.max(0, ...stayHome.map((h) => h.couldAdd)));
  const gapTimes = enlarged(most, Math.max(0, ...gaps.map((g) => g.worth)));
  const buyTimes = enlarged(most, Math.max(0, ...buy.map((b) => b.worth)));
  const homePieces = pieces(stayHome);
  const spent = buy.reduce((cents, b) => cents + b.cents, 0);

  return [
    {
      id: 'along',
      title: t('kit.comesAlong'),
      short: format.mass(kit.massGrams),
      aside: t('kit.alongAside', {
        count: pieces(kit.items),
        pieces: format.count(pieces(kit.items)),
        mass: format.mass(kit.massGrams),
      }),
      rows: kit.items.map((item, i) => {
        const worth = itemWorth(item, format, t);
        const name = named(item.name, item.copies);
        return {
          id: item.id,
          balloon: i < balloons ? i + 1 : null,
          name,
          detail: item.bought ? t('kit.toBuy') : null,
          mass: format.mass(item.grams),
          assumed: !item.weighed,
          bar: item.worth / most,
          fill: 'solid',
          worth,
          mark: mark(item.id),
          label: t('kit.rowAlong', { name, mass: assumedMass(item.grams, item.weighed), worth }),
          onPress: () => open(item.id),
        };
      }),
      rest: (hidden) => {
        const tail = kit.items.slice(kit.items.length - hidden);
        return t('kit.restAlong', { count: hidden, mass: format.mass(sum(tail)) });
      },
      empty: t('kit.nothingAlong'),
    },
    {
      id: 'home',
      title: t('kit.staysHome'),
      short: format.mass(sum(stayHome)),
      aside: [
        t('kit.homeAside', {
          count: homePieces,
          pieces: format.count(homePieces),
          mass: format.mass(sum(stayHome)),
        }),
        scale(homeTimes),
      ]
        .filter(Boolean)
        .join(', '),
      rows: stayHome.map((item) => {
        const worth = homeWorth(item, format, t);
        const name = named(item.name, item.copies);
        const weighed = garage.belongings[item.id]?.weighed ?? false;
        const why =
          item.needs.length > 0
            ? t('kit.onlyWith', { names: item.needs.slice(0, 2).join(', ') })
            : t(`kit.homeWhy.${item.why}`);
        return {
          id: item.id,
          name,
          detail: item.why === 'over-the-limit' || item.why === 'adds-nothing' ? null : why,
          mass: format.mass(item.grams),
          assumed: !weighed,
          bar: (item.couldAdd / most) * homeTimes,
          fill: 'outline',
          worth,
          mark: mark(item.id),
          label: t('kit.rowHome', { name, mass: assumedMass(item.grams, weighed), worth, why }),
          onPress: () => open(item.id),
        };
      }),
      rest: (hidden) =>
        t('kit.restHome', {
          count: hidden,
          mass: format.mass(sum(stayHome.slice(stayHome.length - hidden))),
        }),
      empty: t('kit.nothingHome'),
    },
    {
      id: 'gaps',
      title: t('gaps.title'),
      short: format.count(gaps.length),
      aside: [t('kit.gapsAside', { count: gaps.length }), scale(gapTimes)].filter(Boolean).join(', '),
      rows: gaps.map((gap) => {
        const worth = gap.worth > 0 ? tiny(gap.worth, format, t) : t(`gaps.reason.${gap.reason}`);
        const [cure] = gap.cures;
        return {
          id: gap.failure,
          name: gap.title,
          detail: cure === undefined ? gap.words : cureWords(cure, format),
          mass: '',
          assumed: false,
          bar: (gap.worth / most) * gapTimes,
          fill: 'hatched',
          worth,
          label: t('kit.rowGap', { title: gap.title, worth, words: gap.words }),
          onPress: () => openGap(gap.failure),
        };
      }),
      rest: (hidden) => t('kit.restGaps', { count: hidden }),
      empty: t('kit.noGaps'),
    },
    {
      id: 'buy',
      title: t('kit.buy'),
      short: format.money(spent),
      aside: [t('kit.buyAside', { money: format.money(spent) }), scale(buyTimes)].filter(Boolean).join(', '),
      rows: buy.map((item) => {
        const worth = item.worth > 0 ? tiny(item.worth, format, t) : t('kit.nothing');
        return {
          id: item.id,
          name: item.name,
          detail: format.money(item.cents),
          mass: format.mass(item.grams),
          assumed: true,
          bar: (item.worth / most) * buyTimes,
          fill: 'solid',
          worth,
          label: t('kit.rowBuy', { name: item.name, money: format.money(item.cents), worth }),
          onPress: () => open(item.id),
        };
      }),
      rest: (hidden) => t('kit.restBuy', { count: hidden }),
      empty: t('kit.nothingToBuy'),
    },
  ];
}

/** 'Carry ... from home, 620 g, EUR 25'. */
export function cureWords(cure: { words: string; grams: number; cents: number }, format: Format): string {
  return [
    cure.words,
    ...(cure.grams > 0 ? [format.mass(cure.grams)] : []),
    ...(cure.cents > 0 ? [format.money(cure.cents)] : []),
  ].join(', ');
}
