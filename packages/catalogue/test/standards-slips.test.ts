import { describe, expect, it } from 'vitest';
import type { AnyRow, Table } from '../src/shape/define-table.ts';
import { checkTable, printed, withRows } from '../src/shape/define-table.ts';
import { TABLES } from '../src/standards/all.ts';

/** A column typed in a unit a thousand times too large or too small, in every row: what hand conversion does. */
function scaled(table: Table, key: string, factor: number): Table {
  return withRows(
    table,
    table.rows.map((row): AnyRow => {
      const value = printed(row, key);
      return value === null ? row : { ...row, [key]: value * factor };
    }),
  );
}

const columns = TABLES.flatMap((table) =>
  Object.entries(table.columns)
    .filter(([, column]) => column.unit !== 'text')
    .map(([key]) => [`${table.id} ${key}`, table, key] as const),
);

describe('a column a thousand times too large or too small is refused', () => {
  it.each(columns)('%s', (_, table, key) => {
    for (const factor of [1000, 1 / 1000])
      expect(checkTable(scaled(table, key, factor)), `x ${factor}`).not.toEqual([]);
  });
});
