import { FAILURES } from '@waymend/catalogue/failures/all';
import type { Result } from '@waymend/core/result';
import { standardHeadSizes } from '@waymend/garage/file/head-sizes';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { fittingList } from '@waymend/planner/views/fitting-list';
import { loadMoves } from '@waymend/planner/views/load-moves';
import { loadView } from '@waymend/planner/views/load-view';
import { sizeCures } from '@waymend/planner/views/size-cures';
import { sizeRail } from '@waymend/planner/views/size-rail';
import { walkOrder } from '@waymend/planner/views/walk-order';
import { weighIn } from '@waymend/planner/views/weigh-in';
import type { Reply } from '../protocol.ts';
import type { VehicleFacts, VehicleReply, VehicleRequest } from './protocol.ts';

/** Answers one question of the Vehicle place. */
export function vehicleReply(request: VehicleRequest): Reply {
  switch (request.kind) {
    case 'vehicle/load': {
      const { garage, trip, kit } = request;
      return said(loadView(garage, trip, kit, SHIPPED_TRADE.loadIndex), (view) => ({
        kind: 'vehicle/load',
        view,
        moves: loadMoves(view),
      }));
    }
    case 'vehicle/weigh-in': {
      const { garage, trip, kit, frontKg, rearKg, aboard } = request;
      const view = loadView(garage, trip, kit, SHIPPED_TRADE.loadIndex);
      const weighed = view.ok ? weighIn(view.value, frontKg, rearKg, new Set(aboard)) : view;
      return said(weighed, (value) => ({ kind: 'vehicle/weigh-in', weighed: value }));
    }
    case 'vehicle/rail': {
      const { garage, trip, kit } = request;
      return said(sizeRail(garage, trip, kit, SHIPPED_TRADE), (rail) => ({ kind: 'vehicle/rail', rail }));
    }
    case 'vehicle/cures': {
      const { garage, trip, kit, joints } = request;
      return said(sizeCures(garage, trip, kit, joints, SHIPPED_TRADE), (cures) => ({
        kind: 'vehicle/cures',
        cures,
      }));
    }
    case 'vehicle/fittings': {
      const { garage, vehicle, trip } = request;
      return said(fittingList(garage, vehicle, trip, SHIPPED_TRADE), (rows) => ({
        kind: 'vehicle/fittings',
        rows,
        walk: walkOrder(rows),
      }));
    }
    case 'vehicle/facts':
      return { kind: 'vehicle/facts', facts: FACTS };
  }
}

function said<T>(result: Result<T>, reply: (value: T) => VehicleReply): Reply {
  return result.ok ? reply(result.value) : { kind: 'refused', refusals: [result.error] };
}

const FACTS: VehicleFacts = {
  headSizes: standardHeadSizes(),
  places: SHIPPED_TRADE.places.map(({ id, title }) => ({ id, title })),
  patterns: SHIPPED_TRADE.patterns.map(({ id, title, kind }) => ({ id, title, kind })),
  failures: FAILURES.map(({ id, title, group }) => ({ id, title, group })),
  groups: SHIPPED_TRADE.groups.map(({ id, title }) => ({ id, title })),
  tyreKg: Object.fromEntries(SHIPPED_TRADE.loadIndex.map(({ index, kg }) => [index, kg])),
};
