import { describe, expect, it } from 'vitest';
import { COMMON_PRACTICE, estimate, recalled, source } from '../src/shape/basis.ts';
import { sourcesMarkdown, statusCounts } from '../src/sources.ts';
import { TABLES } from '../src/standards/all.ts';
import { FUSES_MAXI } from '../src/standards/fuses-maxi.ts';
import { SQUARE_DRIVES } from '../src/standards/square-drives.ts';

describe('the page of sources', () => {
  const page = sourcesMarkdown([
    { title: 'Jobs', bases: [COMMON_PRACTICE, COMMON_PRACTICE, source('TM 9-2320-356-BD 7-10')] },
    { title: 'Failures', bases: [estimate('b'), estimate('a'), estimate('a'), recalled('ISO 6722')] },
    { title: 'Nothing yet', bases: [] },
  ]);

  it('has one row a table, with citation, edition and checks', () => {
    const rows = page.split('\n').filter((line) => line.startsWith('| `'));
    expect(rows).toHaveLength(TABLES.length);
    const fuses = rows.find((row) => row.includes('`fuses-maxi`'));
    expect(fuses).toContain('ISO, ISO 8820-3; colour by rating');
    expect(fuses).toContain('| 2015 |');
    expect(fuses).toContain('10 verified, 10 recalled');
    expect(fuses).toContain('rating rises');
    for (const row of rows) expect(row.match(/(?<!\\)\|/g), row).toHaveLength(8);
  });

  it('lists what the other lists stand on, once each, with counts', () => {
    expect(page).toContain(
      '### Jobs\n\n- **common practice**: 2\n- **source**: 1\n  - TM 9-2320-356-BD 7-10\n',
    );
    expect(page).toContain('- **estimate**: 3\n  - a (2)\n  - b\n- **recalled**: 1\n  - ISO 6722\n');
    expect(page).toContain('### Nothing yet\n\nNothing listed.\n');
  });

  it('counts cells by status', () => {
    expect([...statusCounts(FUSES_MAXI)]).toEqual([
      ['verified', 10],
      ['recalled', 10],
    ]);
    expect(statusCounts(SQUARE_DRIVES).get('common-practice')).toBe(5);
  });
});
