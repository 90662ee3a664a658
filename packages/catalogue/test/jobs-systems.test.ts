import { describe, expect, test } from 'vitest';
import { BELONGINGS } from '../src/belongings/all.ts';
import { FAILURE_GROUPS } from '../src/failures/groups.ts';
import { SYSTEM_FAILURES } from '../src/failures/systems.ts';
import { SYSTEM_JOBS } from '../src/jobs/systems.ts';
import { PATTERNS } from '../src/patterns/all.ts';
import { PLACES } from '../src/places/all.ts';
import { SYSTEM_PLACES } from '../src/places/systems.ts';
import { RATE_FACTORS } from '../src/rates/all.ts';
import { DUST_EVENTS, FILL_EVENTS } from '../src/rates/dust-and-fuel.ts';
import type { Expedient, Job, JobNeed, JobUse } from '../src/shape/job.ts';
import type { PlaceId } from '../src/shape/place-ids.ts';
import { PLACE_IDS } from '../src/shape/place-ids.ts';
import type { Condition, Feature } from '../src/shape/words.ts';
import { FUNCTIONS, NEVER_PLAIN } from '../src/shape/words.ts';
import { SPARES } from '../src/spares/spares.ts';
import { SUBSTITUTIONS } from '../src/substitutions.ts';

const FLUIDS = ['coolant', 'engine-oil', 'gear-oil', 'atf', 'brake', 'power-steering'];
const BY_ID = new Map(SYSTEM_JOBS.map((job) => [job.id, job]));

function job(id: string): Job {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`no job ${id}`);
  return found;
}

function place(id: PlaceId) {
  const found = SYSTEM_PLACES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no place ${id}`);
  return found;
}

function failure(id: string) {
  const found = SYSTEM_FAILURES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no failure ${id}`);
  return found;
}

function holds(when: Condition | undefined, has: ReadonlySet<Feature>): boolean {
  return (
    (when?.all ?? []).every((feature) => has.has(feature)) &&
    (when?.any === undefined || when.any.some((feature) => has.has(feature))) &&
    !(when?.none ?? []).some((feature) => has.has(feature))
  );
}

/** Whether some vehicle meets both. */
function together(a: Condition | undefined, b: Condition | undefined): boolean {
  const choices = (when: Condition | undefined): readonly (readonly Feature[])[] =>
    when?.any === undefined ? [[]] : when.any.map((feature) => [feature]);
  return choices(a).some((one) =>
    choices(b).some((other) => {
      const has = new Set([...(a?.all ?? []), ...(b?.all ?? []), ...one, ...other]);
      return holds(a, has) && holds(b, has);
    }),
  );
}

const numbered = (prefix: string, last: number): readonly string[] =>
  Array.from({ length: last }, (_, index) => `${prefix}-${String(index + 1).padStart(2, '0')}`);
const TRADE_IDS = [
  ...numbered('CO', 8),
  ...numbered('FU', 9),
  ...numbered('ST', 8),
  ...numbered('EL', 7),
  ...numbered('BO', 5),
  ...numbered('EX', 2),
  ...numbered('CT', 5),
  ...numbered('EN', 2),
  ...numbered('GL', 3),
];

const EXPEDIENTS: readonly (readonly [Job, Expedient])[] = SYSTEM_JOBS.flatMap((one) =>
  one.expedients.map((expedient) => [one, expedient] as const),
);
const NEEDS: readonly (readonly [string, readonly JobNeed[], Condition | undefined])[] = [
  ...SYSTEM_JOBS.map((one) => [one.id, one.needs, one.when] as const),
  ...EXPEDIENTS.map(([one, expedient]) => [expedient.id, expedient.needs, one.when] as const),
];
const USES: readonly (readonly [string, JobUse, Condition | undefined])[] = [
  ...SYSTEM_JOBS.flatMap((one) => (one.uses ?? []).map((use) => [one.id, use, one.when] as const)),
  ...EXPEDIENTS.flatMap(([one, expedient]) =>
    (expedient.uses ?? []).map((use) => [expedient.id, use, one.when] as const),
  ),
];

