import { PATTERNS } from '@waymend/catalogue/patterns/all';
import { BELONGINGS } from '@waymend/catalogue/belongings/all';
import { garageFile } from '@waymend/garage/record/schema';
import { startFromPattern } from '@waymend/garage/start/from-pattern';
import { describe, expect, it } from 'vitest';
import type { JobCard } from '../../src/answer/card-answer.ts';
import type { CardAsk } from '../../src/card/job-card.ts';
import { jobCard, withPeople } from '../../src/card/job-card.ts';
import type { BuiltScene } from '../../src/scene/build-scene.ts';
import { buildScene } from '../../src/scene/build-scene.ts';
import { SHIPPED_TRADE } from '../../src/shipped-trade.ts';
import { wagon } from '../views/garage.ts';

const WHEEL_KIT = {
  jack: { is: 'JB-4' },
  base: { is: 'JBASE' },
  chocks: { is: 'WC-2', berth: 'drawer-left' },
  bar: { is: 'BB-2M', handleMm: 450, bag: 'roll', pocket: 'slot-4' },
  s21: { is: 'SD2-21', bag: 'roll' },
  spare: { is: 'P-WHEEL' },
};
const STOWED = {
  bags: { roll: { name: 'tool roll', berth: 'drawer-left' } },
  pockets: { 'slot-4': { bag: 'roll', name: 'slot 4', widthMm: 60, lengthMm: 500 } },
};
/** 128.25 N m on a 450 mm bar: by hand 0.95 x 0.45 = 0.4275 m, 128.25 / 0.4275 = 300 N, 300 / 9.80665 = 30.6 kg. */
const NUTS = {
  nuts: { vehicle: 'wagon', place: 'wheel-nut', size: '21 mm', torqueNm: 128.25, status: 'measured' },
};

function scene(more: object = {}, people?: readonly string[]): BuiltScene {
  const garage = wagon(more);
  const vehicle = garage.trips['trip']?.vehicle ?? '';
  const fittings = Object.fromEntries(
    Object.entries(garage.fittings).map(([id, f]) => [id, { ...f, vehicle }]),
  );
  const whole = { ...garage, fittings };
  const built = buildScene(
    people === undefined ? whole : withPeople(whole, 'trip', people),
    'trip',
    SHIPPED_TRADE,
  );
  if (!built.ok) throw new Error(built.error.message);
  return built.value;
}

function card(built: BuiltScene, job: string, more: Partial<CardAsk> = {}): JobCard {
  const got = jobCard(built, SHIPPED_TRADE, {
    job,
    carried: { kind: 'everything' },
    with: 'everything',
    ...more,
  });
  if (!got.ok) throw new Error(got.error.message);
  return got.value;
}

const turning = (made: JobCard, words: RegExp) => made.needs.find((n) => words.test(n.what));

