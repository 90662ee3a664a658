import { grams, millilitres, wholeMillimetres } from '@waymend/core/quantity/units';
import { stow } from '@waymend/core/stowing/stow';
import type { StowBag, StowMark, StowPiece, StowProblem, Stowage } from '@waymend/core/stowing/stow-problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { bag, berth, piece, randomStowage, slots } from './random-stowage.ts';

const solver = await createHighsSolver();
const mm = wholeMillimetres;

const BERTHS = [
  berth('cab', 1300, { seat: true, atHand: true, z: mm(300) }),
  berth('bed', 2800),
  berth('shelf', 2800, { z: mm(600) }),
  berth('tail', 3900),
];

function problem(
  pieces: readonly StowPiece[],
  bags: readonly StowBag[],
  more: Partial<StowProblem> = {},
): StowProblem {
  return { pieces, bags, berths: BERTHS, rearAxle: mm(3080), loads: [], ...more };
}

const to = (id: string, at: string, more: Partial<StowBag> = {}): StowBag =>
  bag(id, 'box', { fixedIn: at, berth: at, millilitres: millilitres(10_000), ...more });
const marked = (id: string, ...marks: readonly StowMark[]): StowPiece => piece(id, { marks });
const sized = (length: number, width: number, thickness: number): StowPiece['size'] => ({
  length: mm(length),
  width: mm(width),
  thickness: mm(thickness),
});

function stowed(of: StowProblem) {
  const outcome = stow(of, solver);
  return {
    outcome,
    at: (id: string) => outcome.stowage.places.find((place) => place.piece === id),
    rules: outcome.broken.map(({ rule }) => rule),
    value: (level: string) => outcome.levels.find((l) => l.level === level)?.value,
  };
}

