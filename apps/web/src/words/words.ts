import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import en from './en.json';

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'translation';
    resources: { translation: typeof en };
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
