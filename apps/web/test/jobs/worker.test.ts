import { readGarage } from '@waymend/garage/file/read-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { describe, expect, it } from 'vitest';
import { garageText } from '../../../../tests/support/yaml-garage.ts';
import { recordDone, usualEnd } from '../../src/places/jobs/repairs/record-done.ts';
import { lastShownKm, shownKm } from '../../src/places/jobs/repairs/shown-km.ts';
import { jobsReply } from '../../src/worker/jobs/answer-jobs.ts';
import type { CardTerms, JobsRequest } from '../../src/worker/jobs/protocol.ts';

const WHEEL = ['JB-4', 'JBASE', 'WC-2', 'BB-2M', 'SD2-21', 'ST-1', 'HL-1'];

function garage(change: Parameters<typeof garageText>[0] = {}): Garage {
  const read = readGarage(
    garageText({
      fittings: ['n: { vehicle: rig, place: wheel-nut, size: 21 mm, torqueNm: 120, status: measured }'],
      belongings: [...WHEEL, 'P-WHEEL'],
      vehicle: { odometerKm: '100000' },
      ...change,
    }),
    'test.yaml',
    { for: 'plan' },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

const TERMS: CardTerms = {
  here: null,
  people: null,
  dark: false,
  helpKm: null,
  daylightHours: null,
  waterDays: null,
  hurt: false,
  danger: false,
  convoy: false,
};

function card(made: Garage, terms: Partial<CardTerms> = {}, job = 'WT-01') {
  const reply = jobsReply({
    kind: 'jobs/card',
    garage: made,
    trip: 'trip',
    job,
    terms: { ...TERMS, ...terms },
  });
  if (reply.kind !== 'jobs/card') throw new Error(JSON.stringify(reply));
  return reply;
}

function ways(made: Garage, job: string) {
  const reply = jobsReply({ kind: 'jobs/ways', garage: made, trip: 'trip', job });
  if (reply.kind !== 'jobs/ways') throw new Error(JSON.stringify(reply));
  return reply;
}

describe('the worker at the roadside', () => {
  it('lists what this vehicle can show, and its jobs by system', () => {
    const list = jobsReply({ kind: 'jobs/list', garage: garage(), trip: 'trip' });
    if (list.kind !== 'jobs/list') throw new Error(list.kind);
    expect(list.symptoms.flatMap(({ symptoms }) => symptoms.map(({ id }) => id))).toContain('pedal-soft');
    const wheels = list.systems.find(({ system }) => system === 'wheels-tyres');
    expect(wheels?.jobs.map(({ id }) => id)).toContain('WT-01');
    const all = list.systems.flatMap(({ jobs }) => jobs.map(({ id }) => id));
    expect(new Set(all).size).toBe(all.length);
    expect(all.some((id) => id.includes('/'))).toBe(false);
  });

  it('[M4] a card with the kit alone says what is missing; with everything that is owned it is there', () => {
    const made = garage();
    const all = card(made);
    expect(all.card.now).toBe(true);
    expect(all.card.with).toBe('everything');
    const kit = card(made, { here: [{ id: 'hl-1', copies: 1 }] });
    expect(kit.card.with).toBe('kit');
    expect(kit.card.now).toBe(false);
    expect(kit.pieces).toEqual([]);
  });

  it('what goes out of the bags is what the card names', () => {
    const { card: made, pieces } = card(garage());
    const named = new Set(made.needs.flatMap(({ best }) => best?.pieces.map(({ id }) => id) ?? []));
    const out = new Set(pieces.map(({ belonging }) => belonging));
    for (const id of named) expect(out).toContain(id);
    for (const id of out) if (id !== 'p-wheel') expect(named).toContain(id);
    expect(out.size).toBeGreaterThan(3);
  });

  it('[M4] somebody left out counts no longer, and the dark makes it longer', () => {
    const both = card(garage());
    const alone = card(garage(), { people: ['ada'], dark: true });
    expect(both.card.people.here).toBe(2);
    expect(alone.card.people.here).toBe(1);
    expect(alone.card.people.names).toEqual(['Ada']);
    // Half as long again by torchlight (estimate of the model).
    expect(alone.card.minutes[1]).toBe(Math.round(both.card.minutes[1] * 1.5));
  });

  it('the way to help is the worst of the trip until somebody says it', () => {
    expect(card(garage()).card.help).toEqual({ km: 200, from: 'worst-of-trip' });
    expect(card(garage(), { helpKm: 12 }).card.help).toEqual({ km: 12, from: 'said' });
  });

  it('[M1] one answer makes suspects unlikely, and one that nobody can give changes nothing', () => {
    const of = (given: readonly (readonly [string, string])[]) => {
      const reply = jobsReply({
        kind: 'jobs/symptom',
        garage: garage(),
        trip: 'trip',
        here: null,
        symptom: 'pedal-soft',
        given,
      });
      if (reply.kind !== 'jobs/symptom') throw new Error(JSON.stringify(reply));
      return reply.symptom;
    };
    const plain = of([]);
    expect(plain.next?.id).toBe('fluid');
    const unsure = of([['fluid', 'cannot-tell']]);
    expect(unsure.suspects).toEqual(plain.suspects);
    expect(unsure.next?.id).not.toBe('fluid');
    expect(unsure.given).toHaveLength(1);
    const full = of([['fluid', 'full']]);
    expect(full.suspects.find(({ failure }) => failure === 'brake-pipe-broken')?.against).toHaveLength(1);
  });

  it('refuses a job, a sign and an answer that are not there, in a sentence', () => {
    const made = garage();
    for (const request of [
      { kind: 'jobs/card', garage: made, trip: 'trip', job: 'XX-99', terms: TERMS },
      { kind: 'jobs/symptom', garage: made, trip: 'trip', here: null, symptom: 'xx', given: [] },
      {
        kind: 'jobs/symptom',
        garage: made,
        trip: 'trip',
        here: null,
        symptom: 'pedal-soft',
        given: [['fluid', 'xx']],
      },
    ] satisfies JobsRequest[]) {
      const reply = jobsReply(request);
      expect(reply.kind).toBe('refused');
      if (reply.kind === 'refused') expect(reply.refusals[0]?.message.length).toBeGreaterThan(10);
    }
    expect(ways(made, 'XX-99').ways).toEqual([]);
  });

  it('answers a wire without any garage', () => {
    const reply = jobsReply({ kind: 'jobs/wire', question: { amps: 10, metresOneWay: 4 } });
    if (reply.kind !== 'jobs/wire') throw new Error(JSON.stringify(reply));
    expect(reply.wire.loopMetres).toBe(8);
    expect(reply.wire.fuse.amps).toBeLessThanOrEqual(reply.wire.gauge.allowedAmps);
    expect(jobsReply({ kind: 'jobs/wire', question: { amps: 4000, metresOneWay: 4 } }).kind).toBe('refused');
  });
});

describe('what was done', () => {
  const NOTED = {
    vehicle: 'rig',
    trip: 'trip',
    on: '2026-07-04',
    note: ' at the ford ',
    repair: 'r1',
    breakdown: 'b1',
  };

  it('[M1] a repair is recorded with its limits, and the failure with it, so that rates learn', () => {
    const made = garage();
    const { job, ways: all, causes } = ways(made, 'SS-04@rear');
    expect(job).toBe('SS-04');
    const [proper, weaker] = all;
    const [cause] = causes;
    if (proper === undefined || weaker === undefined || cause === undefined) throw new Error('no ways');
    expect(causes.map(({ expected }) => expected)).toEqual(
      causes.map(({ expected }) => expected).sort((a, b) => b - a),
    );
    expect(usualEnd(proper.limits.lasts)).toBe('mended');
    const done = recordDone(made, {
      ...NOTED,
      job,
      way: weaker,
      failure: cause.failure,
      ended: usualEnd(weaker.limits.lasts),
      atKm: 100_400,
    });
    if (!done.ok) throw new Error(done.error.message);
    const repair = done.value.repairs['r1'];
    expect(repair?.expedient).toBe(weaker.expedient);
    expect(repair?.trustKm).toBe(weaker.limits.trustKm);
    expect(repair?.note).toBe('at the ford');
    expect(done.value.breakdowns['b1']).toMatchObject({
      failure: cause.failure,
      ended: 'limped',
      repair: 'r1',
      trip: 'trip',
    });
    const open = jobsReply({ kind: 'jobs/repairs', garage: done.value, vehicle: 'rig' });
    if (open.kind !== 'jobs/repairs') throw new Error(open.kind);
    expect(open.repairs.map(({ id }) => id)).toEqual(['r1']);
    expect(open.knownKm).toBe(100_400);
  });

  it('an odometer that goes back is refused in a sentence, and nothing is recorded', () => {
    const made = garage();
    const { job, ways: all } = ways(made, 'WT-01');
    const [way] = all;
    if (way === undefined) throw new Error('no way');
    const back = recordDone(made, { ...NOTED, job, way, failure: null, ended: 'mended', atKm: 90_000 });
    expect(back.ok).toBe(false);
    if (!back.ok) expect(back.error.message).toContain('replaced');
  });

  it('says distances as the instrument in the vehicle shows them', () => {
    const made: Garage = {
      ...garage(),
      readings: { a: { vehicle: 'rig', km: 20, on: '2026-07-01', oldKm: 100_000 } },
    };
    // The new instrument was at 20 km when the vehicle had travelled 100,000 km: it shows 99,980 km less.
    expect(shownKm(made, 'rig', 100_300, '2026-07-04')).toBe(320);
    expect(lastShownKm(made, 'rig')).toBe(20);
    expect(shownKm(garage(), 'rig', 100_300, '2026-07-04')).toBe(100_300);
  });
});
