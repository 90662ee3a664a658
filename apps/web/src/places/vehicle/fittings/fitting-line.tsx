import { Button } from 'react-aria-components';
import { useTranslation } from 'react-i18next';
import type { FittingRow } from '@waymend/planner/views/fitting-list';
import { useFormat } from '../../../format/use-format.ts';

/** One place as a line; pressing it opens its form. */
export function FittingLine({ row, onOpen }: { row: FittingRow; onOpen: () => void }) {
  const { t } = useTranslation();
  const format = useFormat();
  const title = row.position === null ? row.title : `${row.title}, ${row.position}`;
  const assumed = row.status === 'assumed' ? 'assumed' : '';
  return (
    <li>
      <Button className="fitting-line" onPress={onOpen}>
        <span className="fitting-title">
          {title}
          <span className="small quiet fitting-how">
            {t(`fittings.access.${row.access}`)}
            {row.hold !== null &&
              `, ${row.hold.size === row.size ? t('fittings.held') : t('fittings.heldOther', { size: row.hold.size })}`}
          </span>
        </span>
        <span className="fitting-size">
          <span className={`decides keep ${assumed}`}>{row.size}</span>
          <span className="small quiet fitting-how">{t(`fittings.drive.${row.drive}`)}</span>
        </span>
        <span className="fitting-torque keep">{format.torque(row.torqueNm)}</span>
        <span className="small quiet fitting-status">
          {t(`rail.status.${row.status}`)}
          {row.by !== null && ` ${t('fittings.by', { name: row.by })}`}
          {row.on !== null && `, ${row.on}`}
          {row.added && `, ${t('fittings.add.mark')}`}
        </span>
      </Button>
    </li>
  );
}
