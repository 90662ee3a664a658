import type { FunctionNeed, Grade, Joint } from './scene.ts';

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  proper: 'properly',
  'with-care': 'at least with care',
  'last-resort': 'at least as a last resort',
};

export function gradeWords(grade: Grade): string {
  return GRADE_WORDS[grade];
}

/** 'undo Brake pipe nuts, 10 mm'. */
export function turnWords(joint: Joint): string {
  const held = joint.hold === undefined ? '' : `, ${joint.hold.size.label} held behind`;
  return `undo ${joint.title}, ${joint.size.label}${held}`;
}

/** 'seal of coolant', 'support of 1100, 2 at once': the trade's words for a function are the catalogue's to add. */
export function functionWords({ fn, of, amount, count }: FunctionNeed): string {
  const kind = of === undefined ? '' : ` of ${of}`;
  const much = amount === undefined ? '' : `, ${amount} or more`;
  return `${fn}${kind}${much}${count === undefined || count === 1 ? '' : `, ${count} at once`}`;
}
