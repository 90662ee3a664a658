import { describe, expect, test } from 'vitest';
import { BELONGINGS } from '../src/belongings/all.ts';
import { SYSTEM_JOBS } from '../src/jobs/systems.ts';
import { PATTERNS } from '../src/patterns/all.ts';
import { PLACES } from '../src/places/all.ts';
import { FUNCTIONS, NEVER_PLAIN } from '../src/shape/words.ts';
import { SPARES } from '../src/spares/spares.ts';
import { SUBSTITUTIONS } from '../src/substitutions.ts';
import {
  FLUIDS,
  BY_ID,
  job,
  holds,
  together,
  TRADE_IDS,
  EXPEDIENTS,
  NEEDS,
  USES,
  functionsOf,
  textsOf,
} from './support/system-jobs.ts';

describe('the jobs of engine bay, body and trailer', () => {
  test('[M4] all 49 trade jobs are there once; every other id is a lettered part of one of them', () => {
    const ids = SYSTEM_JOBS.map((one) => one.id);
    expect(TRADE_IDS).toHaveLength(49);
    expect(new Set(ids).size).toBe(ids.length);
    expect(TRADE_IDS.filter((id) => !BY_ID.has(id))).toEqual([]);
    const lettered = ids.filter((id) => !TRADE_IDS.includes(id));
    expect(
      lettered.filter((id) => !/^[A-Z]{2}-\d\d[B-E]$/.test(id) || !TRADE_IDS.includes(id.slice(0, -1))),
    ).toEqual([]);
  });

  test('[M4] expedients are named after their job, once each', () => {
    const ids = EXPEDIENTS.map(([, expedient]) => expedient.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [one, expedient] of EXPEDIENTS) expect(expedient.id.startsWith(`${one.id}/`)).toBe(true);
  });

  test('[M4] needs and helps use the words of the function list and places that exist', () => {
    const faults: string[] = [];
    for (const [id, needs] of [...NEEDS, ...SYSTEM_JOBS.map((one) => [one.id, one.helps ?? []] as const)]) {
      for (const need of needs) {
        if ('turn' in need) {
          if (!PLACES.some((one) => one.id === need.turn)) faults.push(`${id}: ${need.turn}`);
          continue;
        }
        const words: readonly string[] = FUNCTIONS[need.fn].of;
        if (need.of !== undefined && !words.includes(need.of)) faults.push(`${id}: ${need.fn} of ${need.of}`);
        if ('amount' in need && !('amount' in FUNCTIONS[need.fn]))
          faults.push(`${id}: ${need.fn} takes no amount`);
      }
    }
    expect(faults).toEqual([]);
  });

  test('[M4] something in the catalogue can do each thing a job asks for', () => {
    const offers = [...BELONGINGS, ...SPARES].flatMap((one) => one.offers);
    const narrow = new Map<string, readonly string[]>(Object.entries(NEVER_PLAIN));
    const offered = (fn: string, of: string | undefined, amount: number, safety: boolean): boolean =>
      offers.some(
        (offer) =>
          offer.kind === 'does' &&
          offer.fn === fn &&
          (of === undefined
            ? offer.of === undefined || !(narrow.get(fn) ?? []).includes(offer.of)
            : offer.of === of) &&
          (offer.amount ?? Number.POSITIVE_INFINITY) >= amount &&
          !(safety && offer.grade === 'last-resort'),
      ) ||
      SUBSTITUTIONS.some(
        (row) =>
          row.wanted.fn === fn &&
          row.wanted.of === of &&
          row.grade !== 'forbidden' &&
          row.how.by === 'together',
      );
    const missing = NEEDS.flatMap(([id, needs]) =>
      needs.flatMap((need) =>
        'fn' in need && !offered(need.fn, need.of, need.amount ?? 0, need.safety === true)
          ? [`${id}: ${need.fn} of ${need.of}`]
          : [],
      ),
    );
    expect(missing).toEqual([]);
  });

  test('[M5] what a job uses up is a spare or a fluid, in whole units, and never more than a can holds', () => {
    const spares = new Set(SPARES.map((spare) => spare.id));
    expect(USES.length).toBeGreaterThan(40);
    for (const [id, use] of USES) {
      expect(spares.has(use.of) || FLUIDS.includes(use.of), `${id} ${use.of}`).toBe(true);
      expect(Number.isInteger(use.units) && use.units > 0, id).toBe(true);
      expect(use.units, id).toBeLessThanOrEqual(FLUIDS.includes(use.of) ? 5 : 1);
    }
  });

  test('[M5] a spare that only fits some vehicles is used only by jobs of vehicles it fits', () => {
    for (const pattern of PATTERNS.filter((one) => one.kind === 'vehicle')) {
      const has = new Set(pattern.features);
      for (const [id, use, when] of USES) {
        if (!holds(when, has)) continue;
        const spare = SPARES.find((one) => one.id === use.of);
        expect(holds(spare?.fits, has), `${pattern.id} ${id} ${use.of}`).toBe(true);
      }
    }
  });

  test('[M4] no job asks for a fastener that no vehicle with the job has', () => {
    for (const [id, needs, when] of NEEDS)
      for (const need of needs)
        if ('turn' in need)
          expect(together(when, PLACES.find((one) => one.id === need.turn)?.when), `${id} ${need.turn}`).toBe(
            true,
          );
  });

  test('[M4] a limp says how far it may be trusted, and nothing else does', () => {
    for (const one of SYSTEM_JOBS) {
      expect(one.trust !== undefined, one.id).toBe(one.outcome === 'limp');
      expect(one.trust, one.id).not.toBe('T0');
    }
    for (const [, expedient] of EXPEDIENTS) {
      expect(expedient.trust, expedient.id).not.toBe('T0');
      expect(expedient.limits.length, expedient.id).toBeGreaterThanOrEqual(5);
      expect(expedient.relativeChance ?? 0.9, expedient.id).toBeLessThanOrEqual(1);
      expect(expedient.relativeChance ?? 0.9, expedient.id).toBeGreaterThan(0);
      // T1 is walking pace and T2 at most 40 km/h: what the codes mean in the trade, no source.
      if (expedient.trust === 'T1') expect(expedient.speedKmh ?? 5, expedient.id).toBeLessThanOrEqual(10);
      if (expedient.trust === 'T2') expect(expedient.speedKmh ?? 40, expedient.id).toBeLessThanOrEqual(40);
    }
  });

  test('[M4] every raised job says what carries the weight, and whoever lifts also chocks', () => {
    const raised = SYSTEM_JOBS.filter((one) => one.raise !== undefined);
    expect(raised.map((one) => one.id)).toEqual(['BO-04', 'BO-04B']);
    for (const one of raised) {
      expect(one.under, one.id).toBe(true);
      expect(one.cautions.join(' '), one.id).toMatch(/goes under until stands/);
    }
    for (const [id, needs] of NEEDS) {
      const fns = functionsOf(needs);
      if (fns.includes('lift')) expect(fns, id).toEqual(expect.arrayContaining(['chock', 'base']));
      for (const need of needs)
        if ('fn' in need && (need.fn === 'support' || need.fn === 'eyes')) expect(need.safety, id).toBe(true);
    }
  });

  test('[M4] every job has steps, hazards and something to look at afterwards', () => {
    for (const one of SYSTEM_JOBS) {
      expect(one.steps.length, one.id).toBeGreaterThan(0);
      expect(one.cautions.length, one.id).toBeGreaterThan(0);
      expect(one.after.length, one.id).toBeGreaterThan(0);
      const [least, most] = one.minutes;
      expect(least >= 0 && least < most && Number.isInteger(least) && Number.isInteger(most), one.id).toBe(
        true,
      );
    }
  });

  test('[M4] hazards are named where they kill: fuel, scalds, batteries, gas, starters, springs', () => {
    const says = (id: string, what: RegExp): void => {
      expect(job(id).cautions.join(' '), id).toMatch(what);
    };
    for (const id of ['FU-01', 'FU-02', 'FU-03', 'FU-04', 'FU-05', 'FU-05B', 'FU-05C', 'FU-06', 'FU-07'])
      says(id, /No flame/);
    for (const id of ['FU-01', 'FU-02', 'FU-06']) says(id, /high-pressure diesel/);
    for (const id of ['CO-01', 'CO-02', 'CO-02B', 'CO-05', 'CO-06', 'CO-08B', 'CO-08C']) says(id, /scald/);
    for (const id of ['ST-01', 'ST-01B', 'ST-01C']) says(id, /explodes[^]*Plus to plus/);
    for (const id of ['EX-02', 'EX-02B', 'EN-02B']) says(id, /gas/i);
    for (const id of ['ST-04', 'ST-04B', 'ST-04C']) says(id, /neutral/);
    says('FU-09', /bends the rod/);
    says('BO-04B', /leaf under load/);
    for (const id of ['CT-01', 'CT-01B']) {
      says(id, /eyes/);
      expect(job(id).needs, id).toContainEqual({ fn: 'eyes', safety: true });
    }
  });

  test('[M4] what must never be done is written as forbidden and is no expedient', () => {
    const forbids = (id: string, what: RegExp): void => {
      expect(job(id).forbidden?.join(' ') ?? '', id).toMatch(what);
    };
    // Common practice, no source.
    forbids('CO-01', /hot cap/);
    forbids('CO-03', /multi-rib[^]*timing/);
    forbids('CO-03B', /timing/);
    forbids('FU-01', /last filter/);
    forbids('FU-03', /rail/);
    forbids('FU-04', /welding/);
    forbids('FU-05', /cab/);
    forbids('ST-06', /Start spray/);
    forbids('ST-08', /immobiliser/);
    forbids('EL-01', /foil or wire/);
    forbids('EL-01B', /foil or wire/);
    forbids('EX-01', /Plastic/);
    expect(job('CO-03').expedients).toEqual([]);
    expect(job('CO-03B').when).toEqual({ all: ['v-belt'], none: ['multi-rib-belt'] });
    expect(job('CO-06').when).toEqual({ none: ['timing-belt'] });
    // Current only ever goes through a fuse: no way feeds a circuit with bare wire.
    for (const [id, needs] of NEEDS) {
      const fns = functionsOf(needs);
      if (id.startsWith('CO-07') && fns.includes('splice-wire')) expect(fns, id).toContain('fuse');
      if (id === 'FU-05' || id === 'ST-06/bridge') expect(fns, id).toContain('fuse');
    }
  });

  test('[M4] driving without a clutch needs nothing but a manual gearbox and skill', () => {
    const one = job('CT-02');
    expect([one.needs, one.uses, one.when, one.skill, one.trust]).toEqual([
      [],
      undefined,
      { all: ['manual-gearbox'] },
      2,
      'T3',
    ]);
  });

  test('[M4] a flat battery is boosted alone; cables serve where a second battery is aboard', () => {
    expect(job('ST-01').needs).toEqual([{ fn: 'start-boost', of: 'solo' }]);
    expect(job('ST-01B').needs).toEqual([{ fn: 'start-boost', of: 'second-vehicle' }]);
    expect(job('ST-01B').when).toEqual({ all: ['second-battery'] });
  });

  test('[M4] texts are plain: short sentences, straight quotes, no names of goods', () => {
    for (const one of SYSTEM_JOBS)
      for (const text of textsOf(one)) {
        expect(text, one.id).toMatch(/^[A-Z0-9]/);
        expect(text, one.id).not.toMatch(/[’“”—]/);
        // A capital inside a sentence would be a name of somebody's goods; V-belts, R-clips and O-rings are shapes.
        expect(text.replace(/[.:?!] [A-Z]/g, '').slice(1), one.id).not.toMatch(
          /(?<![.:?!] )\b(?![A-Z]-)[A-Z][a-z]+/,
        );
        for (const sentence of text.split(/(?<=[.:?!;]) /))
          expect(sentence.split(' ').length, `${one.id}: ${sentence}`).toBeLessThanOrEqual(34);
      }
  });
});

