import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { readList } from '../../src/import/read-list.ts';
import type { ImportReading } from '../../src/import/reading.ts';

const item = z.strictObject({
  id: z.string(),
  copies: z.number(),
  grams: z.number().optional(),
  size: z.string().optional(),
});
const expectation = z.strictObject({
  line: z.number(),
  text: z.string(),
  /** Equally right answers. */
  answers: z.array(z.array(item)).optional(),
  heading: z.boolean().optional(),
  not: z.boolean().optional(),
  set: z.string().optional(),
});
const expected = z.strictObject({ lines: z.array(expectation) });
type Expectation = z.infer<typeof expectation>;

export interface Grade {
  readonly lines: number;
  readonly right: number;
  readonly wrong: readonly string[];
  readonly headings: number;
  readonly headingsRight: number;
}

/** Reads a list of test/data and compares every line with its right answer. */
export function gradeList(name: string): Grade {
  const at = (file: string): string => readFileSync(new URL(`../data/${file}`, import.meta.url), 'utf8');
  const reading = readList(at(`${name}.txt`));
  if (!reading.ok) throw new Error(reading.error.message);
  const { lines } = expected.parse(JSON.parse(at(`${name}.expected.json`)));
  const things = lines.filter(({ heading }) => heading !== true);
  const wrong = things.flatMap((line) => {
    const got = given(reading.value, line.line);
    return isRight(line, got)
      ? []
      : [`${line.line}: ${line.text}\n     wanted ${wanted(line)}\n     got    ${got}`];
  });
  const headings = lines.filter(({ heading }) => heading === true);
  return {
    lines: things.length,
    right: things.length - wrong.length,
    wrong,
    headings: headings.length,
    headingsRight: headings.filter(({ line }) => given(reading.value, line) === 'heading').length,
  };
}

function isRight(line: Expectation, got: string): boolean {
  if (line.not === true) return got.startsWith('not understood');
  if (line.set !== undefined) return got === `set ${line.set}`;
  return (line.answers ?? []).some((answer) => texts(answer) === got);
}

/** Everything the reading says of a line, in one text; own masses of things of an own size are not compared. */
function given(reading: ImportReading, line: number): string {
  if (reading.headings.some((heading) => heading.line === line)) return 'heading';
  const missed = reading.notUnderstood.filter((one) => one.line === line);
  const matches = reading.matches.filter((one) => one.line === line);
  if (missed.length > 0) {
    const what = missed
      .map(({ text, reason, suggestion }) => `${text}: ${reason} (${suggestion ?? 'no suggestion'})`)
      .join('; ');
    return `${matches.length > 0 ? 'partly ' : ''}not understood: ${what}`;
  }
  return matches
    .map((match) =>
      match.kind === 'set'
        ? `set ${match.setId}`
        : itemText(match.catalogueId, match.copies, match.weighed ? match.grams : undefined, match.size),
    )
    .sort()
    .join(', ');
}

function texts(items: readonly z.infer<typeof item>[]): string {
  return items
    .map(({ id, copies, grams, size }) => itemText(id, copies, grams, size))
    .sort()
    .join(', ');
}

function wanted(line: Expectation): string {
  if (line.not === true) return 'not understood';
  return line.set ?? (line.answers ?? []).map(texts).join(' or ');
}

function itemText(id: string, copies: number, grams: number | undefined, size: string | undefined): string {
  return `${copies} ${id}${size === undefined ? '' : ` of ${size}`}${grams === undefined ? '' : ` of ${grams} g`}`;
}