function functionsOf(needs: readonly JobNeed[]): readonly string[] {
  return needs.flatMap((need) => ('fn' in need ? [need.fn] : []));
}

function textsOf(one: Job): readonly string[] {
  return [
    one.title,
    ...one.steps,
    ...one.cautions,
    ...(one.forbidden ?? []),
    ...one.after.map((after) => after.check),
    ...one.expedients.flatMap((expedient) => [expedient.title, expedient.limits, ...expedient.steps]),
  ];
}

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

describe('the places', () => {
  test('[M2] every place of these systems has one record', () => {
    const first = PLACE_IDS.indexOf('hose-clamp');
    expect(SYSTEM_PLACES.map((one) => one.id).sort()).toEqual([...PLACE_IDS.slice(first)].sort());
    expect(new Set(PLACES.map((one) => one.id)).size).toBe(PLACES.length);
  });

  test('[M2] sizes are marked as tools are, torques in order', () => {
    const marks: Readonly<Record<string, RegExp>> = { cross: /^cross \d$/ };
    for (const one of SYSTEM_PLACES) {
      for (const size of one.sizes) expect(size, one.id).toMatch(marks[one.drive] ?? /^\d+ mm$/);
      expect(new Set(one.sizes).size, one.id).toBe(one.sizes.length);
      expect(one.torqueNm[0] > 0 && one.torqueNm[0] < one.torqueNm[1], one.id).toBe(true);
    }
  });

  test('[M2] somebody turns every place, but for two that a workshop turns', () => {
    const turned = new Set(NEEDS.flatMap(([, needs]) => needs.flatMap((n) => ('turn' in n ? [n.turn] : []))));
    expect(SYSTEM_PLACES.map((one) => one.id).filter((id) => !turned.has(id))).toEqual([
      'oxygen-sensor',
      'crank-pulley-bolt',
    ]);
  });

  test('[M2] the typical ranges of the trade hold', () => {
    // Common practice, no source: sizes mm and torque N m by place.
    const within = (id: PlaceId, sizes: readonly number[], low: number, high: number): void => {
      const one = place(id);
      for (const size of one.sizes) expect(sizes, `${id} ${size}`).toContain(Number.parseInt(size, 10));
      expect(one.torqueNm[0], id).toBeGreaterThanOrEqual(low);
      expect(one.torqueNm[1], id).toBeLessThanOrEqual(high);
    };
    within('hose-clamp', [6, 7, 8], 2, 5);
    within('battery-terminal', [8, 10, 12, 13], 4, 12);
    within('spark-plug', [14, 16, 21], 15, 30);
    within('glow-plug', [8, 9, 10, 12], 8, 20);
    within('sump-plug', [13, 14, 17, 19, 22], 25, 45);
    within('alternator-bolt', [12, 13, 14, 17], 20, 60);
    within('seat-bolt', [14, 16, 17], 30, 50);
    within('tow-hitch-bolt', [17, 18, 19, 22, 24, 27, 30], 80, 350);
    within('rack-mount-key', [4, 5, 6, 8], 4, 30);
    expect(place('oxygen-sensor').sizes).toEqual(['22 mm']);
    expect([place('spark-plug').access, place('glow-plug').access, place('oxygen-sensor').access]).toEqual([
      'retain',
      'deep',
      'slotted',
    ]);
    expect([place('fuel-union').drive, place('clutch-union').drive]).toEqual(['flare', 'flare']);
  });

  test('[M3] bolts that go through are held at their other end', () => {
    const held = SYSTEM_PLACES.filter((one) => one.counterHold).map((one) => one.id);
    expect(held).toEqual(expect.arrayContaining(['exhaust-flange', 'engine-mount-bolt', 'tow-hitch-bolt']));
    expect(held).not.toContain('sump-plug');
  });
});

