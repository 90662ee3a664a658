import { why } from '@waymend/planner/explain/why';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { paintFor } from '../text/paint.ts';
import { whyText } from '../text/why-text.ts';
import { refuse } from './garage-at.ts';
import { planned } from './planned.ts';

export async function whyCommand(
  io: Io,
  path: string,
  what: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { prepared, solved, answer, asked, garage } = made.planned;
  const story = why(prepared, solved, answer, SHIPPED_TRADE, what);
  if (!story.ok) {
    refuse(io, [story.error]);
    return EXIT.refused;
  }
  if (asked.json) io.out(`${JSON.stringify(story.value, null, 2)}\n`);
  else
    io.out(
      whyText(story.value, { units: asked.units, currency: garage.currency, paint: paintFor(io.colour) }),
    );
  return EXIT.done;
}
