import type { ImportMatch } from '@waymend/garage/import/reading';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { useCatalogue } from '../use-catalogue.ts';
import type { Part } from './paper-lines.ts';
import { runOfSizes } from './run-words.ts';

/** What was understood, in words: a run of sizes of one thing together, with how many and what was weighed. */
export function usePartWords(): {
  readonly understood: (parts: readonly Part[]) => string;
  readonly one: (match: ImportMatch) => string;
} {
  const { t } = useTranslation();
  const format = useFormat();
  const catalogue = useCatalogue();
  const nameOf = (match: ImportMatch): string =>
    match.kind === 'set' ? match.title : (catalogue?.byId.get(match.catalogueId)?.name ?? match.catalogueId);
  const sizeOf = (match: ImportMatch): string =>
    match.kind === 'set'
      ? ''
      : [
          match.size ?? catalogue?.byId.get(match.catalogueId)?.size ?? '',
          match.handleMm === undefined ? '' : format.length(match.handleMm),
        ]
          .filter((part) => part !== '')
          .join(', ');
  const aside = (match: ImportMatch): string => {
    if (match.kind === 'set') return t('belongings.holds', { count: match.contents.length });
    const parts = [
      match.copies > 1 ? t('belongings.times', { copies: match.copies }) : null,
      match.grams === undefined || !match.weighed ? null : format.mass(match.grams),
      match.location ?? null,
      match.price === undefined ? null : format.money(Math.round(match.price * 100)),
    ];
    return parts.filter((part) => part !== null).join(', ');
  };
  const joined = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(', ');
  const one = (match: ImportMatch): string => joined(nameOf(match), sizeOf(match), aside(match));
  return {
    one,
    understood: (parts) => {
      const groups = new Map<string, { name: string; aside: string; sizes: string[] }>();
      for (const part of parts) {
        const name = part.match === null ? t('belongings.ownPart', { text: part.text }) : nameOf(part.match);
        const said = part.match === null ? '' : aside(part.match);
        const key = `${name}\n${said}`;
        const group = groups.get(key) ?? { name, aside: said, sizes: [] };
        groups.set(key, group);
        if (part.match !== null && sizeOf(part.match) !== '') group.sizes.push(sizeOf(part.match));
      }
      return [...groups.values()]
        .map(({ name, aside: said, sizes }) => joined(name, runOfSizes(sizes), said))
        .join('; ');
    },
  };
}
