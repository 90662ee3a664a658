import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Row, type RowProps } from './row.tsx';
import { useWide } from './use-wide.ts';
import { useWindow } from './use-window.ts';

export interface RowListProps {
  readonly label: string;
  readonly rows: readonly (RowProps & { readonly id: string })[];
  /** Rows shown before somebody asks for all of them. */
  readonly first: number;
  /** What is said of the rest, given how many they are: '23 more, 31 kg, each worth less than 1 in 90'. */
  readonly rest: (hidden: number) => string;
}

const ROW = { wide: 37, narrow: 61 };

/** A list in order of worth: the first rows, a sentence about the rest, and the rest when it is asked for. */
export function RowList({ label, rows, first, rest }: RowListProps) {
  const { t } = useTranslation();
  const [all, setAll] = useState(false);
  const wide = useWide();
  const shown = all ? rows.length : Math.min(first, rows.length);
  const { ref, from, to, above, below } = useWindow(shown, wide ? ROW.wide : ROW.narrow);
  const hidden = rows.length - Math.min(first, rows.length);
  return (
    <div>
      <div ref={ref} style={{ paddingTop: above, paddingBottom: below }}>
        <ul className={shown > 80 ? 'kit-list even' : 'kit-list'} aria-label={label}>
          {rows.slice(from, to).map(({ id, ...row }, i) => (
            <li key={id} aria-setsize={rows.length} aria-posinset={from + i + 1}>
              <Row {...row} />
            </li>
          ))}
        </ul>
      </div>
      {hidden > 0 && (
        <div className="kit-rest">
          <p className="quiet">{rest(hidden)}</p>
          <Button
            onPress={() => setAll(!all)}
            label={`${t(all ? 'kit.showFewer' : 'kit.showAll')}: ${label}`}
          >
            {t(all ? 'kit.showFewer' : 'kit.showAll')}
          </Button>
        </div>
      )}
    </div>
  );
}
