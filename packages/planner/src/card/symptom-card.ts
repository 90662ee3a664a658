import type { Symptom } from '@waymend/catalogue/shape/symptom';
import { SYMPTOM_AREAS } from '@waymend/catalogue/shape/symptom';
import { SYMPTOMS } from '@waymend/catalogue/symptoms/all';
import { STOPS } from '@waymend/catalogue/symptoms/stops';
import { CANNOT_TELL, nextQuestion, suspects } from '@waymend/core/diagnosing/suspects';
import type { SceneJob } from '@waymend/core/repairing/scene';
import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { SuspectCard, SymptomCard, SymptomListCard } from '../answer/card-answer.ts';
import type { BuiltScene } from '../scene/build-scene.ts';
import type { Trade } from '../trade.ts';
import type { Carried } from './aboard.ts';
import { Aboard } from './aboard.ts';

const BASIS =
  'Ordered by the failures expected on this trip of this vehicle, times 0.05 for each answer against them (an estimate); which failure shows how is common practice.';
const NOTHING_FITS =
  'No failure fits all these answers: look again, then take the likeliest. If you cannot tell what it is, leave it alone and call for help.';

/** What a driver may notice on this vehicle, by area. */
export function symptomList({ rates }: BuiltScene): SymptomListCard {
  const possible = new Set(rates.failures.map((f) => f.failure));
  const here = SYMPTOMS.filter((s) => s.leads.some((l) => possible.has(l.failure)));
  return {
    schema: 'waymend.card/1',
    kind: 'symptoms',
    areas: SYMPTOM_AREAS.flatMap((area) => {
      const symptoms = here.filter((s) => s.area === area).map(({ id, title }) => ({ id, title }));
      return symptoms.length === 0 ? [] : [{ area, symptoms }];
    }),
  };
}

/**
 * The suspects behind a symptom after these answers, and what to ask next.
 *
 * @param given Answers by question id.
 */
export function symptomCard(
  built: BuiltScene,
  trade: Trade,
  symptomId: string,
  given: ReadonlyMap<string, string>,
  carried: Carried,
): Result<SymptomCard> {
  const symptom = SYMPTOMS.find((s) => s.id === symptomId.trim().toLowerCase());
  if (symptom === undefined)
    return refuse(
      'symptom-unknown',
      `There is no symptom "${symptomId.slice(0, 60)}"; --symptom without a word lists them`,
    );
  const checked = checkAnswers(symptom, given);
  if (!checked.ok) return checked;
  const expected = new Map(built.rates.failures.map((f) => [f.failure, f.events]));
  const list = suspects(symptom, given, expected);
  const aboard = new Aboard(built, carried);
  const byFailure = jobsByFailure(built, trade);
  const cards = list.map(({ failure, share, against }): SuspectCard => {
    const jobs = byFailure(failure);
    return {
      failure,
      title: built.rates.failures.find((f) => f.failure === failure)?.title ?? failure,
      share,
      against: against.map((id) => symptom.questions.find((q) => q.id === id)?.ask ?? id),
      jobs: jobs.map((job) => ({
        id: job.id,
        title: job.title,
        grade: aboard.gradeOf(job),
        inStock: aboard.inStock(job),
      })),
      stop: jobs.length > 0 ? null : stopOf(failure),
    };
  });
  const next = nextQuestion(symptom, given, expected);
  return ok({
    schema: 'waymend.card/1',
    kind: 'symptom',
    id: symptom.id,
    title: symptom.title,
    first: symptom.first,
    given: checked.value,
    next: symptom.questions.find((q) => q.id === next) ?? null,
    suspects: cards,
    stop: stopFor(cards),
    basis: BASIS,
  });
}

/** A failure whose jobs do not apply to this vehicle is one for help, too. */
function stopOf(failure: string): string {
  return STOPS.get(failure) ?? 'None of the repairs listed for this applies to this vehicle: call for help.';
}

function stopFor(cards: readonly SuspectCard[]): string | null {
  const [top] = cards;
  if (top === undefined)
    return 'This vehicle has no failure that shows like this: leave it alone, and call for help.';
  return top.against.length > 0 ? NOTHING_FITS : top.stop;
}

function jobsByFailure({ scene }: BuiltScene, trade: Trade): (failure: string) => readonly SceneJob[] {
  return (failure) => {
    const ids = trade.failures.find((f) => f.id === failure)?.jobs ?? [];
    return ids.flatMap((id) => scene.jobs.filter((job) => job.job === id && !job.expedient));
  };
}

function checkAnswers(symptom: Symptom, given: ReadonlyMap<string, string>): Result<SymptomCard['given']> {
  const out: SymptomCard['given'][number][] = [];
  for (const [id, said] of given) {
    const question = symptom.questions.find((q) => q.id === id);
    if (question === undefined) {
      const known = symptom.questions.map((q) => q.id).join(', ');
      return refuse('question-unknown', `"${symptom.id}" asks no "${id.slice(0, 40)}"; it asks ${known}`);
    }
    if (said === CANNOT_TELL) {
      out.push({ question: id, ask: question.ask, answer: said, text: 'Cannot tell' });
      continue;
    }
    const answer = question.answers.find((a) => a.id === said);
    if (answer === undefined) {
      const known = question.answers.map((a) => a.id).join(', ');
      return refuse('answer-unknown', `"${said.slice(0, 40)}" is no answer to "${id}"; it may be ${known}`);
    }
    out.push({ question: id, ask: question.ask, answer: said, text: answer.text });
  }
  return ok(out);
}
