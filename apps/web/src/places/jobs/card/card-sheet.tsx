import type { Trip } from '@waymend/garage/record/schema';
import { useEffect, useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { LinkButton } from '../../../look/link-button.tsx';
import { Block, Caution, Sentence } from '../../../look/parts.tsx';
import { SquareMark } from '../../../look/square-mark.tsx';
import { dateOf } from '../../../shell/date-of.ts';
import { useAsk } from '../../../shell/use-ask.ts';
import { useRecord, useStores } from '../../../shell/stores.tsx';
import { useTrip } from '../../../shell/use-trip.ts';
import type { JobsRequest } from '../../../worker/jobs/protocol.ts';
import { writeLastCard } from '../last-card.ts';
import { NoTrip } from '../no-trip.tsx';
import { useRoadside } from '../roadside.ts';
import { readTicks, writeTicks } from '../ticks.ts';
import { usePlannedKit } from '../use-here.ts';
import { DecideBlock } from './decide-block.tsx';
import { Dock } from './dock.tsx';
import { HelpAsk } from './help-ask.tsx';
import { LeverBlock } from './lever-block.tsx';
import { LimitsBlock } from './limits-block.tsx';
import { neverLines } from './pieces.ts';
import { PiecesBlock } from './pieces-block.tsx';
import { StepsBlock } from './steps-block.tsx';
import { Terms } from './terms.tsx';
import { TorqueBlock } from './torque-block.tsx';
import { Verdict } from './verdict.tsx';
import { WaysOut } from './ways-out.tsx';
import './card.css';

/** The card of one job: can we do it now, what is dangerous, what never, with what, how, how far after, or what else. */
export function CardSheet({ job }: { job: string }) {
  const { t } = useTranslation();
  const { tripId, trip } = useTrip();
  if (tripId === null || trip === null) return <NoTrip title={t('jobs.all.title')} />;
  return <Card key={tripId} job={job} tripId={tripId} trip={trip} />;
}

function Card({ job, tripId, trip }: { job: string; tripId: string; trip: Trip }) {
  const { t } = useTranslation();
  const { garage } = useRecord();
  const { today } = useStores();
  const { here, from } = usePlannedKit(tripId);
  const [said, say] = useRoadside(tripId, dateOf(today()));
  const [ticks, setTicks] = useState(() => readTicks(tripId, job));
  const request = useMemo((): JobsRequest | null => {
    const { among, away, ...rest } = said;
    const people = away.length === 0 ? null : trip.people.filter((id) => !away.includes(id));
    const terms = { ...rest, here: among === 'kit' ? here : null, people };
    return { kind: 'jobs/card', garage, trip: tripId, job, terms };
  }, [garage, trip, tripId, job, here, said]);
  const { reply, fresh } = useAsk(request);
  const card = reply?.kind === 'jobs/card' ? reply.card : null;
  const title = card?.title ?? null;
  useEffect(() => {
    if (title !== null) writeLastCard({ job, title });
  }, [job, title]);
  if (reply?.kind === 'refused') {
    const [refusal] = reply.refusals;
    return (
      <div className="jobs-sheet">
        <h1>{t('jobs.card.none')}</h1>
        {refusal?.id === 'help-unknown' ? (
          <HelpAsk onSay={say} />
        ) : (
          <Sentence>{t('jobs.card.notHere', { job: job.slice(0, 40) })}</Sentence>
        )}
        <p>
          <LinkButton to="/jobs/card">{t('jobs.card.toAll')}</LinkButton>
        </p>
      </div>
    );
  }
  if (reply?.kind !== 'jobs/card' || card === null)
    return (
      <div className="jobs-sheet">
        <h1>{t('jobs.card.opening')}</h1>
        <p className="quiet">{t('jobs.reading')}</p>
      </div>
    );
  const never = neverLines(card);
  return (
    <div className="card" aria-busy={!fresh}>
      <div className="card-top">
        <h1>{card.title}</h1>
        <Verdict card={card} />
        <Terms garage={garage} trip={trip} said={said} onSay={say} from={from} />
      </div>
      <div className="card-body">
        <div className="card-column">
          {card.cautions.length > 0 && (
            <Caution>
              {card.cautions.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </Caution>
          )}
          {never.length > 0 && (
            <Block title={t('jobs.card.never')}>
              <ul className="card-rows">
                {never.map((line) => (
                  <li key={line} className="piece">
                    <SquareMark fill="open" crossed />
                    <span className="piece-what">{line}</span>
                  </li>
                ))}
              </ul>
            </Block>
          )}
          <PiecesBlock card={card} />
          <LeverBlock card={card} />
          <TorqueBlock torques={card.torques} />
        </div>
        <div className="card-column">
          <StepsBlock
            steps={card.steps}
            done={ticks}
            onChange={(next) => {
              setTicks(next);
              writeTicks(tripId, job, next);
            }}
          />
          {card.wire !== null && (
            <p>
              <LinkButton to="/jobs/wire">{t('jobs.card.toWire')}</LinkButton>
            </p>
          )}
          <LimitsBlock card={card} />
          <WaysOut card={card} />
          <DecideBlock card={card} said={said} onSay={say} />
          <p className="prose decides">{card.closing}</p>
        </div>
      </div>
      <Dock job={job} title={card.title} trip={tripId} vehicle={trip.vehicle} pieces={reply.pieces} />
    </div>
  );
}
