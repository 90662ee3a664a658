import { describe, expect, it } from 'vitest';
import { FAILURES } from '../src/failures/all.ts';
import { JOBS } from '../src/jobs/all.ts';
import type { Symptom } from '../src/shape/symptom.ts';
import { SYMPTOM_AREAS } from '../src/shape/symptom.ts';
import { SYMPTOMS } from '../src/symptoms/all.ts';
import { STOPS } from '../src/symptoms/stops.ts';

const FAILURE = new Map(FAILURES.map((f) => [f.id, f]));
const JOB_IDS = new Set(JOBS.map((j) => j.id));

/** Failures that fit an answer. */
function fitting(symptom: Symptom, question: string, answer: string): readonly string[] {
  return symptom.leads
    .filter(({ fits }) => fits[question] === undefined || fits[question].includes(answer))
    .map(({ failure }) => failure);
}

describe('the symptoms', () => {
  it('reach every failure of the catalogue, and no other', () => {
    const reached = new Set(SYMPTOMS.flatMap((s) => s.leads.map((l) => l.failure)));
    expect(FAILURES.map((f) => f.id).filter((id) => !reached.has(id))).toEqual([]);
    expect([...reached].filter((id) => !FAILURE.has(id))).toEqual([]);
  });

  it('have ids of their own, an area of the list, a title, at most four questions', () => {
    expect(new Set(SYMPTOMS.map((s) => s.id)).size).toBe(SYMPTOMS.length);
    expect(new Set(SYMPTOMS.map((s) => s.title)).size).toBe(SYMPTOMS.length);
    expect(new Set(SYMPTOMS.map((s) => s.area))).toEqual(new Set(SYMPTOM_AREAS));
    for (const s of SYMPTOMS) {
      expect(s.questions.length, s.id).toBeLessThanOrEqual(4);
      expect(s.questions.length, s.id).toBeGreaterThan(0);
      expect(s.first.length, s.id).toBeGreaterThan(0);
      expect(new Set(s.questions.map((q) => q.id)).size, s.id).toBe(s.questions.length);
      expect(new Set(s.leads.map((l) => l.failure)).size, s.id).toBe(s.leads.length);
    }
  });

  it('name in their leads only questions and answers they have', () => {
    const wrong = SYMPTOMS.flatMap((s) =>
      s.leads.flatMap(({ failure, fits }) =>
        Object.entries(fits).flatMap(([question, answers]) => {
          const known = s.questions.find((q) => q.id === question)?.answers.map((a) => a.id) ?? [];
          return answers.filter((a) => !known.includes(a)).map((a) => `${s.id} ${failure} ${question}=${a}`);
        }),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('ask nothing that parts nothing, and offer no answer that leads nowhere', () => {
    for (const s of SYMPTOMS) {
      for (const q of s.questions) {
        expect(q.answers.length, `${s.id} ${q.id}`).toBeGreaterThan(1);
        const lists = q.answers.map((a) => fitting(s, q.id, a.id).join());
        expect(new Set(lists).size, `${s.id} ${q.id}`).toBeGreaterThan(1);
        for (const [n, list] of lists.entries())
          expect(list, `${s.id} ${q.id}=${q.answers[n]?.id ?? ''}`).not.toBe('');
      }
    }
  });

  it('end in jobs that exist, or in a stop with its reason; a stop only where no job is', () => {
    for (const { failure } of SYMPTOMS.flatMap((s) => s.leads)) {
      const jobs = FAILURE.get(failure)?.jobs ?? [];
      if (jobs.length === 0) expect(STOPS.get(failure), failure).toMatch(/[Cc]all for help/);
      for (const job of jobs) expect(JOB_IDS.has(job), job).toBe(true);
    }
    for (const failure of STOPS.keys()) expect(FAILURE.get(failure)?.jobs, failure).toEqual([]);
  });

  it('warn before anything is looked at where looking can hurt', () => {
    const first = (id: string) => SYMPTOMS.find((s) => s.id === id)?.first.join(' ') ?? '';
    // Common practice, no source.
    expect(first('overheats')).toMatch(/Never open the cap while it is hot/);
    expect(first('oil-lamp')).toMatch(/Engine off at once/);
    expect(first('pedal-soft')).toMatch(/Nobody drives on/);
    expect(first('after-deep-water')).toMatch(/do not turn it again/);
    expect(first('leak')).toMatch(/no flame/);
    expect(first('no-drive')).toMatch(/Nobody under it while the engine runs/);
  });
});
