import { SYMPTOMS } from '@waymend/catalogue/symptoms/all';
import { describe, expect, it } from 'vitest';
import type { SymptomCard } from '../../src/answer/card-answer.ts';
import { symptomCard, symptomList } from '../../src/card/symptom-card.ts';
import type { BuiltScene } from '../../src/scene/build-scene.ts';
import { buildScene } from '../../src/scene/build-scene.ts';
import { SHIPPED_TRADE } from '../../src/shipped-trade.ts';
import { wagon } from '../views/garage.ts';

function built(more: object = {}): BuiltScene {
  const made = buildScene(wagon(more), 'trip', SHIPPED_TRADE);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

const EVERYTHING = { kind: 'everything' } as const;

function asked(scene: BuiltScene, symptom: string, answers: Readonly<Record<string, string>> = {}) {
  return symptomCard(scene, SHIPPED_TRADE, symptom, new Map(Object.entries(answers)), EVERYTHING);
}

function card(
  scene: BuiltScene,
  symptom: string,
  answers: Readonly<Record<string, string>> = {},
): SymptomCard {
  const got = asked(scene, symptom, answers);
  if (!got.ok) throw new Error(got.error.message);
  return got.value;
}

describe('from a symptom to a job', () => {
  const scene = built();

  it('lists what this vehicle can show, and nothing of a trailer it does not tow', () => {
    const ids = symptomList(scene).areas.flatMap((a) => a.symptoms.map((s) => s.id));
    expect(ids).toContain('overheats');
    expect(ids).toContain('no-start-clicks');
    expect(new Set(ids).size).toBe(ids.length);
    const possible = new Set(scene.rates.failures.map((f) => f.failure));
    for (const s of SYMPTOMS)
      expect(ids.includes(s.id), s.id).toBe(s.leads.some((l) => possible.has(l.failure)));
  });

  it('[M1] orders the suspects by the events this very trip expects, and shares them out', () => {
    const made = card(scene, 'overheats');
    const events = new Map(scene.rates.failures.map((f) => [f.failure, f.events]));
    const order = made.suspects.map((s) => events.get(s.failure) ?? 0);
    expect(order).toEqual([...order].sort((a, b) => b - a));
    expect(made.suspects.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 9);
  });

  it("[M1] the owner's own weak point comes first", () => {
    const weak = built({
      weakPoints: { pump: { vehicle: scene.trip.vehicle, failure: 'water-pump-failed', factor: 500 } },
    });
    expect(card(weak, 'overheats').suspects[0]?.failure).toBe('water-pump-failed');
    expect(card(scene, 'overheats').suspects[0]?.failure).not.toBe('water-pump-failed');
  });

  it('bright lamps and one clunk point to the starter, dim lamps to the battery', () => {
    // Common practice, no source.
    const bright = card(scene, 'no-start-clicks', { lamps: 'bright', click: 'one', water: 'no' });
    expect(['starter-contacts', 'starter-brushes']).toContain(bright.suspects[0]?.failure);
    const dim = card(scene, 'no-start-clicks', { lamps: 'dim' });
    expect(dim.suspects[0]?.failure).toMatch(/^battery-/);
    expect(dim.given[0]?.answer).toBe('dim');
  });

  it('asks on until nothing more is parted, never the same question twice, four at most', () => {
    for (const symptom of SYMPTOMS) {
      const answers: Record<string, string> = {};
      let rounds = 0;
      for (;;) {
        const { next } = card(scene, symptom.id, answers);
        if (next === null) break;
        expect(answers[next.id], `${symptom.id} ${next.id}`).toBeUndefined();
        answers[next.id] = next.answers.at(-1)?.id ?? '';
        rounds += 1;
      }
      expect(rounds, symptom.id).toBeLessThanOrEqual(4);
    }
  });

  it('every path of questions ends in jobs, or in a stop with its reason', () => {
    let ends = 0;
    const walk = (symptom: string, answers: Readonly<Record<string, string>>): void => {
      const made = card(scene, symptom, answers);
      if (made.next !== null) {
        for (const { id } of made.next.answers) walk(symptom, { ...answers, [made.next.id]: id });
        return;
      }
      ends += 1;
      const [top] = made.suspects;
      const where = `${symptom} ${JSON.stringify(answers)}`;
      if (top === undefined) expect(made.stop, where).toMatch(/call for help/);
      else if (top.jobs.length === 0) expect(made.stop, where).toMatch(/[Cc]all for help/);
      else if (top.against.length > 0) expect(made.stop, where).toMatch(/No failure fits/);
      else expect(top.jobs.length, where).toBeGreaterThan(0);
    };
    for (const { id } of SYMPTOMS) walk(id, {});
    expect(ends).toBeGreaterThan(500);
  });

  it('a failure that no roadside work puts right says to stop, with the reason', () => {
    const dead = card(scene, 'pedal-soft', { fluid: 'full', wet: 'nowhere', descent: 'no' });
    const master = dead.suspects.find((s) => s.failure === 'master-cylinder-dead');
    expect(master).toMatchObject({ jobs: [], against: [] });
    expect(master?.stop).toMatch(/do not drive, call for help/);
  });

  it('says of each job whether it can be done with what is here', () => {
    const bare = card(scene, 'no-charge', { belt: 'there' });
    const st02 = bare.suspects.flatMap((s) => s.jobs).find((j) => j.id === 'ST-02');
    expect(st02?.grade).toBeNull();
    const kit = built({ belongings: { fuses: { is: 'P-FUSE' } } });
    const fuse = (made: SymptomCard) => made.suspects.flatMap((s) => s.jobs).find((j) => j.id === 'EL-01');
    expect(fuse(card(kit, 'lights-dead', { fuse: 'holds' }))).toMatchObject({
      grade: 'proper',
      inStock: true,
    });
    expect(fuse(card(scene, 'lights-dead', { fuse: 'holds' }))?.inStock).toBe(false);
  });

  it('refuses what it does not know in one sentence', () => {
    const id = (symptom: string, answers: Readonly<Record<string, string>> = {}) => {
      const got = asked(scene, symptom, answers);
      return got.ok ? 'not refused' : got.error.id;
    };
    expect(id('hiccups')).toBe('symptom-unknown');
    expect(id('__proto__')).toBe('symptom-unknown');
    expect(id('overheats', { mood: 'bad' })).toBe('question-unknown');
    expect(id('overheats', { loss: 'maybe' })).toBe('answer-unknown');
  });
});
