import { patternOf } from '@waymend/catalogue/patterns/all';
import { startFromPattern } from '@waymend/garage/start/from-pattern';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { Reply } from '../protocol.ts';
import type { TripRequest } from './protocol.ts';

/** Everything the trip screens ask is answered at once. */
export function answerTrip(request: TripRequest): Reply {
  switch (request.kind) {
    case 'trip/start': {
      const pattern = patternOf(request.pattern);
      if (pattern === null) {
        const message = `There is no vehicle pattern "${request.pattern.slice(0, 60)}"; choose one of the list.`;
        return { kind: 'refused', refusals: [{ id: 'pattern-unknown', message }] };
      }
      return {
        kind: 'trip/started',
        ...startFromPattern(request.garage, pattern, request.names, request.hitchTo),
      };
    }
    case 'trip/jobs':
      return {
        kind: 'trip/jobs',
        jobs: SHIPPED_TRADE.jobs.map(({ id, title, system, skill, people }) => ({
          id,
          title,
          system,
          skill,
          people,
        })),
      };
  }
}