// Common practice of the trade, no source, where nothing else is said.
describe('what goes where', () => {
  it('[M14] a tool longer than its slot stands out by half the slot at most', () => {
    const roll = bag('roll', 'roll', { fixedIn: 'bed', pockets: slots('roll', [60], 200) });
    const lone = (length: number) => stowed(problem([piece('bar', { size: sized(length, 30, 15) })], [roll]));
    expect(lone(300).at('bar')).toMatchObject({ bag: 'roll', pocket: 'roll-1' });
    expect(lone(301).at('bar')).toMatchObject({ bag: null });
  });

  it('[M14] a slot takes half girths: 25 + 12 and 15 + 8 fill 60 mm, and one mm more does not go in', () => {
    const slot = (width: number) =>
      bag('roll', 'roll', { fixedIn: 'bed', pockets: slots('roll', [width], 200) });
    const pair = [piece('a', { size: sized(150, 25, 12) }), piece('b', { size: sized(140, 15, 8) })];
    expect(stowed(problem(pair, [slot(60)])).outcome.stowage.places.map((p) => p.pocket)).toEqual([
      'roll-1',
      'roll-1',
    ]);
    expect(
      stowed(problem(pair, [slot(59)])).outcome.stowage.places.filter((p) => p.pocket === null),
    ).toHaveLength(1);
  });

  it('[M14] a pouch takes no single thing over 2 kg, a box does', () => {
    const heavy = [piece('lump', { grams: grams(2_001) })];
    const pouch = bag('pouch', 'pouch', { fixedIn: 'bed' });
    expect(stowed(problem(heavy, [pouch])).at('lump')?.bag).toBeNull();
    expect(stowed(problem(heavy, [to('box', 'bed')])).at('lump')?.bag).toBe('box');
  });

  it('[M14] what is wanted at once goes where a hand is on it in seconds, and the rest not into its way', () => {
    const bags = [to('grab', 'cab', { firstGrab: true }), to('box', 'bed')];
    const { at, rules } = stowed(
      problem([piece('lamp', { firstGrab: true }), piece('saw', { uses: 90_000 })], bags),
    );
    expect(at('lamp')?.bag).toBe('grab');
    expect(at('saw')?.bag).toBe('box');
    expect(rules).toEqual([]);
  });

  it('[M14] liquids go into what holds spills, and apart from electrics', () => {
    const bags = [to('plain', 'bed'), to('tight', 'bed', { spillproof: true })];
    const { at, value } = stowed(problem([marked('oil', 'liquid'), marked('meter', 'electric')], bags));
    expect(at('oil')?.bag).toBe('tight');
    expect(at('meter')?.bag).toBe('plain');
    expect(value('danger')).toBe(0);
  });

  it('[M14] liquids and electrics put into one bag by hand stay, and are told as a danger', () => {
    const byHand = { kind: 'bag', bag: 'tight', pocket: null } as const;
    const pieces = [
      { ...marked('oil', 'liquid'), byHand },
      { ...marked('meter', 'electric'), byHand },
    ];
    const { rules } = stowed(problem(pieces, [to('tight', 'bed', { spillproof: true })]));
    expect(rules).toEqual(['wet-electrics']);
  });

  it('[M14] lithium cells keep away from aerosols, and both from the heat of a roof', () => {
    const roof = berth('roof', 1800, { roof: true, z: mm(1200) });
    const bags = [to('up', 'roof', { spillproof: true }), to('a', 'bed'), to('b', 'bed')];
    const pieces = [marked('pack', 'lithium', 'battery'), marked('can', 'aerosol', 'liquid')];
    const { at, value } = stowed(problem(pieces, bags, { berths: [...BERTHS, roof] }));
    expect(new Set([at('pack')?.bag, at('can')?.bag])).toEqual(new Set(['a', 'b']));
    expect(value('danger')).toBe(0);
  });

  it('[M14] a blade and a lead do not share a pocket, but may share a bag', () => {
    const pockets = slots('case', [200, 200], 200);
    const one = bag('case', 'roll', { fixedIn: 'bed', pockets });
    const { at, value } = stowed(problem([marked('knife', 'sharp'), marked('lead', 'electric')], [one]));
    expect(at('knife')?.bag).toBe('case');
    expect(at('lead')?.bag).toBe('case');
    expect(at('knife')?.pocket).not.toBe(at('lead')?.pocket);
    expect(value('danger')).toBe(0);
  });

  it('[M14] what belongs together lies in one bag, though first-fit parts it', () => {
    const bags = [
      to('a', 'bed', { millilitres: millilitres(300) }),
      to('b', 'bed', { millilitres: millilitres(500) }),
    ];
    const of = (id: string, ml: number, group?: string): StowPiece =>
      piece(id, {
        millilitres: millilitres(ml),
        size: sized(50, 40, 20),
        groups: group === undefined ? [] : [group],
      });
    const pieces = [of('x1', 240, 'x'), of('x2', 240, 'x'), of('y', 250)];
    const { at, outcome } = stowed(problem(pieces, bags));
    expect(at('x1')?.bag).toBe('b');
    expect(at('x2')?.bag).toBe('b');
    expect(at('y')?.bag).toBe('a');
    expect(outcome.status).toBe('proven');
  });

  it('[M14] no bag over 25 kg where another has room', () => {
    const pieces = [1, 2, 3].map((n) => piece(`iron${n}`, { grams: grams(9_000) }));
    const { rules } = stowed(problem(pieces, [to('a', 'bed'), to('b', 'bed')]));
    expect(rules).toEqual([]);
    const alone = stowed(
      problem(pieces, [to('a', 'bed')], { berths: [berth('bed', 2800, { room: grams(27_500) })] }),
    );
    expect(alone.rules.filter((rule) => rule === 'bag-too-heavy' || rule === 'loose').length).toBeGreaterThan(
      0,
    );
  });

  it('[M14] a bag that may ride anywhere goes low and ahead of the rear axle', () => {
    const free = bag('free', 'bag', { berth: 'shelf' });
    const { outcome } = stowed(problem([piece('iron', { grams: grams(9_000) })], [free]));
    expect(outcome.stowage.bags).toEqual([{ bag: 'free', berth: 'bed' }]);
  });

  it('[M14] reach goes before height, however heavy a thing is', () => {
    const bags = [to('near', 'cab'), to('low', 'bed')];
    const { at } = stowed(problem([piece('iron', { grams: grams(20_000), uses: 1 })], bags));
    expect(at('iron')?.bag).toBe('near');
  });
});

