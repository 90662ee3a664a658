import type { ReactNode } from 'react';
import { useTranslation } from 'react-i18next';
import './print.css';

export interface TitleFields {
  readonly vehicle: string;
  readonly trip: string;
  readonly answer: string;
  readonly date: string;
}

export interface PaperProps {
  readonly title: string;
  readonly words: string;
  readonly number: string;
  readonly sheet: number;
  readonly of: number;
  readonly fields: TitleFields;
  readonly children: ReactNode;
}

/** One sheet of A4 in true millimetres: frame, centring marks, and the title block at its foot. */
export function Paper({ title, words, number, sheet, of, fields, children }: PaperProps) {
  const { t } = useTranslation();
  return (
    <section className="paper" aria-label={`${title}, ${t('print.sheetOf', { sheet, of })}`}>
      <span className="centring top" />
      <span className="centring bottom" />
      <span className="centring left" />
      <span className="centring right" />
      <div className="paper-frame">
        <div className="paper-head">
          <h2>{title}</h2>
          <p>{words}</p>
        </div>
        <div className="paper-body">{children}</div>
        <dl className="paper-block">
          <Field name={t('app.vehicleField')} value={fields.vehicle} />
          <Field name={t('app.tripField')} value={fields.trip} />
          <Field name={t('print.titleField')} value={title} strong />
          <Field name={t('print.numberField')} value={number} />
          <Field name={t('app.answerField')} value={fields.answer} />
          <Field name={t('print.dateField')} value={fields.date} />
          <Field name={t('app.sheetField')} value={t('print.sheetOf', { sheet, of })} />
        </dl>
      </div>
    </section>
  );
}

function Field({ name, value, strong = false }: { name: string; value: string; strong?: boolean }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className={strong ? 'decides' : ''}>{value}</dd>
    </div>
  );
}
