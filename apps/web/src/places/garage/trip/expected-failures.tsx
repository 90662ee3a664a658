import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Block } from '../../../look/parts.tsx';
import { usePlan } from '../../../shell/stores.tsx';
import type { Expected, Totals } from './expected-rows.ts';
import { expectedRows, expectedText } from './expected-rows.ts';

/**
 * What fails how often on this trip, group by group: the outline is every failure, its solid part those that stop the drive,
 * and a stroke where it stood when the sheet was opened, so that each edit shows what it does.
 */
export function ExpectedFailures({ expected, before }: Expecting) {
  const { t } = useTranslation();
  const { refusals, noPlan } = usePlan();
  if (expected === null) {
    const why = refusals[0]?.message ?? noPlan?.[0];
    return (
      <Block title={t('trip.expected.title')}>
        <p className="expected-room quiet">{why ?? t('trip.expected.working')}</p>
      </Block>
    );
  }
  const { rows, rest, total, was } = expectedRows(expected, before);
  const most = Math.max(...rows.map(({ failures, before: then }) => Math.max(failures, then ?? 0)), 1e-9);
  return (
    <Block title={t('trip.expected.title')} aside={t('trip.expected.aside')}>
      <p className="expected-total">
        <Verdict total={total} was={was} />
      </p>
      <table className="expected">
        <caption className="small quiet">{t('trip.expected.key')}</caption>
        <thead className="hidden-text">
          <tr>
            <th scope="col">{t('trip.expected.group')}</th>
            <th scope="col">{t('trip.expected.bar')}</th>
            <th scope="col">{t('trip.expected.number')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ group, title, failures, stopping, before: then }) => (
            <tr key={group}>
              <th scope="row">{title}</th>
              <td className="expected-bar">
                <Bar all={failures / most} stops={stopping / most} was={then === null ? null : then / most} />
              </td>
              <td className="expected-number">
                <span className="keep">{expectedText(failures)}</span>
                <span className="hidden-text">
                  {t('trip.expected.stops', { stopping: expectedText(stopping) })}
                  {then !== null && ` ${t('trip.expected.before', { failures: expectedText(then) })}`}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {rest > 0 && <p className="small quiet">{t('trip.expected.rest', { failures: expectedText(rest) })}</p>}
    </Block>
  );
}

function Bar({ all, stops, was }: { all: number; stops: number; was: number | null }) {
  const percent = (share: number) => `${Math.min(100, share * 100).toFixed(2)}%`;
  return (
    <svg width="100%" height="20" aria-hidden="true">
      <rect x="0" y="4" width={percent(all)} height="12" fill="var(--paper)" stroke="var(--ink)" />
      <rect x="0" y="4" width={percent(stops)} height="12" fill="var(--solid)" stroke="var(--ink)" />
      {was !== null && (
        <line x1={percent(was)} x2={percent(was)} y1="0" y2="20" stroke="var(--ink)" strokeWidth="1.5" />
      )}
    </svg>
  );
}

/** The sum in a few words, docked where the thumb does not cover it: the control lies below, what it changes above. */
export function TripVerdict({ expected, before }: Expecting) {
  const { t } = useTranslation();
  const sums = expected === null ? null : expectedRows(expected, before);
  return (
    <p className="trip-verdict" role="status">
      {sums === null ? t('trip.expected.workingShort') : <Verdict total={sums.total} was={sums.was} />}
    </p>
  );
}

function Verdict({ total, was }: { total: Totals; was: Totals | null }) {
  const { t } = useTranslation();
  return (
    <>
      <span className="decides">
        {t('trip.expected.total', {
          failures: expectedText(total.failures),
          stopping: expectedText(total.stopping),
        })}
      </span>
      {was !== null && (
        <span className="quiet"> {t('trip.expected.was', { stopping: expectedText(was.stopping) })}</span>
      )}
    </>
  );
}

/** What is to be expected of the open trip, now and when the sheet was opened. */
export interface Expecting {
  readonly expected: Expected | null;
  readonly before: Expected | null;
}

export function useExpected(tripId: string): Expecting {
  const { answer, fresh } = usePlan();
  const expected = answer?.trip.id === tripId ? answer.trip.expected : null;
  return { expected, before: useFirst(tripId, fresh ? expected : null) };
}

/** The first value since the trip was opened here; it stays while the trip is edited. */
function useFirst(tripId: string, value: Expected | null): Expected | null {
  const [first, setFirst] = useState<{ tripId: string; value: Expected } | null>(null);
  if (value !== null && first?.tripId !== tripId) setFirst({ tripId, value });
  return first?.tripId === tripId ? first.value : null;
}
