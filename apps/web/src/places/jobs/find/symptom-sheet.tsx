import { useMemo } from 'react';
import { useTranslation } from 'react-i18next';
import { Link } from 'wouter';
import { LinkButton } from '../../../look/link-button.tsx';
import { Caution, Sentence } from '../../../look/parts.tsx';
import { useAsk } from '../../../shell/use-ask.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsReply, JobsRequest } from '../../../worker/jobs/protocol.ts';
import { NoTrip } from '../no-trip.tsx';
import { readRoadside } from '../roadside.ts';
import { usePlannedKit } from '../use-here.ts';
import { CANNOT_TELL, readSaid, symptomPath } from './said-path.ts';
import type { Given } from './said-path.ts';
import { SuspectList } from './suspect-list.tsx';

type Symptom = Extract<JobsReply, { kind: 'jobs/symptom' }>['symptom'];

/** From one sign to the likely jobs: one question at a time, one press an answer, every answer taken back by a press. */
export function SymptomSheet({ symptom, said }: { symptom: string; said: string }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { today } = useStores();
  const { tripId } = useTrip();
  const { here } = usePlannedKit(tripId);
  const given = useMemo(() => readSaid(said), [said]);
  const day = dateOf(today());
  const request = useMemo((): JobsRequest | null => {
    if (tripId === null) return null;
    const among = readRoadside(tripId, day).among;
    return {
      kind: 'jobs/symptom',
      garage,
      trip: tripId,
      here: among === 'kit' ? here : null,
      symptom,
      given,
    };
  }, [garage, tripId, here, symptom, given, day]);
  const { reply, fresh } = useAsk(request);
  if (tripId === null) return <NoTrip title={t('jobs.find.headline')} />;
  if (reply?.kind === 'refused')
    return (
      <div className="jobs-sheet">
        <h1>{t('jobs.find.headline')}</h1>
        <Sentence>{t('jobs.symptom.unknown')}</Sentence>
        <p>
          <LinkButton to="/jobs/find">{t('jobs.symptom.toList')}</LinkButton>
        </p>
      </div>
    );
  if (reply?.kind !== 'jobs/symptom')
    return (
      <div className="jobs-sheet">
        <h1>{t('jobs.find.headline')}</h1>
        <p className="quiet">{t('jobs.reading')}</p>
      </div>
    );
  const { symptom: card } = reply;
  return (
    <div className="jobs-sheet symptom" aria-busy={!fresh}>
      <h1>{card.title}</h1>
      {card.first.length > 0 && (
        <Caution>
          {card.first.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Caution>
      )}
      {given.length > 0 && <Answered card={card} given={given} />}
      {card.next !== null && <Question card={card} given={given} next={card.next} />}
      {card.next === null && given.length > 0 && <Sentence>{t('jobs.symptom.noMore')}</Sentence>}
      <SuspectList card={card} />
      <p>
        <LinkButton to="/jobs/find">{t('jobs.symptom.toList')}</LinkButton>
      </p>
    </div>
  );
}

function Question({
  card,
  given,
  next,
}: {
  card: Symptom;
  given: Given;
  next: NonNullable<Symptom['next']>;
}) {
  const { t } = useTranslation();
  const answers = [...next.answers, { id: CANNOT_TELL, text: t('jobs.symptom.cannotTell') }];
  return (
    <section className="question" aria-labelledby="question">
      <h2 id="question">{next.ask}</h2>
      <div className="question-answers">
        {answers.map(({ id, text }) => (
          <LinkButton key={id} to={symptomPath(card.id, [...given, [next.id, id]])} main={id !== CANNOT_TELL}>
            {text}
          </LinkButton>
        ))}
      </div>
    </section>
  );
}

/** What was answered; a press on one goes back to its question and keeps those before it. */
function Answered({ card, given }: { card: Symptom; given: Given }) {
  const { t } = useTranslation();
  return (
    <section aria-label={t('jobs.symptom.answered')}>
      <ul className="big-rows">
        {card.given.map(({ question, ask, answer, text }, n) => (
          <li key={question}>
            <Link href={symptomPath(card.id, given.slice(0, n))} className="row-link answered">
              <span className="row-words">
                <span className="small quiet">{ask}</span>
                <b>{answer === CANNOT_TELL ? t('jobs.symptom.cannotTell') : text}</b>
              </span>
              <span className="small keep">{t('jobs.symptom.change')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
