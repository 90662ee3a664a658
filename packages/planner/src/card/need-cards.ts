import type { ReadableWay } from '@waymend/core/repairing/ways-of';
import { waysOf } from '@waymend/core/repairing/ways-of';
import type { Joint, SceneJob, SceneNeed } from '@waymend/core/repairing/scene';
import type { NeedCard, WayCard } from '../answer/card-answer.ts';
import { needWords } from '../explain/why-job.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { Aboard } from './aboard.ts';
import { doNotFor } from './do-not.ts';
import { pullOf } from './pull.ts';
import { pieceRef } from './where.ts';

/** What is not here and would do it: so many are named. */
const MOST_WANTED = 3;
/** The best way and so many more: nobody reads further by torchlight. */
const MOST_WAYS = 4;

/** Each need of a job with the best way here, the next-best, and what must not be used instead. */
export function needCards(
  built: BuiltScene,
  trade: Trade,
  aboard: Aboard,
  job: SceneJob,
  ways: readonly (readonly ReadableWay[])[],
): readonly NeedCard[] {
  const joints = new Map(built.scene.joints.map((joint) => [joint.id, joint]));
  return job.needs.map((need, n) => {
    const joint = need.kind === 'turn' ? (joints.get(need.joint) ?? null) : null;
    const [best, ...others] = apartByName((ways[n] ?? []).map((way) => wayCard(built, aboard, way, joint)));
    return {
      what: needWords(need, built),
      kind: need.kind,
      size: joint?.status ?? null,
      best: best ?? null,
      others,
      doNot: doNotFor(need, joint, aboard.pieces, job.system, trade),
      wanted: best === undefined ? wantedFor(built, need) : [],
    };
  });
}

/** Two copies of one piece make one way. */
function apartByName(ways: readonly WayCard[]): readonly WayCard[] {
  const seen = new Set<string>();
  return ways
    .filter(({ pieces }) => {
      const names = pieces
        .map((piece) => piece.name)
        .sort()
        .join(' + ');
      if (seen.has(names)) return false;
      seen.add(names);
      return true;
    })
    .slice(0, MOST_WAYS);
}

function wayCard(
  { garage, scene }: BuiltScene,
  aboard: Aboard,
  way: ReadableWay,
  joint: Joint | null,
): WayCard {
  const pieces = way.pieces.flatMap((id) => aboard.piece(id) ?? []);
  return {
    grade: way.grade,
    pieces: pieces.map((piece) => pieceRef(garage, piece)),
    pull: joint === null ? null : pullOf(pieces, joint, scene.crew),
  };
}

/** 'deep socket, 35 mm (at home)', 'breaker bar (to buy)': ways among everything owned or sold, cheapest first. */
export function wantedFor({ scene }: BuiltScene, need: SceneNeed): readonly string[] {
  const pieces = new Map(scene.pieces.map((p) => [p.id, p]));
  return waysOf(scene, need, MOST_WANTED).map((way) =>
    way.pieces
      .flatMap((id) => {
        const piece = pieces.get(id);
        if (piece === undefined) return [];
        const state = piece.id.startsWith('ready:')
          ? 'not ready'
          : piece.owned
            ? 'yours, not here'
            : 'not owned';
        return [`${piece.name} (${state})`];
      })
      .join(' with '),
  );
}
