import type { Garage } from '@waymend/garage/record/schema';
import { garageFile } from '@waymend/garage/record/schema';
import type { Question } from '@waymend/planner/plan/plan-trip';
import fc from 'fast-check';
import { TINY_PRICES, TINY_TRADE } from './tiny-trade.ts';

/** What one job takes, and what else might do; a garage gets most of a few of these and some odds and ends. */
const HEAPS: readonly { readonly takes: readonly string[]; readonly or: readonly string[] }[] = [
  {
    takes: ['socket-19', 'bar-1/2', 'jack', 'chocks'],
    or: ['socket-3/4', 'bar-short', 'tube', 'brace', 'board', 'rubber', 'cord'],
  },
  { takes: ['plugs', 'compressor'], or: ['plugs', 'strings', 'foot-pump'] },
  { takes: ['flare-10', 'goggles', 'pipe', 'plugs'], or: ['sunglasses', 'strings'] },
  {
    takes: ['wrench-17', 'socket-17', 'ratchet-3/8', 'stand'],
    or: ['open-17', 'bar-1/2', 'adapter', 'hammer', 'locking', 'parallel'],
  },
  { takes: ['cord', 'cord'], or: ['straps', 'locking'] },
  { takes: ['wrench-13', 'belt-spare'], or: ['socket-13', 'ratchet-3/8', 'adjustable', 'belt-spare'] },
  { takes: ['tape', 'water-1', 'water-2'], or: ['clamps', 'water-1', 'cord', 'rubber'] },
  { takes: ['key-6', 'rubber'], or: ['bits', 'ratchet-3/8', 'foam', 'tape', 'lamp'] },
];
const ANY = TINY_TRADE.belongings.map((b) => b.id);

/** An option of `of` more often than not as it is, else one of the others. */
function mostly<T>(usual: T, ...others: readonly T[]): fc.Arbitrary<T> {
  return fc.oneof(
    { weight: 6, arbitrary: fc.constant(usual) },
    { weight: 2, arbitrary: fc.constantFrom(...others) },
  );
}

const thing = fc.record({
  copies: mostly(1, 2),
  state: mostly('ready' as const, 'flat' as const, 'unproven' as const, 'lent' as const),
  pin: fc.oneof(
    { weight: 14, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.constantFrom('always' as const, 'never' as const) },
  ),
  price: mostly(undefined, 3, 8, 15),
  grams: mostly(undefined, 40, 200, 1200),
  berth: mostly(undefined, 'box', 'tail', 'roof'),
  boxed: fc.boolean(),
});

const heap = fc
  .constantFrom(...HEAPS)
  .chain(({ takes, or }) =>
    fc.tuple(
      fc.shuffledSubarray([...takes], { minLength: takes.length - 1 }),
      fc.shuffledSubarray([...or], { maxLength: 2 }),
    ),
  )
  .map(([most, more]) => [...most, ...more]);

/** What is in the garage: at most so many pieces. */
function belongings(most: number, heaps: number) {
  return fc
    .record({
      ids: fc
        .tuple(
          fc.array(heap, { minLength: 1, maxLength: heaps }),
          fc.array(fc.constantFrom(...ANY), { maxLength: 2 }),
        )
        .map(([some, odd]) => [...some.flat(), ...odd]),
      things: fc.array(thing, { minLength: most, maxLength: most }),
      box: fc.constantFrom(undefined, undefined, 'whole' as const, 'loose' as const),
      boxPrice: fc.constantFrom(undefined, undefined, 9, 14),
      caseGrams: fc.constantFrom(0, 200, 1000),
    })
    .map(({ ids, things, box, boxPrice, caseGrams }) => {
      const out: Record<string, object> = {};
      let pieces = 0;
      if (box !== undefined) {
        out['the-box'] = {
          name: 'the box',
          set: { carry: box, caseGrams },
          bulkMl: caseGrams,
          ...(boxPrice === undefined ? {} : { forSale: true, price: boxPrice }),
        };
      }
      ids.forEach((is, n) => {
        const draw = things[n];
        if (draw === undefined || pieces + draw.copies > most) return;
        pieces += draw.copies;
        const { copies, state, pin, price, grams, berth, boxed } = draw;
        out[`w${n}`] = {
          is,
          copies,
          state,
          ...(pin === undefined ? {} : { pin }),
          ...(price === undefined ? {} : { forSale: true, price }),
          ...(grams === undefined ? {} : { grams }),
          ...(berth === undefined ? {} : { berth }),
          ...(box !== undefined && boxed ? { inside: 'the-box' } : {}),
        };
      });
      return out;
    });
}

