import type { Result } from '@waymend/core/result';
import type { Carried } from '@waymend/planner/card/aboard';
import type { CardAsk } from '@waymend/planner/card/job-card';
import { jobCard } from '@waymend/planner/card/job-card';
import { causesOf, jobList } from '@waymend/planner/card/job-list';
import { repairWays } from '@waymend/planner/card/repair-ways';
import { symptomCard, symptomList } from '@waymend/planner/card/symptom-card';
import { piecesForJob } from '@waymend/planner/ready/job-pieces';
import { lastKnownKm, openRepairs } from '@waymend/planner/ready/repairs-open';
import type { BuiltScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { carriedPieces } from '@waymend/planner/views/carried';
import { wireAnswer } from '@waymend/planner/wire/wire-answer';
import type { Reply } from '../protocol.ts';
import { builtTrip } from './built-trip.ts';
import type { CardTerms, Here, JobsReply, JobsRequest } from './protocol.ts';

/** Answers one question of the Jobs place. */
export function jobsReply(request: JobsRequest): Reply {
  switch (request.kind) {
    case 'jobs/list':
      return said(builtTrip(request.garage, request.trip, null), (built) => ({
        kind: 'jobs/list',
        symptoms: symptomList(built).areas,
        systems: jobList(built),
      }));
    case 'jobs/symptom': {
      const built = builtTrip(request.garage, request.trip, null);
      const { here, symptom, given } = request;
      return said(
        built.ok
          ? symptomCard(built.value, SHIPPED_TRADE, symptom, new Map(given), carriedOf(built.value, here))
          : built,
        (card) => ({ kind: 'jobs/symptom', symptom: card }),
      );
    }
    case 'jobs/card':
      return card(request);
    case 'jobs/ways':
      return said(builtTrip(request.garage, request.trip, null), (built) => {
        const job = catalogueJob(request.job);
        return {
          kind: 'jobs/ways',
          job,
          ways: repairWays(job, SHIPPED_TRADE),
          causes: causesOf(built, SHIPPED_TRADE, job),
        };
      });
    case 'jobs/repairs': {
      const { garage, vehicle } = request;
      const knownKm = lastKnownKm(garage, vehicle);
      return { kind: 'jobs/repairs', repairs: openRepairs(garage, vehicle, SHIPPED_TRADE), knownKm };
    }
    case 'jobs/wire':
      return said(wireAnswer(request.question), (wire) => ({ kind: 'jobs/wire', wire }));
  }
}

function card({ garage, trip, job, terms }: Extract<JobsRequest, { kind: 'jobs/card' }>): Reply {
  const built = builtTrip(garage, trip, terms.people);
  if (!built.ok) return { kind: 'refused', refusals: [built.error] };
  const carried = carriedOf(built.value, terms.here);
  const made = jobCard(built.value, SHIPPED_TRADE, { job, carried, ...asked(terms) });
  return said(made, (value) => ({
    kind: 'jobs/card',
    card: value,
    pieces: piecesForJob({ built: built.value }, idsOf(built.value, carried), value.id),
  }));
}

/** What is absent is not known. */
function asked(terms: CardTerms): Omit<CardAsk, 'job' | 'carried'> {
  const { here, dark, hurt, danger, convoy, helpKm, daylightHours, waterDays } = terms;
  return {
    with: here === null ? 'everything' : 'kit',
    dark,
    hurt,
    danger,
    convoy,
    ...(helpKm === null ? {} : { helpKm }),
    ...(daylightHours === null ? {} : { daylightHours }),
    ...(waterDays === null ? {} : { waterDays }),
  };
}

function carriedOf({ scene }: BuiltScene, here: Here): Carried {
  return here === null ? { kind: 'everything' } : { kind: 'pieces', ids: carriedPieces(scene.pieces, here) };
}

function idsOf({ scene }: BuiltScene, carried: Carried): ReadonlySet<string> {
  return carried.kind === 'pieces' ? carried.ids : new Set(scene.pieces.map(({ id }) => id));
}

/** 'SS-04@front' is SS-04 in the catalogue. */
function catalogueJob(job: string): string {
  return job.replace(/@.*$/, '');
}

function said<T>(result: Result<T>, reply: (value: T) => JobsReply): Reply {
  return result.ok ? reply(result.value) : { kind: 'refused', refusals: [result.error] };
}
