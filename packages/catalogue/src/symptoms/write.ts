import type { SymptomLead, SymptomQuestion } from '../shape/symptom.ts';

/** A question and its answers by id. */
export function ask(id: string, words: string, answers: Readonly<Record<string, string>>): SymptomQuestion {
  return { id, ask: words, answers: Object.entries(answers).map(([answer, text]) => ({ id: answer, text })) };
}

/** A failure, and by question the answers that speak for it, parted by blanks: `lead('battery-flat', { lamps: 'dim dead' })`. */
export function lead(failure: string, fits: Readonly<Record<string, string>> = {}): SymptomLead {
  return {
    failure,
    fits: Object.fromEntries(Object.entries(fits).map(([question, ids]) => [question, ids.split(' ')])),
  };
}
