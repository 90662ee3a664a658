import type { PieceIndex, Way } from '../choosing/problem.ts';
import { apart, asWays, pair } from './apart.ts';
import type { DriveTrains } from './drive-train.ts';
import { functionPieces } from './function-ways.ts';
import type { Holding } from './hold-ways.ts';
import type { Met, NeedGraph } from './need-graph.ts';
import type { Grade } from './scene.ts';
import type { Toolbox } from './toolbox.ts';
import type { Task, Turning } from './turning.ts';
import { isBareAt } from './turning.ts';

/** Where needs are written, and what from. */
export interface Bench {
  readonly graph: NeedGraph;
  readonly toolbox: Toolbox;
  readonly trains: DriveTrains;
}

/** Undoing one joint at a grade or better: turning it (M2), and holding its other end where it must be held (M3). */
export function jointNeed(
  bench: Bench,
  task: Task,
  turning: Turning,
  holding: Holding | null,
  grade: Grade,
): Met {
  const { graph } = bench;
  const alone = turning.alone.atLeast(grade);
  const driven = drivenNeed(bench, turning, grade);
  const blows = struckWith(bench, turning, grade);
  if (holding === null) {
    const struck = blows.flatMap(({ tools, hammers }) => apart(graph, hammers, graph.anyPiece(tools)));
    return graph.any([...asWays(graph.anyPiece(alone)), ...asWays(driven), ...struck]);
  }
  const hands = holding.alone.atLeast(grade);
  const still = stillNeed(bench, task, holding, grade);
  // At most one side uses a drive handle.
  const ways: Way[] = [
    ...pair(graph, alone, hands),
    ...apart(graph, hands, driven),
    ...apart(graph, alone, still),
  ];
  for (const { tools, hammers } of blows) {
    const held = graph.any([...pair(graph, tools, hands), ...apart(graph, tools, still)]);
    ways.push(...apart(graph, hammers, held));
  }
  return graph.any(ways);
}

function drivenNeed({ graph, trains }: Bench, turning: Turning, grade: Grade): Met {
  return graph.any(
    turning.driven.flatMap((driven) => {
      const train = trains.turning(driven.ask, grade);
      const bare = isBareAt(driven, grade) ? asWays(train) : [];
      return [...bare, ...apart(graph, driven.pieces.atLeast(grade), train)];
    }),
  );
}

function stillNeed({ graph, trains }: Bench, task: Task, holding: Holding, grade: Grade): Met {
  return graph.any(
    [...holding.driven].flatMap(([drive, pieces]) =>
      apart(graph, pieces.atLeast(grade), trains.holding(drive, task.torque)),
    ),
  );
}

/** Tools that work under a hammer, and the hammers good enough for the grade. */
function struckWith(
  { toolbox }: Bench,
  turning: Turning,
  grade: Grade,
): readonly { readonly tools: readonly PieceIndex[]; readonly hammers: readonly PieceIndex[] }[] {
  const hammers = functionPieces(toolbox, { fn: 'strike-hard' }, grade);
  return [turning.struck, turning.drifts].flatMap((tool) => {
    const tools = tool.atLeast(grade);
    return tools.length === 0 || hammers.length === 0 ? [] : [{ tools, hammers }];
  });
}
