import type { SizeRow } from '@waymend/planner/views/size-table';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { GradeMark, markOf } from '../why/grade-mark.tsx';

export const SIZES_PER_SHEET = 24;

/** What the vehicle takes, by head and size, and what aboard undoes it: for the glove box. */
export function SizeList({ rows }: { rows: readonly SizeRow[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <table className="paper-table">
      <colgroup>
        <col style={{ width: '25mm' }} />
        <col style={{ width: '54mm' }} />
        <col style={{ width: '20mm' }} />
        <col style={{ width: '9mm' }} />
        <col />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">{t('print.size')}</th>
          <th scope="col">{t('print.place')}</th>
          <th scope="col" className="end">
            {t('print.tighten')}
          </th>
          <th scope="col">
            <span className="hidden-text">{t('print.grade')}</span>
          </th>
          <th scope="col">{t('print.undoneWith')}</th>
        </tr>
      </thead>
      <tbody className="tall">
        {rows.map((row, i) => (
          <tr key={row.id}>
            <td className="two-lines">
              <span className={row.status === 'assumed' ? 'decides assumed' : 'decides'}>
                {rows[i - 1]?.size === row.size &&
                rows[i - 1]?.drive === row.drive &&
                rows[i - 1]?.status === row.status
                  ? `- ${row.size}`
                  : row.size}
              </span>
              {row.drive !== 'hex' && ` ${t(`print.drives.${row.drive}`)}`}
              {row.hold !== null && ` ${t('print.held', { size: row.hold })}`}
            </td>
            <td className="two-lines">{row.place}</td>
            <td className="end">{format.torque(row.torqueNm)}</td>
            <td>
              <GradeMark mark={markOf(row.grade)} />
            </td>
            <td className="two-lines">
              {row.with.length === 0 ? t('print.nothingAboard') : row.with.join(' + ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
