import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import en from './en.json';

/** The dotted keys of every text: 'trip.leg.name'. */
type Keys<T> = { [K in keyof T & string]: T[K] extends string ? K : `${K}.${Keys<T[K]>}` }[keyof T & string];

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'translation';
    // One flat list of keys for the compiler: walking the tree anew for every `t` goes too deep as the texts grow.
    keySeparator: false;
    resources: { translation: Readonly<Record<Keys<typeof en>, string>> };
    returnNull: false;
  }
}

/** Every text of the screens is in one file for each language; numbers are formatted in ../format before they get here. */
export async function openWords(): Promise<void> {
  await i18next.use(initReactI18next).init({
    lng: 'en',
    fallbackLng: 'en',
    resources: { en: { translation: en } },
    // React escapes what it shows.
    interpolation: { escapeValue: false },
  });
}