const fittings = fc
  .record({
    nut: mostly('19 mm', '3/4 in', '17 mm', '21 mm'),
    shock: mostly('17 mm', '16 mm', '11/16 in'),
    shockTorque: fc.constantFrom(30, 60, 70, 130),
    shockAccess: fc.constantFrom('open', 'tight', 'deep', 'side'),
    hold: fc.constantFrom(true, true, false, { size: '13 mm' }, { drive: 'hex-key', size: '6 mm' }),
    twoEnds: fc.boolean(),
    belt: mostly('13 mm', '1/2 in', '17 mm'),
    beltAccess: mostly('side', 'open', 'tight', 'recess'),
    key: mostly('6 mm', '5 mm', '8 mm'),
  })
  .map(({ nut, shock, shockTorque, shockAccess, hold, twoEnds, belt, beltAccess, key }) => ({
    nut: { vehicle: 'v', place: 'wheel-nut', size: nut },
    front: {
      vehicle: 'v',
      place: 'shock-lower',
      ...(twoEnds ? { position: 'front' } : {}),
      size: shock,
      torqueNm: shockTorque,
      access: shockAccess,
      counterHold: hold,
    },
    ...(twoEnds ? { rear: { vehicle: 'v', place: 'shock-lower', position: 'rear', size: '13 mm' } } : {}),
    belt: { vehicle: 'v', place: 'alternator-bolt', size: belt, access: beltAccess },
    key: { vehicle: 'v', place: 'rack-mount-key', size: key },
  }));

const people = fc
  .array(
    fc.record({
      skill: mostly(3, 1, 2, 4),
      massKg: fc.constantFrom(60, 80, 100),
      practised: fc.subarray(
        TINY_TRADE.jobs.map((j) => j.id),
        { maxLength: 2 },
      ),
    }),
    { minLength: 1, maxLength: 2 },
  )
  .map((list) =>
    Object.fromEntries(list.map((p, n) => [`p${n}`, { name: `p${n}`, berth: 'seat', ...p }] as const)),
  );

const legs = fc
  .array(
    fc.record({
      km: fc.integer({ min: 100, max: 1500 }),
      surface: fc.constantFrom('sealed', 'gravel', 'corrugated', 'rock', 'sand'),
      helpKm: fc.constantFrom(0, 0.5, 40, 250, 600),
    }),
    { minLength: 1, maxLength: 2 },
  )
  .map((list) =>
    Object.fromEntries(list.map((l, order) => [`l${order}`, { trip: 't', order, ...l }] as const)),
  );

/**
 * Berths a quarter of the wheelbase apart and masses in multiples of 4 g: what a piece puts on an axle is a whole number of
 * grams, so that sums of loads are exact however they are rounded.
 */
const vehicle = fc
  .record({
    front: mostly(500, 1, 4),
    rear: mostly(500, 2, 6),
    gross: mostly(1000, 3, 8),
    roof: mostly(undefined, 0, 2),
    box: mostly(undefined, 1, 3),
    tail: mostly(undefined, 1, 2),
    rusty: fc.boolean(),
  })
  .map((room) => ({ room }));

/** A small garage with one vehicle `v` and one trip `t`, as the reader would give it. */
export function randomGarage(mostPieces: number, mostHeaps: number): fc.Arbitrary<Garage> {
  return fc
    .record({ belongings: belongings(mostPieces, mostHeaps), fittings, people, legs, vehicle })
    .map(({ belongings: owned, fittings: fits, people: crew, legs: route, vehicle: { room } }) => {
      const aboard = Object.values(crew).reduce((sum, p) => sum + p.massKg, 0);
      return garageFile.parse({
        waymend: 1,
        name: 'random',
        vehicles: {
          v: {
            name: 'v',
            wheelbaseMm: 4000,
            emptyFrontKg: 1000,
            emptyRearKg: 1000,
            ratedFrontKg: 1000 + aboard / 2 + room.front,
            ratedRearKg: 1000 + aboard / 2 + room.rear,
            ratedGrossKg: 2000 + aboard + room.gross,
            ...(room.roof === undefined ? {} : { ratedRoofKg: room.roof }),
            rusty: room.rusty,
          },
        },
        fittings: fits,
        berths: {
          seat: { vehicle: 'v', name: 'seat', xMm: 2000 },
          box: {
            vehicle: 'v',
            name: 'box',
            xMm: 3000,
            ...(room.box === undefined ? {} : { limitKg: room.box }),
          },
          tail: {
            vehicle: 'v',
            name: 'tail',
            xMm: 5000,
            ...(room.tail === undefined ? {} : { limitKg: room.tail }),
          },
          roof: { vehicle: 'v', name: 'roof', xMm: 1000, roof: true },
        },
        people: crew,
        belongings: owned,
        trips: { t: { name: 't', vehicle: 'v', people: Object.keys(crew), kitBerth: 'box' } },
        legs: route,
      });
    });
}

const aim: fc.Arbitrary<Question['aim']> = fc.oneof(
  { weight: 4, arbitrary: fc.constant({ kind: 'best-chance' } as const) },
  {
    weight: 3,
    arbitrary: fc
      .integer({ min: 600, max: 995 })
      .map((permille) => ({ kind: 'least-mass', chance: permille / 1000 }) as const),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'must-do' } as const) },
);

/** A question about trip `t`: an aim and limits, tight and loose. */
export const randomQuestion: fc.Arbitrary<Question> = fc.record({
  aim,
  limitGrams: fc.oneof(
    fc.constant(null),
    fc.integer({ min: 0, max: 80 }).map((n) => n * 100),
  ),
  limitMl: mostly(null, 400, 2000, 5000),
  budgetCents: fc.constantFrom(0, 0, 300, ...TINY_PRICES, 1400, 2500),
  mustDo: fc.oneof(
    { weight: 5, arbitrary: fc.constant<string[]>([]) },
    {
      weight: 1,
      arbitrary: fc.subarray(
        TINY_TRADE.jobs.map((j) => j.id),
        { maxLength: 2 },
      ),
    },
  ),
});
