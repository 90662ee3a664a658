import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { Garage } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';
import { itemWorth } from '../sheet/worth-words.ts';
import { groupedPages, type GroupedRow } from './pages.ts';

export interface PackRow {
  readonly id: string;
  /** Its number on the screen's list, which is the order of worth. */
  readonly number: number;
  readonly item: PlanAnswer['kit']['items'][number];
}

const PER_SHEET = 31;

/** The kit by the berth it rides in, as it is packed. */
export function kitPages(
  answer: PlanAnswer,
  garage: Garage,
  elsewhere: string,
): readonly (readonly GroupedRow<PackRow>[])[] {
  const groups = new Map<string, PackRow[]>();
  answer.kit.items.forEach((item, i) => {
    const berth = item.berth ?? garage.trips[answer.trip.id]?.kitBerth;
    const name = (berth === undefined ? undefined : garage.berths[berth]?.name) ?? elsewhere;
    groups.set(name, [...(groups.get(name) ?? []), { id: item.id, number: i + 1, item }]);
  });
  return groupedPages(
    [...groups].map(([name, rows]) => ({ name, rows })),
    PER_SHEET,
  );
}

/** A box to fill when the piece is aboard, its number, name, mass and worth. */
export function KitList({ rows }: { rows: readonly GroupedRow<PackRow>[] }) {
  const { t } = useTranslation();
  const format = useFormat();
  return (
    <table className="paper-table">
      <colgroup>
        <col style={{ width: '9mm' }} />
        <col style={{ width: '11mm' }} />
        <col />
        <col style={{ width: '24mm' }} />
        <col style={{ width: '30mm' }} />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">
            <span className="hidden-text">{t('print.aboard')}</span>
          </th>
          <th scope="col">{t('print.no')}</th>
          <th scope="col">{t('print.what')}</th>
          <th scope="col" className="end">
            {t('kit.mass')}
          </th>
          <th scope="col" className="end">
            {t('print.worth')}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) =>
          'group' in row ? (
            <tr key={row.group} className="paper-group">
              <td colSpan={5}>{row.group}</td>
            </tr>
          ) : (
            <tr key={row.row.id}>
              <td>
                <span className="tick-box" />
              </td>
              <td>{row.row.number}</td>
              <td>
                {row.row.item.bought ? `${t('kit.toBuy')}: ` : ''}
                {row.row.item.copies > 1 ? `${row.row.item.copies} x ` : ''}
                {row.row.item.name}
              </td>
              <td className="end">
                {row.row.item.weighed ? '' : '~'}
                {format.mass(row.row.item.grams)}
              </td>
              <td className="end">{itemWorth(row.row.item, format, t)}</td>
            </tr>
          ),
        )}
      </tbody>
    </table>
  );
}
