import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { CARE_RULES } from '@waymend/catalogue/care/all';
import { FAILURES } from '@waymend/catalogue/failures/all';
import { FAILURE_GROUPS } from '@waymend/catalogue/failures/groups';
import { JOBS } from '@waymend/catalogue/jobs/all';
import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { PLACES } from '@waymend/catalogue/places/all';
import type { AnyRow, Table } from '@waymend/catalogue/shape/define-table';
import { checkTable, statusOf } from '@waymend/catalogue/shape/define-table';
import { TABLES } from '@waymend/catalogue/standards/all';
import { SUBSTITUTIONS } from '@waymend/catalogue/substitutions';
import { SYMPTOMS } from '@waymend/catalogue/symptoms/all';
import { VOCABULARY } from '@waymend/catalogue/vocabulary';
import type { ExitCode, Io } from '../io.ts';
import { EXIT } from '../io.ts';
import { heading, paragraph, table } from '../text/layout.ts';
import { paintFor } from '../text/paint.ts';
import { refuse } from './garage-at.ts';

/** A list of the catalogue as rows of text. */
interface Listing {
  readonly id: string;
  readonly title: string;
  readonly titles: readonly string[];
  readonly rows: () => readonly (readonly string[])[];
}

const LISTS: readonly Listing[] = [
  {
    id: 'jobs',
    title: 'Repairs that can be done at the roadside',
    titles: ['id', 'skill', 'outcome', 'job'],
    rows: () => JOBS.map((j) => [j.id, String(j.skill), j.outcome, j.title]),
  },
  {
    id: 'failures',
    title: 'What fails, by group, with its weight in the group',
    titles: ['id', 'group', 'weight', 'failure'],
    rows: () => FAILURES.map((f) => [f.id, f.group, String(f.share), f.title]),
  },
  {
    id: 'failure-groups',
    title: 'Failures per 10,000 km by surface',
    titles: ['group', 'sealed', 'gravel', 'corrugated', 'rock', 'sand'],
    rows: () =>
      FAILURE_GROUPS.map((g) => [
        g.title,
        ...['sealed', 'gravel', 'corrugated', 'rock', 'sand'].map((s) =>
          String(g.per10000km[s as keyof typeof g.per10000km]),
        ),
      ]),
  },
  {
    id: 'belongings',
    title: 'Tools, spares and supplies in general',
    titles: ['id', 'g', 'price', 'what'],
    rows: () =>
      BELONGINGS.map((b) => [
        b.id,
        String(b.grams),
        b.price,
        b.size === undefined ? b.name : `${b.name}, ${b.size}`,
      ]),
  },
  {
    id: 'boxed-sets',
    title: 'Boxed sets as shops sell them',
    titles: ['id', 'pieces', 'set'],
    rows: () => BOXED_SETS.map((s) => [s.id, String(s.contents.reduce((n, c) => n + c.copies, 0)), s.title]),
  },
  {
    id: 'places',
    title: 'Places on a vehicle and what they typically take',
    titles: ['id', 'sizes', 'N m', 'place'],
    rows: () =>
      PLACES.map((p) => [p.id, p.sizes.slice(0, 3).join(', '), `${p.torqueNm[0]}-${p.torqueNm[1]}`, p.title]),
  },
  {
    id: 'patterns',
    title: 'Kinds of vehicle to start from',
    titles: ['id', 'fittings', 'pattern'],
    rows: () => PATTERNS.map((p) => [p.id, String(p.fittings.length), p.title]),
  },
  {
    id: 'substitutions',
    title: 'What may stand in for what, and what never',
    titles: ['wanted', 'grade', 'offered'],
    rows: () =>
      SUBSTITUTIONS.map((s) => [
        [s.wanted.fn, s.wanted.of].filter(Boolean).join(' '),
        s.grade,
        `${s.offered}: ${s.condition}`,
      ]),
  },
  {
    id: 'symptoms',
    title: 'What a driver notices, and what it may be',
    titles: ['id', 'questions', 'symptom', 'failures'],
    rows: () =>
      SYMPTOMS.map((s) => [
        s.id,
        String(s.questions.length),
        s.title,
        s.leads.map((l) => l.failure).join(', '),
      ]),
  },
  {
    id: 'care',
    title: 'How belongings are kept ready',
    titles: ['id', 'rule'],
    rows: () => CARE_RULES.map((r) => [r.id, r.text]),
  },
  {
    id: 'words',
    title: 'What things are called elsewhere',
    titles: ['word', 'also said'],
    rows: () => VOCABULARY.map((t) => [t.word, t.also.map((a) => a.text).join(', ')]),
  },
];

