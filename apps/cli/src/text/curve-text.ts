import type { FrontierPoint } from '@waymend/core/choosing/frontier';
import { chanceOfLoss } from '@waymend/planner/explain/reading';
import { aboutOneIn, percent } from '@waymend/planner/words/chance';
import type { UnitStyle } from '@waymend/planner/words/mass';
import { massText } from '@waymend/planner/words/mass';
import { heading, table } from './layout.ts';
import type { Paint } from './paint.ts';

/** Characters of the bar that stands for certainty of needing help. */
const BAR = 40;

/** Each point a line: mass, chance of needing help, and a bar to scale. */
export function curveText(
  trip: string,
  points: readonly FrontierPoint[],
  stoppedBy: string | null,
  { units, paint }: { readonly units: UnitStyle; readonly paint: Paint },
): string {
  const most = Math.max(...points.map((p) => 1 - chanceOfLoss(p.loss)), 1e-9);
  const rows = points.map((p) => {
    const help = 1 - chanceOfLoss(p.loss);
    const proof = p.proven ? '' : `within ${percent(gapOf(p))}`;
    return [
      massText(p.grams, units),
      String(p.pieces),
      aboutOneIn(help),
      '#'.repeat(Math.max(1, Math.round((help / most) * BAR))),
      proof,
    ];
  });
  const lines = [
    ...heading(`${trip}: what each kilogram buys`, paint),
    ...table(
      [
        { title: 'mass', align: 'right' },
        { title: 'pieces', align: 'right' },
        { title: 'help needed on' },
        { title: `trips (bar to scale, longest ${percent(most)})` },
        { title: '' },
      ],
      rows,
    ),
    '',
    points.every((p) => p.proven)
      ? 'Every point is proven: no kit of that mass or less does better.'
      : 'Points marked "within" are the best found, with what could at most still be won.',
    ...(stoppedBy === null ? [] : [`Stopped early by ${stoppedBy}: there may be more points between.`]),
  ];
  return `${lines.map((l) => l.trimEnd()).join('\n')}\n`;
}

/** Loss that could at most still be saved, relative to the point's own, 0..1; all of it when nothing is known. */
export function gapOf({ loss, bound }: FrontierPoint): number {
  return loss > 0 ? Math.min(1, Math.max(0, (loss - bound) / loss)) : 0;
}
