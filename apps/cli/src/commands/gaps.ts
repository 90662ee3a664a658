import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { heading } from '../text/layout.ts';
import { paintFor } from '../text/paint.ts';
import { gapLines } from '../text/plan-text.ts';
import { planned } from './planned.ts';

export async function gapsCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { answer, asked, garage } = made.planned;
  if (asked.json) {
    io.out(
      `${JSON.stringify({ schema: 'waymend.gaps/1', trip: answer.trip.id, gaps: answer.gaps }, null, 2)}\n`,
    );
    return EXIT.done;
  }
  const paint = paintFor(io.colour);
  const lines = [
    ...heading(`${answer.trip.name}: ${answer.gaps.length} failures without an answer, worst first`, paint),
  ];
  for (const gap of answer.gaps)
    lines.push(...gapLines(gap, { units: asked.units, currency: garage.currency }));
  io.out(`${lines.join('\n')}\n`);
  return EXIT.done;
}
