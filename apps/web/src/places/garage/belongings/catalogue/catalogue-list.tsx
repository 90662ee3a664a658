import type { CatalogueLine } from '@waymend/planner/views/catalogue-view';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../../format/use-format.ts';
import { SquareMark } from '../../../../look/square-mark.tsx';
import { WindowList } from '../../../../look/window-list.tsx';
import type { Owned } from './owned.ts';

const keyOf = ({ id }: CatalogueLine): string => id;
const ROW = { phone: 4.5, desk: 3 } as const;

export function CatalogueList({
  lines,
  owned,
  onOpen,
}: {
  lines: readonly CatalogueLine[];
  owned: ReadonlyMap<string, Owned>;
  onOpen: (id: string) => void;
}) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <WindowList label={t('belongings.pickList')} items={lines} keyOf={keyOf} rem={ROW}>
      {(line, tabIndex) => {
        const { have = 0, wanted = 0 } = owned.get(line.id) ?? {};
        return (
          <div className="thing">
            <button
              type="button"
              data-main
              tabIndex={tabIndex}
              className="thing-main"
              onClick={() => onOpen(line.id)}
            >
              <SquareMark fill={have > 0 ? 'solid' : 'open'} />
              <span className="thing-name">{line.name}</span>
              <span className="thing-mass assumed">{format.mass(line.grams)}</span>
              <span className="thing-details">
                <span>{line.size}</span>
                <span>
                  {[
                    have > 0 ? t('belongings.youHave', { count: have }) : '',
                    wanted > 0 ? t('belongings.onList') : '',
                  ]
                    .filter((part) => part !== '')
                    .join(', ')}
                </span>
                <span>{t('belongings.about', { price: format.money(line.cents) })}</span>
              </span>
            </button>
          </div>
        );
      }}
    </WindowList>
  );
}