describe('the card of a job', () => {
  const built = scene({ belongings: WHEEL_KIT, fittings: NUTS, ...STOWED });

  it('[M4] a wheel can be changed with what is here, and each piece is where its bag and pocket are', () => {
    const made = card(built, 'WT-01');
    expect(made.now).toBe(true);
    expect(made.uses).toMatchObject([{ of: 'P-WHEEL', each: 1, aboard: 1, left: 0 }]);
    const best = turning(made, /Wheel nuts/)?.best;
    expect(best?.pieces.map((p) => [p.id, p.where])).toEqual([
      ['bar', expect.stringMatching(/^tool roll, slot 4 \(/)],
      ['s21', expect.stringMatching(/^tool roll \(/)],
    ]);
    const chocks = made.needs.find((n) => n.what.includes('chock'))?.best;
    expect(chocks?.pieces[0]?.where).toMatch(/drawer/i);
    const jack = made.needs.find((n) => n.what === 'lift')?.best;
    expect(jack?.pieces[0]?.where).toBe('kit');
  });

  it('[M2] a 450 mm bar needs 300 N at its end for 128.25 N m, about 31 kg of pull', () => {
    const pull = turning(card(built, 'WT-01'), /Wheel nuts/)?.best?.pull;
    expect(pull).toMatchObject({ leverMm: 428, newtons: 300, kg: 31, how: 'hard' });
    expect(pull?.words).toMatch(/450 mm.*needs 300 N.*about 31 kg of pull/);
  });

  it('[M4] without the socket it cannot be done, and the card says what would do', () => {
    const { s21: _, ...rest } = WHEEL_KIT;
    const made = card(scene({ belongings: rest, fittings: NUTS, ...STOWED }), 'WT-01');
    expect(made).toMatchObject({ now: false, grade: null });
    expect(made.why.join(' ')).toMatch(/Nothing here does this: Wheel nuts, 21 mm/);
    const nuts = turning(made, /Wheel nuts/);
    expect(nuts?.best).toBeNull();
    expect(nuts?.wanted[0]).toMatch(/21 mm.*not owned/);
    expect(made.decision.courses[0]?.course).not.toBe('fix');
  });

  it('[M2] an adjustable wrench is never a way to a wheel nut, and the card says not to', () => {
    const { s21: _, ...rest } = WHEEL_KIT;
    const made = card(
      scene({
        belongings: { ...rest, adjustable: { is: 'AW-250' }, ratchet: { is: 'RT-3' } },
        fittings: NUTS,
      }),
      'WT-01',
    );
    const nuts = turning(made, /Wheel nuts/);
    expect(nuts?.best).toBeNull();
    expect(nuts?.doNot.join(' ')).toMatch(/Never: adjustable wrench on wheels/);
    expect(nuts?.doNot.join(' ')).toMatch(/Never: ratchet above 80 N m/);
  });

  it('[M4] no jack is ever the support, and the card says not to', () => {
    const made = card(scene({ belongings: { ...WHEEL_KIT, second: { is: 'JB-6' } } }), 'SS-04@rear');
    const support = made.needs.find((n) => n.what.startsWith('support'));
    expect(support?.best).toBeNull();
    expect(support?.doNot.join(' ')).toMatch(/Never: any jack alone/);
  });

  it('[M4] people: skill and number count, and who is here is named', () => {
    const two = { people: { bob: { name: 'Bob', massKg: 90, skill: 1 } } };
    const made = card(scene({ belongings: WHEEL_KIT, ...two }, ['bob']), 'WT-05');
    expect(made.people).toMatchObject({ wanted: 2, here: 1, skill: 3, bestSkill: 1, names: ['Bob'] });
    expect(made.why.join(' ')).toMatch(/takes 2 people, and 1 is here/);
    expect(made.why.join(' ')).toMatch(/asks for skill 3, and the best here has 1/);
  });

  it('[M5] parts used up are counted, and what is left', () => {
    const some = { belongings: { fuses: { is: 'P-FUSE', stock: 3 } } };
    expect(card(scene(some), 'EL-01').uses[0]).toMatchObject({ of: 'P-FUSE', each: 1, aboard: 3, left: 2 });
    const none = card(scene(), 'EL-01');
    expect(none.uses[0]).toMatchObject({ aboard: 0, left: null });
    expect(none.now).toBe(false);
  });

  it('[M4] an expedient is trusted for its distance, set beside the distance to help', () => {
    const tape = { belongings: { tape: { is: 'TP-1' }, strip: { is: 'WS-1' } } };
    const far = card(scene(tape), 'EL-02', { helpKm: 60 });
    const near = card(scene(tape), 'EL-02', { helpKm: 40 });
    const twist = (c: JobCard) => c.expedients.find((e) => e.id === 'EL-02/twist');
    expect(twist(far)).toMatchObject({ trustedKm: 50, reachesHelp: false, lookAgainKm: 20 });
    expect(twist(near)).toMatchObject({ trustedKm: 50, reachesHelp: true });
    expect(card(scene(tape), 'EL-02').help).toEqual({ km: 200, from: 'worst-of-trip' });
    expect(near.wire).toMatch(/waymend wire/);
    expect(card(built, 'WT-01').wire).toBeNull();
  });

  it('in the dark it takes half as long again, and says to bring light', () => {
    const day = card(built, 'WT-01');
    const night = card(built, 'WT-01', { dark: true });
    expect(night.minutes).toEqual(day.minutes.map((m) => Math.round(m * 1.5)));
    expect(night.why.join(' ')).toMatch(/No light is here/);
    expect(night.decision.courses[0]?.course).toBe('wait');
    expect(day.decision.courses[0]?.course).toBe('fix');
  });

  it('a torque wrench through a crow-foot in line is set lower: TM 1-1500-204-23-9', () => {
    const parts = { tw: { is: 'TW-3' }, cf: { is: 'CF-17' } };
    const unions = {
      union: { vehicle: 'wagon', place: 'brake-union', size: '17 mm', torqueNm: 16, status: 'measured' },
    };
    const made = card(scene({ belongings: parts, fittings: unions }), 'BR-01');
    const union = made.torques.find((t) => /17 mm/.test(t.place) && t.nm === 16);
    // By hand: hand at 0.95 x 330 = 313.5, rounded 314 mm; crow-foot 0.6 of its length; 16 x 314 / (314 + A).
    const length = BELONGINGS.find((b) => b.id === 'CF-17')?.lengthMm ?? 0;
    const a = Math.round(length * 0.6);
    expect(union?.setting?.extensionMm).toBe(a);
    expect(union?.setting?.nm).toBeCloseTo((16 * 314) / (314 + a), 1);
    expect(union?.setting?.nm).toBeLessThan(16);
    expect(union?.sentences.join(' ')).toMatch(/square to the handle the reading is the torque/);
  });

  it('without a torque wrench a known pull on a known bar gives the torque: N m = kg x 9.80665 x m', () => {
    const nuts = card(built, 'WT-01').torques.find((t) => t.place.startsWith('Wheel nuts'));
    // 128.25 / 0.4275 / 9.80665 = 30.6 kg. Plus or minus 10 %: common practice, no source.
    expect(nuts?.setting).toBeNull();
    expect(nuts?.sentences[0]).toMatch(/about 31 kg of pull, 428 mm out/);
    expect([nuts?.from, nuts?.to]).toEqual([115.4, 141.1]);
  });

  it('sizes that are only assumed are said to be', () => {
    expect(card(built, 'CO-01').why.join(' ')).toMatch(/only assumed/);
  });

  it('[M2] a size that rounds the head is named where it is here: 9/16 in never goes on 14 mm', () => {
    // 14.2875 on 14: 2.05 % too wide, over the 2 % of M2. Our own rule, not a standard's.
    const flange = {
      flange: {
        vehicle: 'wagon',
        place: 'prop-flange-rear',
        size: '14 mm',
        torqueNm: 74,
        status: 'measured',
      },
    };
    const inch = BELONGINGS.find((b) =>
      b.offers.some((o) => o.kind === 'wrench' && o.ends.every((e) => e.size === '9/16 in')),
    );
    const tools = { belongings: { inch: { is: inch?.id ?? '' } }, fittings: flange };
    const bolts = card(scene(tools), 'DR-03').needs.find((n) => /14 mm/.test(n.what) && n.kind === 'turn');
    expect(bolts?.best).toBeNull();
    expect(bolts?.doNot.join(' ')).toMatch(/Never: 9\/16 in on 14 mm/);
  });

  it('a steering joint is never pinned with wire, and other work is not told so', () => {
    const all = (id: string) =>
      card(built, id)
        .needs.flatMap((n) => n.doNot)
        .join(' ');
    expect(all('SS-08E')).toMatch(/wire or a nail in a steering joint/);
    expect(all('CO-01')).not.toMatch(/steering joint|brake pipe/);
  });

  it('without legs nobody knows how far help is, and nothing is guessed', () => {
    const garage = { ...built.garage, legs: {} };
    const got = jobCard({ ...built, garage }, SHIPPED_TRADE, {
      job: 'WT-01',
      carried: { kind: 'everything' },
      with: 'list',
    });
    expect(got.ok ? '' : got.error.id).toBe('help-unknown');
    expect(card({ ...built, garage }, 'WT-01', { helpKm: 12 }).help).toEqual({ km: 12, from: 'said' });
  });

  it('finds a job by id, by words, by an expedient of it; says in one sentence when it does not', () => {
    const refused = (job: string) => {
      const got = jobCard(built, SHIPPED_TRADE, { job, carried: { kind: 'everything' }, with: 'list' });
      return got.ok ? got.value.id : got.error.id;
    };
    expect(refused('wt-01')).toBe('WT-01');
    expect(refused('flat wheel for the spare')).toBe('WT-01');
    expect(refused('EL-02/twist')).toBe('EL-02');
    expect(refused('SS-04')).toBe('card-unclear');
    expect(refused('WT-01T')).toBe('card-not-here');
    expect(refused('flux capacitor')).toBe('card-unknown');
    expect(refused('')).toBe('card-unknown');
  });

  it('[M8] on every pattern, with a third or a seventh of the catalogue aboard, all cards agree with the checker', () => {
    let cards = 0;
    let now = 0;
    const EMPTY = garageFile.parse({ waymend: 1, name: 'test' });
    const names = { vehicle: 'V', person: 'P', trip: 'T', leg: 'L', nose: 'N' };
    for (const [n, pattern] of PATTERNS.entries()) {
      const { garage, vehicle } = startFromPattern(EMPTY, pattern, names);
      const owned = BELONGINGS.filter((_, k) => (k + n) % (n < 2 ? 3 : 7) === 0);
      const whole = garageFile.parse({
        ...garage,
        people: { p: { name: 'P', skill: 4 }, q: { name: 'Q', skill: 2 } },
        belongings: Object.fromEntries(owned.map((b, k) => [`b${k}`, { is: b.id }])),
        trips: { t: { name: 'T', vehicle, people: ['p', 'q'] } },
        legs: { l: { trip: 't', order: 1, km: 900, surface: 'gravel', helpKm: 120 } },
      });
      const made = buildScene(whole, 't', SHIPPED_TRADE);
      if (!made.ok) continue;
      for (const job of made.value.scene.jobs.filter((j) => !j.expedient)) {
        // It throws where the two readings of the model differ.
        const one = card(made.value, job.id);
        cards += 1;
        if (one.now) now += 1;
        expect(one.decision.courses).toHaveLength(4);
      }
    }
    expect(cards).toBeGreaterThan(300);
    expect(now).toBeGreaterThan(20);
    expect(now).toBeLessThan(cards);
  });

  it('is made well within a second', () => {
    const big = scene({
      belongings: Object.fromEntries(BELONGINGS.map((b, k) => [`b${k}`, { is: b.id }])),
    });
    const started = process.cpuUsage();
    card(big, 'SS-04@rear');
    expect(process.cpuUsage(started).user / 1000).toBeLessThan(1000);
  });
});
