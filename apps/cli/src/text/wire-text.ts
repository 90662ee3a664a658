import type { WireAnswer } from '@waymend/planner/answer/wire-answer';
import { heading, paragraph } from './layout.ts';
import type { Paint } from './paint.ts';

export function wireText({ sentences, cautions, bases }: WireAnswer, paint: Paint): string {
  const [first = '', ...rest] = sentences;
  const lines = [
    ...heading(first, paint),
    ...rest.flatMap((s) => paragraph(s)),
    '',
    'Mind:',
    ...cautions.flatMap((c) => paragraph(`- ${c}`, 2, 4)),
    '',
    'Where the figures come from:',
    ...bases.flatMap(({ what, basis }) => paragraph(`- ${what}: ${basis}`, 2, 4)),
  ];
  return `${lines.join('\n')}\n`;
}
