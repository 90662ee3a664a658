import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkTable } from '../src/shape/define-table.ts';
import { TABLES } from '../src/standards/all.ts';

const folder = join(import.meta.dirname, '../src/standards');

describe('every table of standards', () => {
  it.each(TABLES.map((table) => [table.id, table] as const))('%s keeps its own checks', (_, table) => {
    expect(checkTable(table)).toEqual([]);
  });

  it('is on the list exactly once, under the name of its file', () => {
    const files = readdirSync(folder)
      .filter((name) => readFileSync(join(folder, name), 'utf8').includes('= defineTable('))
      .map((name) => name.replace(/\.ts$/, ''));
    expect(files.length).toBeGreaterThan(60);
    expect(TABLES.map((table) => table.id).sort()).toEqual(files.sort());
  });

  it('that nobody re-read is marked recalled, not verified', () => {
    for (const table of TABLES) {
      if (table.citation.obtained === 'recalled') expect(table.status, table.id).toBe('recalled');
    }
    expect(TABLES.filter((table) => table.citation.obtained === 'recalled').length).toBeGreaterThan(5);
  });
});
