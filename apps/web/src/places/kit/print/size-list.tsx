import type { SizeRow } from '@waymend/planner/views/size-table';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';

/** Room for rows on a sheet, mm, with some to spare. */
export const SIZES_ROOM_MM = 212;
/** Height of a row, of a line in it, and the letters such a line surely takes in the two columns of words. */
const ROW_MM = 9;
const LINE_MM = 3.6;
const LETTERS = { place: 26, with: 38 };

/** How high a row is printed, mm: never less than it takes. */
export function heightOf(row: SizeRow): number {
  const lines = Math.max(
    Math.ceil(row.place.length / LETTERS.place),
    Math.ceil(row.with.join(' + ').length / LETTERS.with),
    row.hold === null ? 1 : 2,
  );
  return Math.max(ROW_MM, lines * LINE_MM + 1);
}

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
        {rows.map((row) => (
          <tr key={row.id}>
            <td className="two-lines">
              <span className={row.status === 'assumed' ? 'decides assumed' : 'decides'}>{row.size}</span>
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