describe('the failures', () => {
  const GROUPS = [
    'battery',
    'charging-starting',
    'wiring',
    'ignition-management',
    'fuel-air',
    'cooling',
    'transmission',
    'exhaust',
    'body',
    'engine',
    'locks-glass',
  ];

  test('[M1] ids are unique, weights positive, chances chances, jobs known', () => {
    expect(new Set(SYSTEM_FAILURES.map((one) => one.id)).size).toBe(SYSTEM_FAILURES.length);
    for (const one of SYSTEM_FAILURES) {
      // Only what other rules add for it: nights of frost.
      if (one.id === RATE_FACTORS.waxing.failure) expect(one.share).toBe(0);
      else expect(one.share, one.id).toBeGreaterThan(0);
      for (const id of one.jobs) expect(BY_ID.has(id), `${one.id}: ${id}`).toBe(true);
      for (const chance of [one.immobilises ?? 0, one.restored ?? 0, one.renew?.rateFactor ?? 0]) {
        expect(chance, one.id).toBeGreaterThanOrEqual(0);
        expect(chance, one.id).toBeLessThan(1);
      }
    }
  });

  test('[M1] each group has between four and three dozen of them', () => {
    expect([...new Set(SYSTEM_FAILURES.map((one) => one.group))]).toEqual(GROUPS);
    for (const group of GROUPS) {
      const count = SYSTEM_FAILURES.filter((one) => one.group === group).length;
      expect(count, group).toBeGreaterThanOrEqual(4);
      expect(count, group).toBeLessThanOrEqual(36);
    }
  });

  test('[M4] every job is the cure of some failure that the same vehicle can have', () => {
    for (const one of SYSTEM_JOBS) {
      const cured = SYSTEM_FAILURES.filter((f) => f.jobs.includes(one.id) && together(f.when, one.when));
      expect(cured.length, one.id).toBeGreaterThan(0);
    }
  });

  test('[M1] dust and bad fuel point at failures that exist', () => {
    for (const events of [DUST_EVENTS, FILL_EVENTS]) expect(failure(events.failure).group).toBe(events.group);
  });

  test('[M1] what wears out by age can be renewed at home', () => {
    for (const id of [
      'hose-split',
      'v-belt-broken',
      'battery-worn-out',
      'trailer-bearing-failed',
      'fuel-filter-blocked',
    ])
      expect(failure(id).renew?.rateFactor, id).toBeLessThan(0.5);
  });

  describe.each(PATTERNS.filter((one) => one.kind === 'vehicle').map((one) => [one.id, one] as const))(
    'on a %s',
    (_, pattern) => {
      const has = new Set(pattern.features);
      const mine = SYSTEM_FAILURES.filter((one) => holds(one.when, has));

      test('[M4] each failure that has a cure has one this vehicle can use', () => {
        const dead = mine.filter((f) => f.jobs.length > 0 && !f.jobs.some((id) => holds(job(id).when, has)));
        // A battery dead inside wants a second one; a timing-belt engine's pump is workshop work.
        expect(
          dead.map((f) => f.id).filter((id) => id !== 'battery-shorted' && id !== 'water-pump-failed'),
        ).toEqual([]);
        expect(mine.length).toBeGreaterThan(60);
      });

      test('[M1] the failures of a group together stop the drive, and are cured, about as often as it says', () => {
        for (const group of FAILURE_GROUPS.filter((one) => GROUPS.includes(one.id))) {
          const failures = mine.filter((one) => one.group === group.id);
          const sum = (of: (index: number) => number) => failures.reduce((total, _f, i) => total + of(i), 0);
          const stops = failures.map((one) => one.share * (one.immobilises ?? group.immobilises));
          const stopping = sum((i) => stops[i] ?? 0) / sum((i) => failures[i]?.share ?? 0);
          const cured =
            sum((i) => {
              const one = failures[i];
              return one === undefined || one.jobs.length === 0
                ? 0
                : (stops[i] ?? 0) * (one.restored ?? group.restored);
            }) / sum((i) => stops[i] ?? 0);
          // Judged: the group's figure is an average over vehicles and roads.
          expect(Math.abs(stopping - group.immobilises), `${group.id} stops`).toBeLessThanOrEqual(0.15);
          expect(Math.abs(cured - group.restored), `${group.id} cured`).toBeLessThanOrEqual(0.1);
        }
      });
    },
  );
});
