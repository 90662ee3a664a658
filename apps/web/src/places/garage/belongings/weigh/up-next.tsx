import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { WindowList } from '../../../../look/window-list.tsx';
import type { Row } from '../rows.ts';

const keyOf = ({ id }: Row): string => id;
const ROW = { phone: 3.3, desk: 3 } as const;

/** What is still to weigh, heaviest guess first; any of them may be taken in hand now. */
export function UpNext({
  rows,
  current,
  onPick,
}: {
  rows: readonly Row[];
  current: string;
  onPick: (id: string) => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <div className="up-next">
      <WindowList label={t('belongings.toBeWeighed')} items={rows} keyOf={keyOf} rem={ROW}>
        {(row, tabIndex) => (
          <button
            type="button"
            data-main
            tabIndex={tabIndex}
            className={row.id === current ? 'up-row picked' : 'up-row'}
            aria-pressed={row.id === current}
            onClick={() => onPick(row.id)}
          >
            <span className="up-name">{row.size === null ? row.name : `${row.name}, ${row.size}`}</span>
            <span className="keep assumed">
              {row.each === null
                ? t('belongings.noMass')
                : row.belonging.copies > 1
                  ? t('belongings.copiesOf', { copies: row.belonging.copies, one: format.mass(row.each) })
                  : format.mass(row.each)}
            </span>
          </button>
        )}
      </WindowList>
    </div>
  );
}
