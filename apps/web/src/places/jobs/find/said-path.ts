/** Answers in the order they were given. */
export type Given = readonly (readonly [question: string, answer: string])[];

/** What is said of a question that nobody can answer here and now (core/diagnosing). */
export const CANNOT_TELL = 'cannot-tell';

/** The answers that an address holds, 'fluid=falls/wet=line': the browser's own way back takes one away. */
export function readSaid(path: string): Given {
  return path.split('/').flatMap((part): Given => {
    const [question = '', answer = ''] = part.split('=');
    return question === '' || answer === '' ? [] : [[question, answer]];
  });
}

export function symptomPath(symptom: string, given: Given): string {
  return ['/jobs/find', symptom, ...given.map(([question, answer]) => `${question}=${answer}`)].join('/');
}