describe('limits', () => {
  it('[M14] a berth carries what is left of its limit and no more; the rest finds no place', () => {
    const berths = [berth('bed', 2800, { room: grams(1_000) })];
    const pieces = [piece('a', { grams: grams(600) }), piece('b', { grams: grams(600) })];
    const { value, outcome } = stowed(problem(pieces, [], { berths }));
    expect(value('unplaced')).toBe(1);
    expect(outcome.stowage.places.filter((place) => place.berth === null)).toHaveLength(1);
  });

  it('[M14] the mass of a bag counts in its berth', () => {
    const berths = [berth('bed', 2800, { room: grams(1_000) })];
    const one = (own: number) => {
      const box = bag('box', 'box', { grams: grams(own), fixedIn: 'bed' });
      return stowed(problem([piece('a', { grams: grams(600) })], [box], { berths }));
    };
    expect(one(400).at('a')?.bag).toBe('box');
    expect(one(401).at('a')?.bag).toBeNull();
  });

  it('[M14] an axle over its rating is a danger, and a bag is set down where it is not', () => {
    const loads = [{ id: 'rear', grams: 5_000, factor: { bed: 0.9, tail: 1.3, shelf: 0.9 } }];
    const { outcome, rules } = stowed(
      problem([piece('iron', { grams: grams(4_500) })], [bag('free', 'bag', { berth: 'tail' })], { loads }),
    );
    expect(outcome.stowage.bags).toEqual([{ bag: 'free', berth: 'bed' }]);
    expect(rules).toEqual([]);
  });

  it("[M14] the berth of the spare wheel is kept where it is the wheel's own", () => {
    const wheel = (wheelOnly: boolean): StowProblem =>
      problem(
        [
          piece('wheel', { wheel: true, byHand: { kind: 'berth', berth: 'tail' } }),
          piece('iron', { uses: 50_000 }),
        ],
        [],
        { berths: [berth('tail', 2000, { atHand: true, wheelOnly }), berth('bed', 2800)] },
      );
    expect(stowed(wheel(true)).at('iron')?.berth).toBe('bed');
    expect(stowed(wheel(false)).at('iron')?.berth).toBe('tail');
    expect(stowed(wheel(true)).at('wheel')?.berth).toBe('tail');
  });
});

describe('what was put by hand', () => {
  it('[M14] stays where it is too long for its pocket, and that is told', () => {
    const roll = bag('roll', 'roll', { fixedIn: 'bed', pockets: slots('roll', [60, 60], 100) });
    const bar = piece('bar', {
      size: sized(400, 30, 15),
      byHand: { kind: 'bag', bag: 'roll', pocket: 'roll-2' },
    });
    const { at, outcome } = stowed(problem([bar, piece('other', { size: sized(90, 20, 10) })], [roll]));
    expect(at('bar')).toMatchObject({ bag: 'roll', pocket: 'roll-2' });
    expect(outcome.broken).toContainEqual(
      expect.objectContaining({ rule: 'does-not-fit', pieces: ['bar'], byHand: true }),
    );
  });

  it('[M14] overfills its bag, and nothing more goes in', () => {
    const box = to('box', 'bed', { limit: grams(1_000) });
    const hand = { kind: 'bag', bag: 'box', pocket: null } as const;
    const pieces = [
      piece('a', { grams: grams(900), byHand: hand }),
      piece('b', { grams: grams(900), byHand: hand }),
      piece('c', { grams: grams(10) }),
    ];
    const { at, rules } = stowed(problem(pieces, [box]));
    expect(at('a')?.bag).toBe('box');
    expect(at('b')?.bag).toBe('box');
    expect(at('c')?.bag).toBeNull();
    expect(rules).toContain('bag-over-limit');
  });
});

