import type { Basis } from './shape/basis.ts';
import type { AnyRow, Status, Table } from './shape/define-table.ts';
import { STATUSES, statusOf } from './shape/define-table.ts';
import { TABLES } from './standards/all.ts';

/** A list of the catalogue and the bases its entries stand on. */
export interface BasisList {
  readonly title: string;
  readonly bases: readonly Basis[];
}

/** Cells of a table by status, ids and notes left out. */
export function statusCounts<R extends AnyRow>(table: Table<R>): ReadonlyMap<Status, number> {
  const counts = new Map<Status, number>();
  for (const row of table.rows) {
    for (const key of Object.keys(table.columns)) {
      const status = statusOf(table, row, key);
      counts.set(status, (counts.get(status) ?? 0) + 1);
    }
  }
  return counts;
}

const BASIS_WORDS: Readonly<Record<Basis['kind'], string>> = {
  source: 'source',
  computed: 'computed',
  'common-practice': 'common practice',
  estimate: 'estimate',
  recalled: 'recalled',
};

/** What a basis leans on, in words; null where its kind says it all. */
function leansOn(basis: Basis): string | null {
  switch (basis.kind) {
    case 'source':
      return basis.cite;
    case 'computed':
      return basis.from;
    case 'estimate':
      return basis.why;
    case 'recalled':
      return basis.of;
    case 'common-practice':
      return null;
  }
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|').replaceAll('\n', ' ');
}

function tableRow(table: Table): string {
  const { body, document, edition, part, obtained, through } = table.citation;
  const counts = statusCounts(table);
  const statuses = STATUSES.filter((status) => counts.has(status)).map(
    (status) => `${counts.get(status)} ${status}`,
  );
  const read = through === undefined ? obtained : `${obtained}: ${through}`;
  const cells = [
    `\`${table.id}\` ${table.title}`,
    `${body}, ${document}; ${part}`,
    edition,
    read,
    String(table.rows.length),
    statuses.join(', '),
    table.checks.map((check) => check.name).join('; '),
  ];
  return `| ${cells.map(cell).join(' | ')} |`;
}

function basisLines(list: BasisList): string[] {
  const kinds = new Map<Basis['kind'], Map<string, number>>();
  for (const basis of list.bases) {
    const texts = kinds.get(basis.kind) ?? new Map<string, number>();
    const text = leansOn(basis) ?? '';
    kinds.set(basis.kind, texts.set(text, (texts.get(text) ?? 0) + 1));
  }
  const lines = [...kinds].flatMap(([kind, texts]) => {
    const total = [...texts.values()].reduce((sum, n) => sum + n, 0);
    const named = [...texts].filter(([text]) => text !== '').sort(([a], [b]) => (a < b ? -1 : 1));
    return [
      `- **${BASIS_WORDS[kind]}**: ${total}`,
      ...named.map(([text, n]) => `  - ${text}${n === 1 ? '' : ` (${n})`}`),
    ];
  });
  return [`### ${list.title}`, '', ...(lines.length === 0 ? ['Nothing listed.'] : lines), ''];
}

/**
 * docs/sources.md: one row a table with where it is from, how many of its cells are verified, computed or recalled, and
 * its checks; then what every other list of the catalogue stands on.
 */
export function sourcesMarkdown(lists: readonly BasisList[], tables: readonly Table[] = TABLES): string {
  const recalled = tables.filter((table) => table.citation.obtained === 'recalled').length;
  return [
    '# Sources',
    '',
    'Written by the build from the tables themselves; edit the tables, not this page.',
    '',
    `${tables.length} tables, ${recalled} of them from memory and marked so. Only facts are kept: sizes, values, names. A value`,
    'that nobody re-read is *recalled* and never silently decides what is forbidden. *secondary* means that the document',
    'itself was not read but something that quotes it; who owns the document can correct the table.',
    '',
    '| table | from | edition | obtained | rows | cells by status | checks |',
    '|---|---|---|---|--:|---|---|',
    ...tables.map(tableRow),
    '',
    '## What the other lists stand on',
    '',
    ...lists.flatMap(basisLines),
  ]
    .join('\n')
    .trimEnd()
    .concat('\n');
}
