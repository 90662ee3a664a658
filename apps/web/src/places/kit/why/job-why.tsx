import type { Garage } from '@waymend/garage/record/schema';
import type { PlanAnswer } from '@waymend/planner/answer/plan-answer';
import type { JobWhy } from '@waymend/planner/answer/why-answer';
import { useTranslation } from 'react-i18next';
import { Button } from '../../../look/button.tsx';
import { Block, Caution } from '../../../look/parts.tsx';
import { useRecord } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import { withMustDo } from '../edits.ts';
import { GradeMark, markOf } from '../../../look/grade-mark.tsx';

/** Whether a job can be done with what comes: its dangers first, then each need and what meets it. */
export function JobWhySheet({ why, answer }: { why: JobWhy; answer: PlanAnswer }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const verdict = why.possible ? t(`why.can.${why.grade ?? 'proper'}`) : t('why.cannot');
  const met = why.needs.filter((need) => need.met).length;
  return (
    <>
      <p className="why-need">
        <GradeMark mark={why.possible ? markOf(why.grade) : 'missing'} />
        <span className="decides">{verdict}</span>
      </p>
      {why.cautions.map((words) => (
        <Caution key={words}>
          <p>{words}</p>
        </Caution>
      ))}
      <p>
        {t('why.skill', { needed: why.skill, best: why.bestSkill })} {t('why.people', { count: why.people })}
      </p>
      <Block title={t('why.needs')} aside={t('why.metOf', { met, count: why.needs.length })} level={3}>
        <ul className="why-rows">
          {why.needs.map(({ need, met: there, grade, with: pieces }, i) => (
            <li key={`${i}${need}`} className="why-need">
              <GradeMark mark={there ? markOf(grade) : 'missing'} />
              <span>
                {need}
                <span className="small quiet why-with">
                  {there
                    ? pieces.length > 0
                      ? t('why.metBy', { pieces: pieces.join(', '), grade: t(`why.grade.${markOf(grade)}`) })
                      : t('why.metByNothing')
                    : t('why.notMet')}
                </span>
              </span>
            </li>
          ))}
          {why.uses.map(({ of, aboard, each }) => (
            <li key={of} className="why-need">
              <GradeMark mark={aboard >= each ? 'proper' : 'missing'} />
              <span>
                {stockName(of, garage, answer)}
                <span className="small quiet why-with">{t('why.uses', { aboard, each })}</span>
              </span>
            </li>
          ))}
        </ul>
      </Block>
      {why.after.length > 0 && (
        <Block title={t('why.after')} level={3}>
          <ul className="kit-warnings">
            {why.after.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Block>
      )}
      <MustDo id={why.id} title={why.title} />
      <p className="small quiet">{t('why.manualFirst')}</p>
    </>
  );
}

/** What a repair uses up, by the name of the owner's own. */
function stockName(of: string, { belongings }: Garage, { kit, stayHome }: PlanAnswer): string {
  const named = [...kit.items, ...stayHome].find(({ id }) => belongings[id]?.is === of);
  return named?.name ?? of.replace(/^P-/, '').replaceAll('-', ' ').toLowerCase();
}

/** The owner may ask that a job is possible whatever it is worth. */
function MustDo({ id, title }: { id: string; title: string }) {
  const { t } = useTranslation();
  const { edit } = useRecord();
  const { tripId, trip } = useTrip();
  if (tripId === null || trip === null) return null;
  const job = id.split(/[@/]/)[0] ?? id;
  const must = trip.mustDo.includes(job);
  return (
    <div className="block">
      <div className="acts">
        <Button
          onPress={() =>
            void edit(t(must ? 'why.mustUndone' : 'why.mustDone', { title }), (garage) =>
              withMustDo(garage, tripId, job, !must),
            )
          }
        >
          {t(must ? 'why.mustNot' : 'why.must')}
        </Button>
      </div>
      <p className="small quiet">{t(must ? 'why.mustNow' : 'why.mustWords')}</p>
    </div>
  );
}
