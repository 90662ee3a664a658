import { BELONGING_BY_ID } from '@waymend/catalogue/belongings/all';
import type { Refusal, Result } from '@waymend/core/result';
import { ok, refuse as refusal } from '@waymend/core/result';
import { readGarage } from '@waymend/garage/file/read-garage';
import { textOfBytes } from '@waymend/garage/file/text-of-bytes';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { ImportInto } from '@waymend/garage/import/import-into';
import { importInto } from '@waymend/garage/import/import-into';
import { teach } from '@waymend/garage/import/own-words';
import { readAny } from '@waymend/garage/import/read-any';
import type { ImportMatch, ImportReading } from '@waymend/garage/import/reading';
import { DOUBTFUL } from '@waymend/garage/import/reading';
import type { Garage } from '@waymend/garage/record/schema';
import { FILE_VERSION, garageFile } from '@waymend/garage/record/schema';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { importText } from '../text/import-text.ts';
import { paintFor } from '../text/paint.ts';
import { readBytes, refuse, writeText } from './garage-at.ts';

/** Reads a list into a garage; writes only when asked to, and then all or nothing. */
export async function importCommand(
  io: Io,
  path: string,
  list: string | undefined,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  const start = await garageToFill(io, path, options['new']);
  if (start === null) return EXIT.refused;
  const taught = teachAll(start, options['teach']);
  if (!taught.ok) return stop(io, taught.error);
  let garage = taught.value;
  let reading: ImportReading = { matches: [], notUnderstood: [], headings: [] };
  let repeated = 0;
  let unbelieved: ImportInto['unbelieved'] = [];
  if (list !== undefined) {
    const bytes = await readBytes(io, list);
    if (bytes === null) return EXIT.refused;
    const read = await readAny(bytes, { words: garage.words, name: list });
    if (!read.ok) return stop(io, read.error);
    reading = read.value.reading;
    const filled = importInto(garage, reading.matches, { confirmMasses: options['confirmMasses'] === true });
    garage = filled.garage;
    repeated = filled.repeated.length;
    unbelieved = filled.unbelieved;
  } else if (options['teach'] === undefined) {
    return stop(io, {
      id: 'list-missing',
      message: 'Name a list to read, or teach a word with --teach "word = meaning"',
    });
  }
  const write = options['write'] === true;
  if (write && !(await writeText(io, path, writeGarage(garage)))) return EXIT.refused;
  const odd = new Map<ImportMatch, string>(unbelieved.map(({ match, sentence }) => [match, sentence]));
  const doubtful = reading.matches
    .filter((m) => m.confidence < DOUBTFUL || odd.has(m))
    .map((m) => ({ ...m, ...(odd.has(m) ? { why: odd.get(m) ?? '' } : {}) }));
  if (options['json'] === true) {
    const matches = reading.matches.map((m) => ({
      line: m.line,
      text: m.text,
      is: m.kind === 'thing' ? m.catalogueId : m.setId,
      name: m.kind === 'thing' ? (BELONGING_BY_ID.get(m.catalogueId)?.name ?? m.catalogueId) : m.title,
      copies: m.kind === 'thing' ? m.copies : 1,
      confidence: m.confidence,
    }));
    io.out(
      `${JSON.stringify({ schema: 'waymend.import/1', file: list ?? null, written: write, matches, notUnderstood: reading.notUnderstood, repeated, unbelieved: unbelieved.map(({ match, sentence }) => ({ line: match.line, text: match.text, sentence })) }, null, 2)}\n`,
    );
  } else {
    io.out(
      importText({
        reading,
        doubtful,
        repeated,
        unbelieved: unbelieved.length,
        list: list ?? null,
        garage: path,
        written: write,
        paint: paintFor(io.colour),
      }),
    );
  }
  return EXIT.done;
}

/** The garage that is there, or a new one when --new says so; never overwrites one that is there with a new one. */
async function garageToFill(io: Io, path: string, name: unknown): Promise<Garage | null> {
  const found = await io.read(path);
  if (typeof name === 'string') {
    if (found.kind !== 'missing') {
      refuse(io, [
        {
          id: 'garage-there',
          message: `${path} is there already and is left as it is; leave out --new to add to it`,
        },
      ]);
      return null;
    }
    const made = garageFile.safeParse({ waymend: FILE_VERSION, name });
    if (made.success) return made.data;
    refuse(io, [{ id: 'name-unusable', message: 'The name of a garage is at most 200 letters' }]);
    return null;
  }
  if (found.kind === 'missing') {
    refuse(io, [
      { id: 'garage-missing', message: `There is no garage ${path}; start one with --new "My garage"` },
    ]);
    return null;
  }
  const bytes = await readBytes(io, path);
  if (bytes === null) return null;
  const text = textOfBytes(bytes, path);
  const garage = text.ok
    ? readGarage(text.value, path, { for: 'edit' })
    : { ok: false as const, error: [text.error] };
  if (garage.ok) return garage.value;
  refuse(io, garage.error);
  return null;
}

function teachAll(garage: Garage, given: unknown): Result<Garage> {
  let taught = garage;
  for (const lesson of Array.isArray(given) ? given.map(String) : []) {
    const at = lesson.indexOf('=');
    if (at < 1)
      return refusal(
        'lesson-unclear',
        `"${lesson.slice(0, 60)}" is not a lesson; write --teach "word = meaning"`,
      );
    const next = teach(taught, lesson.slice(0, at).trim(), lesson.slice(at + 1).trim());
    if (!next.ok) return next;
    taught = next.value;
  }
  return ok(taught);
}

function stop(io: Io, error: Refusal): ExitCode {
  refuse(io, [error]);
  return EXIT.refused;
}
