import { SquareMark } from './square-mark.tsx';
import type { SquareFill } from './square-mark.tsx';

export type Mark = 'proper' | 'with-care' | 'last-resort' | 'missing';

/** The mark of a grade: solid, half along the diagonal, a dot, and hatched for what is not there. */
const FILLS: Readonly<Record<Mark, SquareFill>> = {
  proper: 'solid',
  'with-care': 'half',
  'last-resort': 'dot',
  missing: 'hatched',
};

export function GradeMark({ mark }: { mark: Mark }) {
  return <SquareMark fill={FILLS[mark]} />;
}

/** The grade words of an answer as a mark; null is what is missing. */
export function markOf(grade: string | null): Mark {
  return grade === 'proper' || grade === 'with-care' || grade === 'last-resort' ? grade : 'missing';
}
