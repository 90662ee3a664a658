import type { Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import type { WireQuestion } from '@waymend/planner/wire/wire-answer';
import { wireAnswer } from '@waymend/planner/wire/wire-answer';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { number, text } from '../text/ask.ts';
import { paintFor } from '../text/paint.ts';
import { wireText } from '../text/wire-text.ts';
import { refuse } from './garage-at.ts';

/** Which wire and which fuse a circuit takes; needs no garage. */
export function wireCommand(io: Io, options: Readonly<Record<string, unknown>>): Promise<ExitCode> {
  const question = questionOf(options);
  const answer = question.ok ? wireAnswer(question.value) : question;
  if (!answer.ok) {
    refuse(io, [answer.error]);
    return Promise.resolve(EXIT.refused);
  }
  if (options['json'] === true) io.out(`${JSON.stringify(answer.value, null, 2)}\n`);
  else io.out(wireText(answer.value, paintFor(io.colour)));
  return Promise.resolve(EXIT.done);
}

/** Ranges of what is typed; what the tables cover is narrower, and said by them. */
const MOST_AMPS = 1000;
const MOST_METRES = 1000;

function questionOf(options: Readonly<Record<string, unknown>>): Result<WireQuestion> {
  const amps = number(text(options['amps']), 'amps', 0.01, MOST_AMPS);
  if (!amps.ok) return amps;
  const run = number(text(options['metres']), 'metres', 0.01, MOST_METRES);
  if (!run.ok) return run;
  if (amps.value === null || run.value === null)
    return refusal('wire-incomplete', 'A circuit wants both --amps and --metres');
  const supply = number(text(options['volts']), 'volts', 1, 1000);
  if (!supply.ok) return supply;
  const drop = number(text(options['drop']), 'drop', 0.1, 100);
  if (!drop.ok) return drop;
  const insulation = number(text(options['insulation']), 'insulation', 1, 1000);
  if (!insulation.ok) return insulation;
  return ok({
    amps: amps.value,
    metresOneWay: run.value,
    engineSpace: options['engine'] === true,
    ...(supply.value === null ? {} : { volts: supply.value }),
    ...(drop.value === null ? {} : { mostDropPct: drop.value }),
    ...(insulation.value === null ? {} : { insulationC: insulation.value }),
  });
}
