import { z } from 'zod';
import { cardAnswer } from './card-schema.ts';
import { careAnswer, musterAnswer, repairAnswer } from './care-schema.ts';
import { checkAnswer } from './check-schema.ts';
import { curveAnswer } from './curve-schema.ts';
import { gapsAnswer } from './gap-schema.ts';
import { importAnswer } from './import-schema.ts';
import { loadAnswer } from './load-schema.ts';
import { noPlanAnswer, planAnswer } from './plan-schema.ts';
import { simulateAnswer } from './simulate-schema.ts';
import { stowAnswer } from './stow-schema.ts';
import { sureAnswer } from './sure-schema.ts';
import { tableAnswer, tablesAnswer } from './tables-schema.ts';
import { whyAnswer } from './why-schema.ts';
import { wireAnswer } from './wire-schema.ts';

/** Every JSON that the commands print, by the name its documentation uses. */
export const ANSWERS = {
  plan: planAnswer,
  'no-plan': noPlanAnswer,
  why: whyAnswer,
  curve: curveAnswer,
  gaps: gapsAnswer,
  load: loadAnswer,
  stow: stowAnswer,
  simulate: simulateAnswer,
  sure: sureAnswer,
  tables: tablesAnswer,
  table: tableAnswer,
  import: importAnswer,
  check: checkAnswer,
  card: cardAnswer,
  care: careAnswer,
  muster: musterAnswer,
  repair: repairAnswer,
  wire: wireAnswer,
};

export type AnswerName = keyof typeof ANSWERS;

/** One JSON Schema document (draft 2020-12) of them all: an answer is any one of them, and `$defs` names each. */
export function answersJsonSchema(): Record<string, unknown> {
  return {
    ...z.toJSONSchema(z.union(Object.values(ANSWERS))),
    title: 'Waymend answers',
    description:
      'What the commands print with --json. The field `schema` says which answer it is and in which version: a field is added without a new version, but none is removed or changed in meaning.',
  };
}