export function tablesCommand(
  io: Io,
  wanted: string | undefined,
  options: Readonly<Record<string, unknown>>,
): Promise<ExitCode> {
  return Promise.resolve(tables(io, wanted, options['json'] === true));
}

function tables(io: Io, wanted: string | undefined, json: boolean): ExitCode {
  if (wanted === undefined) {
    if (json)
      io.out(
        `${JSON.stringify({ schema: 'waymend.tables/1', lists: LISTS.map(({ id, title }) => ({ id, title })), tables: TABLES.map(({ id, title, citation }) => ({ id, title, citation })) }, null, 2)}\n`,
      );
    else io.out(overview(io));
    return EXIT.done;
  }
  const list = LISTS.find((l) => l.id === wanted);
  if (list !== undefined) {
    const rows = list.rows();
    if (json)
      io.out(
        `${JSON.stringify({ schema: 'waymend.table/1', kind: 'list', id: list.id, title: list.title, columns: list.titles, rows }, null, 2)}\n`,
      );
    else
      io.out(`${[...heading(list.title, paintFor(io.colour)), ...columns(list.titles, rows)].join('\n')}\n`);
    return EXIT.done;
  }
  const standard = TABLES.find((t) => t.id === wanted);
  if (standard !== undefined) {
    if (json)
      io.out(
        `${JSON.stringify({ schema: 'waymend.table/1', kind: 'standard', id: standard.id, title: standard.title, citation: standard.citation, status: standard.status, columns: standard.columns, rows: standard.rows, faults: checkTable(standard) }, null, 2)}\n`,
      );
    else io.out(`${standardText(io, standard)}\n`);
    return EXIT.done;
  }
  refuse(io, [
    {
      id: 'table-unknown',
      message: `There is no table "${wanted.slice(0, 60)}"; waymend tables lists them all`,
    },
  ]);
  return EXIT.refused;
}

function overview(io: Io): string {
  const { strong } = paintFor(io.colour);
  const lines = [strong('Lists')];
  lines.push(
    ...table(
      [{ title: '' }, { title: '', grow: true }],
      LISTS.map((l) => [l.id, l.title]),
    ),
  );
  lines.push('', strong('Tables of standards'));
  lines.push(
    ...table(
      [{ title: '' }, { title: '' }, { title: '', grow: true }],
      TABLES.map((t) => [t.id, t.citation.obtained, t.title]),
    ),
  );
  lines.push('', 'waymend tables ID prints one; sources and checks are in docs/sources.md.');
  return `${lines.join('\n')}\n`;
}

/** The last column takes what is left of the line. */
function columns(titles: readonly string[], rows: readonly (readonly string[])[]): string[] {
  return table(
    titles.map((title, i) => ({ title, grow: i === titles.length - 1 })),
    rows,
  );
}

function standardText(io: Io, standard: Table): string {
  const { body, document, edition, part, obtained, through } = standard.citation;
  const keys = Object.keys(standard.columns);
  const heads = keys.map(
    (key) => `${standard.columns[key]?.title ?? key} [${standard.columns[key]?.unit ?? ''}]`,
  );
  const rows = standard.rows.map((row: AnyRow) => keys.map((key) => show(standard, row, key)));
  const faults = checkTable(standard);
  const lines = heading(standard.title, paintFor(io.colour));
  lines.push(
    ...paragraph(
      `${body}, ${document}, ${edition}, ${part}. Obtained: ${obtained}${through === undefined ? '' : ` (${through})`}. A value marked ? is recalled, not re-read.`,
    ),
  );
  lines.push(...columns(heads, rows));
  lines.push(
    '',
    faults.length === 0
      ? `All ${standard.checks.length} of its checks pass.`
      : `${faults.length} checks fail.`,
  );
  return lines.join('\n');
}

function show(standard: Table, row: AnyRow, key: string): string {
  const value = row[key];
  if (value === null || value === undefined) return '-';
  return statusOf(standard, row, key) === 'recalled' ? `${value}?` : String(value);
}
