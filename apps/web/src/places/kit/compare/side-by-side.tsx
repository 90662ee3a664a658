import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { Block } from '../../../look/parts.tsx';
import { finePercent, tripsSentence } from '../sheet/worth-words.ts';
import { differ, type KitCopy } from './differ.ts';

/** Chance, mass and what differs; the sentence says which of the two needs help more rarely. */
export function SideBySide({ a, b }: { a: KitCopy; b: KitCopy }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { first, second, both } = differ(a, b);
  const rows: readonly (readonly [string, string, string])[] = [
    [t('compare.help'), tripsSentence(1 - a.unaided, format, t), tripsSentence(1 - b.unaided, format, t)],
    [t('kit.share'), finePercent(1 - a.unaided), finePercent(1 - b.unaided)],
    [t('kit.mass'), format.mass(a.grams), format.mass(b.grams)],
    [t('kit.pieces'), format.count(a.pieces), format.count(b.pieces)],
    [t('compare.toBuy'), format.money(a.spentCents), format.money(b.spentCents)],
    [t('gaps.title'), format.count(a.gaps), format.count(b.gaps)],
    [t('compare.grossLeft'), left(a), left(b)],
    [
      t('kit.proof'),
      t(a.proven ? 'kit.proven' : 'compare.notProven'),
      t(b.proven ? 'kit.proven' : 'compare.notProven'),
    ],
  ];
  return (
    <>
      <p className="decides" role="status">
        {verdict()}
      </p>
      <table className="compare-table">
        <caption className="hidden-text">{t('compare.title')}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{a.name}</th>
            <th scope="col">{b.name}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([title, one, other]) => (
            <tr key={title}>
              <th scope="row">{title}</th>
              <td className={one === other ? '' : 'decides'}>{one}</td>
              <td className={one === other ? '' : 'decides'}>{other}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="compare-pair">
        <Only title={t('compare.only', { name: a.name })} items={first} />
        <Only title={t('compare.only', { name: b.name })} items={second} />
      </div>
      <p className="quiet">{t('compare.both', { count: both })}</p>
    </>
  );

  function left(kit: KitCopy): string {
    return kit.grossLeftKg === null ? t('kit.noLimitKnown') : format.load(Math.floor(kit.grossLeftKg));
  }

  function verdict(): string {
    if (first.length === 0 && second.length === 0) return t('compare.same');
    const fewer = Math.abs(a.unaided - b.unaided);
    if (fewer < 5e-5) return t('compare.equal', { mass: format.mass(Math.abs(a.grams - b.grams)) });
    const [better, other] = a.unaided > b.unaided ? [a, b] : [b, a];
    const lighter = other.grams - better.grams;
    return t(lighter >= 0 ? 'compare.betterLighter' : 'compare.betterHeavier', {
      name: better.name,
      trips: format.oneIn(fewer),
      mass: format.mass(Math.abs(lighter)),
    });
  }
}

function Only({ title, items }: { title: string; items: KitCopy['items'] }) {
  const { t } = useTranslation();
  const format = useFormat();
  const grams = items.reduce((sum, item) => sum + item.grams, 0);
  return (
    <Block title={title} aside={format.mass(grams)} level={3}>
      {items.length === 0 ? (
        <p>{t('kit.nothing')}</p>
      ) : (
        <ul className="kept-list">
          {items.map((item) => (
            <li key={item.id} className="kept slim">
              <span>{item.copies > 1 ? `${item.copies} x ${item.name}` : item.name}</span>
              <span className="keep">{format.mass(item.grams)}</span>
            </li>
          ))}
        </ul>
      )}
    </Block>
  );
}
