import { describe, expect, test } from 'vitest';
import { BELONGINGS } from '../src/belongings/all.ts';
import { CHASSIS_JOBS } from '../src/jobs/chassis.ts';
import { PATTERNS } from '../src/patterns/all.ts';
import { CHASSIS_PLACES } from '../src/places/chassis.ts';
import { FEATURES, FUNCTIONS, NEVER_PLAIN, SYSTEMS } from '../src/shape/words.ts';
import { SPARES } from '../src/spares/spares.ts';
import { SUBSTITUTIONS } from '../src/substitutions.ts';
import { FLUIDS, job, holds, TRADE_IDS, NEEDS, EXPEDIENTS, textsOf } from './support/chassis-jobs.ts';

describe('the jobs of wheels, brakes, driveline, suspension and steering', () => {
  test('[M4] all 41 trade jobs are there once, and every other id is a lettered part of one of them', () => {
    const ids = CHASSIS_JOBS.map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(TRADE_IDS).toHaveLength(41);
    expect(TRADE_IDS.filter((id) => !ids.includes(id))).toEqual([]);
    const lettered = ids.filter((id) => !TRADE_IDS.includes(id));
    expect(
      lettered.filter((id) => !/^[A-Z]{2}-\d\d[A-Z]$/.test(id) || !TRADE_IDS.includes(id.slice(0, -1))),
    ).toEqual([]);
  });

  test('[M4] expedients are named after their job, and no name is used twice', () => {
    const ids = [...CHASSIS_JOBS.map((one) => one.id), ...EXPEDIENTS.map(([, expedient]) => expedient.id)];
    expect(new Set(ids).size).toBe(ids.length);
    for (const [one, expedient] of EXPEDIENTS) expect(expedient.id.startsWith(`${one.id}/`)).toBe(true);
  });

  test('[M4] needs use the words of the function list and places that exist', () => {
    const faults: string[] = [];
    const helps = CHASSIS_JOBS.map((one) => [one.id, one.helps ?? []] as const);
    for (const [id, needs] of [...NEEDS, ...helps]) {
      for (const need of needs) {
        if ('turn' in need) {
          if (!CHASSIS_PLACES.some((place) => place.id === need.turn) && need.turn !== 'belt-tensioner')
            faults.push(`${id}: ${need.turn}`);
          continue;
        }
        const words: readonly string[] = FUNCTIONS[need.fn].of;
        if (need.of !== undefined && !words.includes(need.of)) faults.push(`${id}: ${need.fn} of ${need.of}`);
        if ('amount' in need && !('amount' in FUNCTIONS[need.fn]))
          faults.push(`${id}: ${need.fn} has no amount`);
      }
    }
    expect(faults).toEqual([]);
  });

  test('[M4] something in the catalogue, alone or by a substitution, can do each thing a job asks for', () => {
    const offers = [...BELONGINGS, ...SPARES].flatMap((one) => one.offers);
    const offered = (fn: string, of: string | undefined, amount: number | undefined): boolean =>
      offers.some(
        (offer) =>
          offer.kind === 'does' &&
          offer.fn === fn &&
          (of === undefined
            ? offer.of === undefined || !(neverPlain.get(fn) ?? []).includes(offer.of)
            : offer.of === of) &&
          (amount === undefined || (offer.amount ?? 0) >= amount),
      ) ||
      SUBSTITUTIONS.some(
        (row) =>
          row.wanted.fn === fn &&
          row.wanted.of === of &&
          row.grade !== 'forbidden' &&
          row.how.by === 'together',
      );
    const neverPlain = new Map<string, readonly string[]>(Object.entries(NEVER_PLAIN));
    const missing = NEEDS.flatMap(([id, needs]) =>
      needs.flatMap((need) =>
        'fn' in need && !offered(need.fn, need.of, need.amount) ? [`${id}: ${need.fn} of ${need.of}`] : [],
      ),
    );
    expect(missing).toEqual([]);
  });

  test('[M5] what a job uses up is a spare of the list or a fluid, in whole units', () => {
    const spares = new Set(SPARES.map((spare) => spare.id));
    const all = CHASSIS_JOBS.flatMap((one) => [
      ...(one.uses ?? []),
      ...one.expedients.flatMap((expedient) => expedient.uses ?? []),
    ]);
    expect(all.length).toBeGreaterThan(40);
    for (const use of all) {
      expect(spares.has(use.of) || FLUIDS.includes(use.of), use.of).toBe(true);
      expect(Number.isInteger(use.units) && use.units > 0, use.of).toBe(true);
    }
  });

  test('[M5] a spare that only fits some vehicles is used only by jobs of vehicles it fits', () => {
    for (const pattern of PATTERNS.filter((one) => one.kind === 'vehicle')) {
      const has = new Set(pattern.features);
      for (const one of CHASSIS_JOBS.filter((candidate) => holds(candidate.when, has)))
        for (const use of one.uses ?? []) {
          const spare = SPARES.find((candidate) => candidate.id === use.of);
          expect(holds(spare?.fits, has), `${pattern.id} ${one.id} ${use.of}`).toBe(true);
        }
    }
  });

  test('[M4] a limp says how far it may be trusted, and nothing else does', () => {
    for (const one of CHASSIS_JOBS) {
      expect(one.trust !== undefined, one.id).toBe(one.outcome === 'limp');
      expect(one.trust, one.id).not.toBe('T0');
    }
    for (const [, expedient] of EXPEDIENTS) {
      expect(expedient.trust, expedient.id).not.toBe('T0');
      expect(expedient.limits.length, expedient.id).toBeGreaterThan(10);
      expect(expedient.relativeChance ?? 0.9, expedient.id).toBeLessThanOrEqual(1);
      // T1 is walking pace and T2 at most 40 km/h, by the trade's own definition of the codes.
      if (expedient.trust === 'T1') expect(expedient.speedKmh ?? 10, expedient.id).toBeLessThanOrEqual(10);
      if (expedient.trust === 'T2' && expedient.speedKmh !== undefined)
        expect(expedient.speedKmh, expedient.id).toBeLessThanOrEqual(40);
    }
  });

  test('[M4] raising a wheel brings a caution about support, and going under asks for it as a safety need', () => {
    const raised = CHASSIS_JOBS.filter((one) => one.raise !== undefined);
    expect(raised.length).toBeGreaterThan(20);
    for (const one of raised)
      expect(
        one.cautions.some((text) => /\bstands?\b.*support/i.test(text)),
        one.id,
      ).toBe(true);
    for (const one of CHASSIS_JOBS.filter((candidate) => candidate.under)) {
      expect(one.raise, one.id).toBeDefined();
      expect(
        one.cautions.some((text) => /goes under until stands/.test(text)),
        one.id,
      ).toBe(true);
    }
    for (const [id, needs] of NEEDS)
      for (const need of needs)
        if ('fn' in need && (need.fn === 'support' || need.fn === 'eyes')) expect(need.safety, id).toBe(true);
    // An expedient that lifts says itself that the wheels are chocked and the jack stands firm.
    for (const [, expedient] of EXPEDIENTS) {
      const fns = expedient.needs.flatMap((need) => ('fn' in need ? [need.fn] : []));
      if (fns.includes('lift')) expect(fns, expedient.id).toEqual(expect.arrayContaining(['chock', 'base']));
    }
  });

  test('[M4] jobs on brakes, steering and springs carry hazards, defer to the maker and say what to check', () => {
    for (const one of CHASSIS_JOBS) {
      expect(one.cautions.length, one.id).toBeGreaterThan(0);
      expect(one.after.length, one.id).toBeGreaterThan(0);
      expect(one.steps.length, one.id).toBeGreaterThan(0);
    }
    const steering = ['SS-07', 'SS-08', 'SS-08E', 'SS-09P', 'SS-10', 'SS-10A'];
    for (const one of [
      ...CHASSIS_JOBS.filter((candidate) => candidate.system === 'brakes'),
      ...steering.map(job),
    ])
      expect(one.cautions.join(' '), one.id).toMatch(/maker.s manual/);
    for (const id of ['SS-01', 'SS-01R', 'SS-02', 'SS-03', 'SS-03S', 'SS-06'])
      expect(job(id).cautions.join(' '), id).toMatch(/store enough to kill/);
    for (const id of ['SS-01', 'SS-02', 'SS-06', 'BR-01', 'BR-02', 'BR-04', 'BR-07'])
      expect(
        job(id).needs.some((need) => 'fn' in need && need.fn === 'eyes' && need.safety === true),
        id,
      ).toBe(true);
    for (const id of ['BR-01', 'BR-02', 'BR-03', 'BR-04', 'BR-07'])
      expect(
        job(id)
          .after.map((after) => after.check)
          .join(' '),
        id,
      ).toMatch(/whole minute.*walking pace/);
  });

  test('[M2] what must never be improvised is written as forbidden and is no expedient', () => {
    // Common practice, no source: brake joints, flammable vapour on a bead, heat and struts.
    expect(job('BR-01').forbidden?.join(' ')).toMatch(/tape, putty/i);
    expect(job('BR-03').forbidden?.join(' ')).toMatch(/screw, putty or tape/);
    expect(job('BR-04').forbidden?.join(' ')).toMatch(/oil of any kind/i);
    expect(job('WT-06').forbidden?.join(' ')).toMatch(/lit inside the tyre/);
    expect(job('SS-04').forbidden?.join(' ')).toMatch(/heating or cutting/i);
    expect(job('SS-06').forbidden?.join(' ')).toMatch(/spring compressors/);
    const brakeSeals = EXPEDIENTS.filter(([one]) => one.system === 'brakes').flatMap(([, expedient]) =>
      expedient.needs.flatMap((need) => ('fn' in need ? [need.fn] : [])),
    );
    expect(brakeSeals).not.toContain('seal');
    expect(brakeSeals).not.toContain('bond');
  });

  test('[M3] shaft and arm bolts are held at their other end, brake hoses by their own hex', () => {
    const held = new Set(CHASSIS_PLACES.filter((place) => place.counterHold).map((place) => place.id));
    for (const id of [
      'prop-flange-front',
      'prop-flange-rear',
      'spring-eye-bolt',
      'trailing-arm-bolt',
      'shock-lower',
    ])
      expect([...held], id).toContain(id);
    expect(job('BR-02').needs).toContainEqual({ turn: 'brake-hose-bracket' });
  });

  test('[M4] numbers are whole and in order', () => {
    for (const one of CHASSIS_JOBS) {
      const [least, most] = one.minutes;
      expect(least > 0 && least < most && Number.isInteger(least) && Number.isInteger(most), one.id).toBe(
        true,
      );
      expect(SYSTEMS).toContain(one.system);
      for (const feature of [...(one.when?.all ?? []), ...(one.when?.any ?? []), ...(one.when?.none ?? [])])
        expect(FEATURES).toContain(feature);
    }
  });

  test('[M4] texts are plain: short sentences, straight quotes, no capitals but at the start', () => {
    for (const one of CHASSIS_JOBS)
      for (const text of textsOf(one)) {
        expect(text, one.id).toMatch(/^[A-Z0-9]/);
        expect(text, one.id).not.toMatch(/[’“”]/);
        // A capital inside a sentence would be a name of somebody's goods; U-bolts, G-clamps and T-sizes are shapes.
        expect(text.replace(/[.:?!] [A-Z]/g, '').slice(1), one.id).not.toMatch(
          /(?<![.:?!] )\b(?![UG]-)[A-Z][a-z]+/,
        );
        for (const sentence of text.split(/(?<=[.:?!]) /))
          expect(sentence.split(' ').length, `${one.id}: ${sentence}`).toBeLessThanOrEqual(32);
      }
  });
});

