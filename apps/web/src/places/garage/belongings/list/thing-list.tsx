import { memo } from 'react';
import { useTranslation } from 'react-i18next';
import { WindowList } from '../../../../look/window-list.tsx';
import type { Line } from '../choose-rows.ts';
import { ThingRow } from './thing-row.tsx';
import { useRowWords } from './use-row-words.ts';

export interface ThingListProps {
  readonly lines: readonly Line[];
  readonly open: ReadonlySet<string>;
  readonly onOpen: (id: string) => void;
  readonly onUnfold: (id: string, unfold: boolean) => void;
}

const keyOf = ({ row }: Line): string => row.id;
const ROW = { phone: 4.5, desk: 3 } as const;

/** Everything owned, one row each; 20,000 rows scroll as lightly as twenty. */
export const ThingList = memo(function ThingList({ lines, open, onOpen, onUnfold }: ThingListProps) {
  const { t } = useTranslation();
  // Once for all rows: each would otherwise listen to the record by itself.
  const words = useRowWords();
  return (
    <WindowList
      label={t('belongings.list')}
      items={lines}
      keyOf={keyOf}
      rem={ROW}
      onArrow={({ row }, way) => row.contents !== null && onUnfold(row.id, way === 'open')}
    >
      {(line, tabIndex) => (
        <ThingRow
          line={line}
          words={words}
          isOpen={open.has(line.row.id)}
          tabIndex={tabIndex}
          onOpen={onOpen}
          onUnfold={onUnfold}
        />
      )}
    </WindowList>
  );
});
