import { useEffect, useRef } from 'react';
import { useTranslation } from 'react-i18next';
import { Link, useLocation } from 'wouter';
import './sub-places.css';

export interface SubPlace {
  /** Address, '/garage/belongings'. */
  readonly to: string;
  readonly label: string;
}

/** The sheets of one place, as a row of words; the current one stands over a wide line. */
export function SubPlaces({ sheets }: { sheets: readonly SubPlace[] }) {
  const { t } = useTranslation();
  const [where] = useLocation();
  const found = sheets.find(({ to }) => where === to || where.startsWith(`${to}/`)) ?? sheets[0];
  // The row scrolls sideways on a phone: the current word stays in sight, and nothing else moves.
  const row = useRef<HTMLElement>(null);
  const current = found?.to;
  useEffect(() => {
    const bar = row.current;
    const word = bar?.querySelector<HTMLElement>('[aria-current]');
    if (bar === null || word === null || word === undefined) return;
    bar.scrollLeft = word.offsetLeft - bar.offsetLeft - (bar.clientWidth - word.offsetWidth) / 2;
  }, [current]);
  return (
    <nav ref={row} className="sub-places" aria-label={t('app.sheets')}>
      {sheets.map(({ to, label }) => (
        <Link
          key={to}
          href={to}
          className={to === found?.to ? 'sub-place here' : 'sub-place'}
          {...(to === found?.to ? { 'aria-current': 'page' as const } : {})}
        >
          {label}
        </Link>
      ))}
    </nav>
  );
}
