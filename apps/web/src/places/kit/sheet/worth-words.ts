import type { HomeAnswer, KitItem } from '@waymend/planner/answer/plan-answer';
import type { TFunction } from 'i18next';
import type { Format } from '../../../format/use-format.ts';

type Words = TFunction;

/** Below this a worth is nothing that could be counted. */
export const LEAST_WORTH = 1e-6;

/** What an item is worth, in the words of its column. */
export function itemWorth(item: Pick<KitItem, 'worth' | 'reason'>, format: Format, t: Words): string {
  if (item.worth > LEAST_WORTH) return tiny(item.worth, format, t);
  return t(`kit.reason.${item.reason}`);
}

export function homeWorth(item: Pick<HomeAnswer, 'couldAdd'>, format: Format, t: Words): string {
  return item.couldAdd > LEAST_WORTH ? tiny(item.couldAdd, format, t) : t('kit.nothing');
}

/** '1 in 340'; rarer than anything worth counting is said so, short enough for a column. */
export function tiny(chance: number, format: Format, t: Words): string {
  return chance < 1e-4 ? t('kit.rare') : format.oneIn(chance);
}

/** How many times a second list's bars are enlarged so that its longest still fits, at 1, 2, 5, 10, 20 ... to 1. */
export function enlarged(most: number, longest: number): number {
  if (!(longest > 0) || !(most > 0)) return 1;
  let best = 1;
  for (let power = 1; power <= 1000; power *= 10)
    for (const step of [1, 2, 5]) if (longest * step * power <= most) best = step * power;
  return best;
}

/** 'About 1 trip in 6 needs help': the answer, as a sentence. */
export function tripsSentence(help: number, format: Format, t: Words): string {
  const found = /^([\d,.]+)\s+in\s+([\d,.]+)$/u.exec(format.oneIn(help));
  if (found === null) return help > 0 ? t('kit.fewTrips') : t('kit.noTrip');
  const [, of = '', trips = ''] = found;
  return of === '1' ? t('kit.oneTrip', { trips }) : t('kit.manyTrips', { of, trips });
}

/** Three figures, for neighbours on the curve that the same words would make equal. */
export function finePercent(chance: number): string {
  return `${Number((chance * 100).toPrecision(3))}\u00a0%`;
}
