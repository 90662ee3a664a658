import { problemJson } from '@waymend/core/choosing/write-json';
import { problemMps } from '@waymend/core/choosing/write-mps';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { paintFor } from '../text/paint.ts';
import { planText } from '../text/plan-text.ts';
import { writeText } from './garage-at.ts';
import { planned } from './planned.ts';

export async function planCommand(
  io: Io,
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const made = await planned(io, path, options);
  if (made.kind === 'code') return made.code;
  const { answer, asked, prepared, garage } = made.planned;
  if (typeof options['problem'] === 'string') {
    const name = options['problem'].replace(/\.(mps|json)$/, '');
    const { problem } = prepared.stated;
    const wrote =
      (await writeText(io, `${name}.mps`, problemMps(problem))) &&
      (await writeText(io, `${name}.json`, problemJson(problem)));
    if (!wrote) return EXIT.refused;
    io.err(`Wrote the un-reduced problem to ${name}.mps and ${name}.json.\n`);
  }
  if (asked.json) io.out(`${JSON.stringify(answer, null, 2)}\n`);
  else
    io.out(
      planText(answer, {
        units: asked.units,
        currency: garage.currency,
        all: options['all'] === true,
        paint: paintFor(io.colour),
      }),
    );
  return EXIT.done;
}