describe('what lies somewhere now', () => {
  const lies = (id: string, at: string, more: Partial<StowPiece> = {}): StowPiece =>
    piece(id, { now: { bag: at, pocket: null }, ...more });
  const pair = [to('a', 'bed'), to('b', 'bed')];

  it('[M14] stays where nothing is lost by it, whichever bag that is', () => {
    for (const bags of [pair, [...pair].reverse()]) {
      const { at, value, outcome } = stowed(problem([lies('x', 'b'), lies('y', 'a')], bags));
      expect([at('x')?.bag, at('y')?.bag]).toEqual(['b', 'a']);
      expect(value('moved')).toBe(0);
      expect(outcome.status).toBe('proven');
    }
  });

  it('[M14] moves where a rule or a second is won, and that counts', () => {
    const bags = [to('near', 'cab'), to('far', 'bed')];
    const { at, value } = stowed(problem([lies('x', 'far', { uses: 1 }), lies('y', 'far')], bags));
    expect(at('x')?.bag).toBe('near');
    expect(value('moved')).toBe(1);
    expect(at('y')?.bag).toBe('far');
  });

  it('[M14] goes where it fits when its pocket has become too small, and breaks no limit', () => {
    const roll = bag('roll', 'roll', { fixedIn: 'bed', pockets: slots('roll', [40, 60], 200) });
    const thick = piece('thick', {
      size: sized(100, 30, 20),
      now: { bag: 'roll', pocket: 'roll-1' },
    });
    const { at, outcome } = stowed(problem([thick], [roll]));
    expect(at('thick')).toMatchObject({ bag: 'roll', pocket: 'roll-2' });
    expect(outcome.broken).toEqual([]);
  });

  it.each([2, 4, 6])('[M14] case %d: an answer that is written back is the answer again', (n) => {
    const fresh = randomStowage(n, 40);
    const once = stow(fresh, solver);
    const again = stow(writtenBack(fresh, once.stowage), solver);
    expect(again.stowage).toEqual(once.stowage);
    expect(again.levels.find(({ level }) => level === 'moved')?.value).toBe(0);
  });
});

/** The record after somebody has stowed as told: what is in a bag lies there now, and the bags stand where they were set down. */
function writtenBack(of: StowProblem, { places, bags }: Stowage): StowProblem {
  return {
    ...of,
    pieces: of.pieces.map((one) => {
      const place = places.find((p) => p.piece === one.id);
      return place === undefined || place.bag === null
        ? one
        : { ...one, now: { bag: place.bag, pocket: place.pocket } };
    }),
    bags: of.bags.map((one) => ({
      ...one,
      berth: bags.find((at) => at.bag === one.id)?.berth ?? one.berth,
    })),
  };
}

describe('stopping', () => {
  it('[M14] a search stopped at once still gives a stowage, no worse than first-fit, with honest bounds', () => {
    const pieces = Array.from({ length: 30 }, (_, n) => piece(`p${n}`, { uses: n * 100 }));
    const outcome = stow(
      problem(pieces, [to('a', 'cab', { millilitres: millilitres(950) }), to('b', 'shelf')]),
      solver,
      {
        shouldStop: () => true,
      },
    );
    expect(outcome.stoppedBy).toBe('cancel');
    expect(outcome.stowage.places).toHaveLength(30);
    for (const { value, bound } of outcome.levels) expect(bound).toBeLessThanOrEqual(value);
  });

  it('[M14] nothing to stow is proven at once', () => {
    const { outcome } = stowed(problem([], [to('a', 'bed')]));
    expect(outcome).toMatchObject({ status: 'proven', broken: [], stowage: { places: [], bags: [] } });
  });
});
