import type { Margin, PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { Garage } from '@waymend/garage/record/schema';
import { useTranslation } from 'react-i18next';
import { useFormat } from '../../../format/use-format.ts';

/** Axles, gross, roof and tyres against their limits, then each berth with what rides in it. */
export function LoadSheet({ answer, garage }: { answer: PlanAnswer; garage: Garage }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { load } = answer;
  const lines: readonly (readonly [string, Margin])[] = [
    [t('kit.front'), load.front],
    [t('kit.rear'), load.rear],
    [t('kit.gross'), load.gross],
    ...(load.roof === null ? [] : [[t('kit.roof'), load.roof] as const]),
    ...(load.tyres === null
      ? []
      : ([
          [t('print.frontTyres'), load.tyres.front],
          [t('print.rearTyres'), load.tyres.rear],
        ] as const)),
  ];
  return (
    <>
      <table className="paper-table">
        <thead>
          <tr>
            <th scope="col">{t('print.loadOn')}</th>
            <th scope="col" className="end">
              {t('print.now')}
            </th>
            <th scope="col" className="end">
              {t('print.limit')}
            </th>
            <th scope="col" className="end">
              {t('print.leftOver')}
            </th>
            <th scope="col" className="end">
              {t('print.weighed')}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(([title, margin]) => (
            <Line key={title} title={title} margin={margin} />
          ))}
        </tbody>
      </table>
      <p className="paper-note">{t('print.weighWords')}</p>
      <table className="paper-table">
        <colgroup>
          <col style={{ width: '38mm' }} />
          <col style={{ width: '22mm' }} />
          <col style={{ width: '22mm' }} />
          <col />
        </colgroup>
        <thead>
          <tr>
            <th scope="col">{t('print.berth')}</th>
            <th scope="col" className="end">
              {t('print.now')}
            </th>
            <th scope="col" className="end">
              {t('print.limit')}
            </th>
            <th scope="col">{t('print.ridesThere')}</th>
          </tr>
        </thead>
        <tbody className="tall">
          {load.berths.map((berth) => (
            <tr key={berth.id}>
              <td className="two-lines">{berth.name}</td>
              <td className="end">{format.load(berth.kg)}</td>
              <td className="end">{berth.limitKg === null ? '-' : format.load(berth.limitKg)}</td>
              <td className="two-lines">
                {ridersOf(berth.id, answer, garage, (count) => t('print.kitPieces', { count }))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="paper-note">{t('print.lowAndForward')}</p>
    </>
  );
}

function Line({ title, margin }: { title: string; margin: Margin }) {
  const { t } = useTranslation();
  const format = useFormat();
  const { kg, limitKg, marginKg } = margin;
  return (
    <tr>
      <td>{title}</td>
      <td className="end">{format.load(kg)}</td>
      <td className="end">{limitKg === null ? '-' : format.load(limitKg)}</td>
      <td className="end decides">
        {marginKg === null
          ? '-'
          : marginKg < 0
            ? t('kit.over', { mass: format.load(Math.ceil(-marginKg)) })
            : t('kit.left', { mass: format.load(Math.floor(marginKg)) })}
      </td>
      <td className="end">________</td>
    </tr>
  );
}

/** People, loads and how many pieces of the kit ride in a berth, by name. */
function ridersOf(
  berth: string,
  answer: PlanAnswer,
  garage: Garage,
  pieces: (count: number) => string,
): string {
  const trip = garage.trips[answer.trip.id];
  const people = (trip?.people ?? []).flatMap((id) => {
    const person = garage.people[id];
    return person?.berth === berth ? [person.name] : [];
  });
  const loads = (trip?.loads ?? []).flatMap((id) => {
    const load = garage.loads[id];
    return load?.berth === berth ? [load.name] : [];
  });
  const kit = answer.kit.items
    .filter((item) => (item.berth ?? trip?.kitBerth) === berth)
    .reduce((n, item) => n + item.copies, 0);
  return [...people, ...loads, ...(kit > 0 ? [pieces(kit)] : [])].join(', ');
}
