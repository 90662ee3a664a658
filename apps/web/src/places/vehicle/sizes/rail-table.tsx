import { useTranslation } from 'react-i18next';
import type { SizeRail } from '@waymend/planner/views/size-rail';
import { cellIn, ROWS } from './rail-data.ts';

/** The rail as a table: the same sizes, places and pieces in words. */
export function RailTable({ rail }: { rail: SizeRail }) {
  const { t } = useTranslation();
  return (
    <details className="rail-table">
      <summary>{t('rail.asTable')}</summary>
      <div className="scroll" tabIndex={0} role="region" aria-label={t('rail.asTable')}>
        <table className="plain-table small">
          <thead>
            <tr>
              <th scope="col">{t('rail.size')}</th>
              <th scope="col">{t('rail.placesHead')}</th>
              <th scope="col">{t('rail.turnAndHold')}</th>
              {ROWS.map((row) => (
                <th key={row} scope="col">
                  {t(`rail.row.${row}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rail.sizes.map((s) => (
              <tr key={s.label}>
                <th scope="row" className={s.hole ? 'decides keep' : 'keep'}>
                  {s.label}
                  {s.hole && `, ${t('rail.saidHole')}`}
                </th>
                <td>
                  {(['measured', 'read', 'assumed'] as const)
                    .map((status) => ({ status, n: s.places.filter((p) => p.status === status).length }))
                    .filter(({ n }) => n > 0)
                    .map(({ status, n }) => `${n} ${t(`rail.status.${status}`)}`)
                    .join(', ')}
                </td>
                <td>{s.tie === null ? '' : t(`rail.tie.${s.tie}`)}</td>
                {ROWS.map((row) => {
                  const cell = cellIn(s, row);
                  return (
                    <td key={row}>
                      {cell === null
                        ? ''
                        : [
                            ...(cell.along > 0 ? [t('rail.cellAlong', { count: cell.along })] : []),
                            ...(cell.home > 0 ? [t('rail.cellHome', { count: cell.home })] : []),
                            ...(cell.hole ? [t('rail.cellHole')] : []),
                          ].join(', ')}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