describe('against army field repair notes', () => {
  const covers = (id: string, people: number, least: number, most: number): void => {
    const one = job(id);
    expect(one.people, id).toBe(people);
    expect(one.minutes[0], id).toBeLessThanOrEqual(least);
    expect(one.minutes[1], id).toBeGreaterThanOrEqual(most);
  };

  test('[M4] a broken welded bracket takes two people an hour', () => {
    covers('SS-11', 2, 60, 60); // TM 9-2350-358-BD p. 3-3: persons 2, time 1.0 h
    expect(
      job('SS-11').expedients.some((one) => one.needs.some((need) => 'fn' in need && need.fn === 'weld')),
    ).toBe(true);
  });

  test('[M4] a broken leaf and a welded spring take two people one to two hours', () => {
    covers('SS-01', 2, 60, 120); // TM 9-2320-356-BD, springs: persons 2, time 1-2 h
    covers('SS-06', 2, 60, 120); // TM 9-2320-356-BD, springs: persons 2, time 1-2 h
  });

  test('[M4] crimping a brake line takes one person half an hour and folds 50 mm back', () => {
    covers('BR-03', 1, 30, 30); // TM 9-2320-356-BD, brake lines: persons 1, time 30 min
    const fold = job('BR-03').expedients.find((one) => one.id === 'BR-03/fold');
    expect(fold?.steps.join(' ')).toMatch(/50 mm/);
  });

  test('[M4] the play that condemns a steering end is 0.015 in', () => {
    // TM 9-2320-289-20 section 8-13: 0.015 in; written to a tenth of a millimetre.
    const written = /more than (\d\.\d) mm in an end/.exec(job('SS-08').steps.join(' '))?.[1];
    expect(Number(written)).toBeCloseTo(0.015 * 25.4, 1);
  });
});
