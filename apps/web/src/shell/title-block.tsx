import { useTranslation } from 'react-i18next';
import { useFormat } from '../format/use-format.ts';
import type { Place } from './places.ts';
import { PLACES } from './places.ts';
import { usePlan } from './stores.tsx';
import { useTrip } from './use-trip.ts';

/** The fields of a drawing's title block (ISO 7200) put to work: it is the status line, and there is no other. */
export function TitleBlock({ sheet }: { sheet: Place['id'] }) {
  const { t } = useTranslation();
  const { trip, vehicle } = useTrip();
  const answer = useAnswerWord();
  const number = PLACES.findIndex(({ id }) => id === sheet) + 1;
  return (
    <footer className="title-foot" aria-label={t('app.titleBlock')}>
      <dl className="title-block">
        <Field name={t('app.vehicleField')} value={vehicle?.name ?? t('app.none')} desk />
        <Field name={t('app.tripField')} value={trip?.name ?? t('app.none')} />
        <Field name={t('app.answerField')} value={answer} strong />
        <Field
          name={t('app.sheetField')}
          value={t('app.sheetOf', { number, count: PLACES.length, name: t(`app.${sheet}`) })}
          desk
        />
      </dl>
    </footer>
  );
}

function Field({
  name,
  value,
  strong = false,
  desk = false,
}: {
  name: string;
  value: string;
  strong?: boolean;
  desk?: boolean;
}) {
  return (
    <div className={desk ? 'title-field desk-only' : 'title-field'}>
      <dt>{name}</dt>
      <dd className={strong ? 'decides' : ''}>{value}</dd>
    </div>
  );
}

function useAnswerWord(): string {
  const { t } = useTranslation();
  const { answer, proving, fresh, noPlan, refusals } = usePlan();
  const format = useFormat();
  if (noPlan !== null) return t('app.noKit');
  if (refusals.length > 0) return t('app.notAsked');
  if (answer === null) return proving ? t('app.working') : t('app.notAsked');
  if (!fresh || proving) return t('app.working');
  return answer.status === 'proven' ? t('app.proven') : t('app.within', { gap: format.percent(answer.gap) });
}
