import { expect, it } from 'vitest';
import { gradeList } from './grade-list.ts';

it('reads at least 95 % of the lines of a list of 200, written before there was a parser, right', () => {
  const grade = gradeList('list-200');
  const share = (100 * grade.right) / grade.lines;
  console.info(
    `list-200: ${grade.right} of ${grade.lines} lines right (${share.toFixed(1)} %)\n${grade.wrong.join('\n')}`,
  );
  expect(grade.lines).toBe(200);
  expect(share).toBeGreaterThanOrEqual(95);
  expect(grade.headingsRight).toBe(grade.headings);
});
