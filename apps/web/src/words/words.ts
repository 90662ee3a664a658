import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import type { Wording } from '@waymend/planner/words/wording';
import en from './en.json';
import type enBags from './en-bags.json';
import type enJobs from './en-jobs.json';

/** The dotted keys of every text: 'trip.leg.name'. */
type Keys<T> = { [K in keyof T & string]: T[K] extends string ? K : `${K}.${Keys<T[K]>}` }[keyof T & string];

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'translation';
    // One flat list of keys for the compiler: walking the tree anew for every `t` goes too deep as the texts grow.
    keySeparator: false;
    resources: { translation: Readonly<Record<Keys<typeof en & typeof enJobs & typeof enBags>, string>> };
    returnNull: false;
  }
}

const AMERICAN = 'en-US';

/**
 * Every text of the screens is in one file for each language, but for the places that bring theirs along (addWords); numbers
 * are formatted in ../format before they get here.
 */
export async function openWords(wording: Wording): Promise<void> {
  await i18next.use(initReactI18next).init({
    lng: 'en',
    fallbackLng: 'en',
    resources: { en: { translation: en } },
    // React escapes what it shows.
    interpolation: { escapeValue: false },
  });
  await sayIn(wording);
}

/** Changes the words while the page is open. American ones are a file of their own with only what differs, read when asked for. */
export async function sayIn(wording: Wording): Promise<void> {
  if (wording === 'american' && !i18next.hasResourceBundle(AMERICAN, 'translation')) {
    const { default: american } = await import('./en-us.json');
    i18next.addResourceBundle(AMERICAN, 'translation', american);
  }
  const language = wording === 'american' ? AMERICAN : 'en';
  if (i18next.language !== language) await i18next.changeLanguage(language);
}

/** The English texts of one place, read with it, so that the first screen waits for none of them. */
export function addWords(words: typeof enJobs | typeof enBags): void {
  i18next.addResourceBundle('en', 'translation', words, true, true);
}
