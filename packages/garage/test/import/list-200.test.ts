import { expect, it } from 'vitest';
import { gradeList } from './grade-list.ts';

/**
 * Four lists of everyday lines with their right answers. The first was written and committed before there was a parser;
 * the others after it, to see how far it goes beyond the first. `first` is the share of right lines at the first reading,
 * before anything was changed because of the list: what to expect of a list nobody has seen.
 */
const LISTS = [
  { name: 'list-200', lines: 200, first: '96.5 %' },
  { name: 'list-fresh', lines: 86, first: '87.2 %' },
  { name: 'list-third', lines: 129, first: '82.9 %' },
  { name: 'list-fourth', lines: 84, first: '83.3 %' },
] as const;

it.each(LISTS)('reads at least 95 % of the lines of $name right', ({ name, lines, first }) => {
  const grade = gradeList(name);
  const share = (100 * grade.right) / grade.lines;
  console.info(
    `${name}: ${grade.right} of ${grade.lines} lines right (${share.toFixed(1)} %; first reading ${first})\n${grade.wrong.join('\n')}`,
  );
  expect(grade.lines).toBe(lines);
  expect(share).toBeGreaterThanOrEqual(95);
  expect(grade.headingsRight).toBe(grade.headings);
});