describe('against army field repair notes', () => {
  /** The job takes that many people, and the time printed lies within its minutes. */
  const covers = (id: string, people: number, least: number, most: number): void => {
    const one = job(id);
    expect(one.people, id).toBe(people);
    expect(one.minutes[0], id).toBeLessThanOrEqual(least);
    expect(one.minutes[1], id).toBeGreaterThanOrEqual(most);
  };

  test('[M4] a leaking coolant hose takes one person half an hour and leaves reduced mobility', () => {
    // TM 9-2320-356-BD page 7-10 and TM 9-2350-358-BD page 6-14: persons 1, 30 min, reduced mobility.
    covers('CO-01', 1, 30, 30);
    const wrap = job('CO-01').expedients.find((one) => one.id === 'CO-01/wrap');
    expect(wrap?.trust).toBe('T3');
    expect(functionsOf(wrap?.needs ?? [])).toContain('seal');
  });

  test('[M4] a low-pressure fuel line takes one person half an hour to an hour, with no limit after', () => {
    // TM 9-2350-358-BD page 5-13: persons 1, 0.5 to 1.0 h, no limitation.
    covers('FU-03', 1, 30, 60);
    expect(job('FU-03').outcome).toBe('drive-on');
  });

  test('[M4] a broken battery post takes one person ten to thirty minutes and a hose clamp', () => {
    // TM 9-2320-356-BD page 8-19: persons 1, 10 to 30 min, hose clamp or self-tapping screw, less starting power.
    covers('ST-02B', 1, 10, 30);
    const clamp = job('ST-02B').expedients.find((one) => one.id === 'ST-02B/hose-clamp');
    expect(clamp?.needs).toContainEqual({ fn: 'seal', of: 'clamp' });
    expect(clamp?.limits).toMatch(/starting power/);
  });

  test('[M4] a wire spliced in takes one person half an hour', () => {
    covers('EL-02', 1, 30, 30); // TM 9-2350-358-BD page 3-3: persons 1, 0.5 h
  });
});
