import { describe, expect, it } from 'vitest';
import { printed } from '../src/shape/define-table.ts';
import type { PatternFitting } from '../src/shape/pattern.ts';
import { PLACE_IDS } from '../src/shape/place-ids.ts';
import { FEATURES } from '../src/shape/words.ts';
import { patternOf, PATTERNS } from '../src/patterns/all.ts';
import { BRAKE_TUBE_NUTS } from '../src/standards/brake-tube-nuts.ts';
import { CROSS_HEADS } from '../src/standards/cross-heads.ts';
import { FLANGE_NUTS_ISO4161 } from '../src/standards/flange-nuts-iso4161.ts';
import { FLANGE_SCREWS_EN1662 } from '../src/standards/flange-screws-en1662.ts';
import { HEX_HEADS_DIN } from '../src/standards/hex-heads-din.ts';
import { HEX_HEADS_ISO } from '../src/standards/hex-heads-iso.ts';
import { HEX_HEADS_JIS_SMALL } from '../src/standards/hex-heads-jis-small.ts';
import { LOBES } from '../src/standards/lobes.ts';
import { LOBES_EXTERNAL } from '../src/standards/lobes-external.ts';
import { loadOfIndex } from '../src/standards/lookup.ts';
import { SLOT_BLADES } from '../src/standards/slot-blades.ts';
import { SOCKET_CAPS_ISO4762 } from '../src/standards/socket-caps-iso4762.ts';
import { LOW_HEADS_DIN7984 } from '../src/standards/low-heads-din7984.ts';
import { SQUARE_DRIVES } from '../src/standards/square-drives.ts';

const HEXES = new Set(
  [HEX_HEADS_ISO, HEX_HEADS_DIN, HEX_HEADS_JIS_SMALL, FLANGE_SCREWS_EN1662, FLANGE_NUTS_ISO4161].flatMap(
    (table) => table.rows.map((row) => `${row.size} mm`),
  ),
);
const KEYS = new Set(
  [SOCKET_CAPS_ISO4762, LOW_HEADS_DIN7984].flatMap((table) => table.rows.map((row) => `${row.size} mm`)),
);
const FLARES = new Set(BRAKE_TUBE_NUTS.rows.flatMap((row) => row.wrench.split(' or ')));

/** Whether some table of standards has this size for this drive. */
function onATable(drive: PatternFitting['drive'], size: string): boolean {
  switch (drive) {
    case 'hex':
    case 'locknut-hex':
      return HEXES.has(size);
    case 'hex-key':
      return KEYS.has(size);
    // Unions of hoses and pipes other than brake tube take the widths of ordinary hexagons.
    case 'flare':
      return FLARES.has(size) || HEXES.has(size);
    case 'lobe':
      return LOBES.rows.some((row) => row.size === size);
    case 'lobe-external':
      return LOBES_EXTERNAL.rows.some((row) => row.size === size);
    case 'cross':
      return CROSS_HEADS.rows.some((row) => size === `cross ${row.number}`);
    case 'slot':
      return SLOT_BLADES.rows.some((row) => size === `slot ${row.width} mm`);
    case 'square':
      return SQUARE_DRIVES.rows.some((row) => size === `${row.drive} in`);
    case 'spline':
    case 'locknut-peg':
    case undefined:
      return false;
  }
}

describe.each(PATTERNS.map((pattern) => [pattern.id, pattern] as const))('%s', (id, pattern) => {
  it('knows its places and features, each once', () => {
    const places: readonly string[] = PLACE_IDS;
    const features: readonly string[] = FEATURES;
    for (const fitting of pattern.fittings) expect(places).toContain(fitting.place);
    for (const feature of pattern.features) expect(features).toContain(feature);
    expect(new Set(pattern.features).size).toBe(pattern.features.length);
    const spots = pattern.fittings.map((f) => `${f.place}@${f.position ?? ''}`);
    expect(new Set(spots).size).toBe(spots.length);
    expect(patternOf(id)).toBe(pattern);
  });

  it('a place stands either in positions or once for all', () => {
    const once = pattern.fittings.filter((fitting) => fitting.position === undefined);
    const twice = once.filter(
      (fitting) => pattern.fittings.filter((other) => other.place === fitting.place).length > 1,
    );
    expect(twice).toEqual([]);
  });

  it('has enough fittings to start from', () => {
    expect(pattern.fittings.length).toBeGreaterThanOrEqual(pattern.kind === 'trailer' ? 15 : 40);
    expect(pattern.fittings.length).toBeLessThanOrEqual(75);
  });

  it('every size is on a table of standards, or says that it is on none', () => {
    for (const fitting of pattern.fittings) {
      const known = onATable(fitting.drive, fitting.size);
      expect(known, `${fitting.place} ${fitting.size}`).toBe(fitting.offStandard === undefined);
      const hold = fitting.counterHold;
      if (typeof hold === 'object')
        expect(onATable(hold.drive ?? fitting.drive, hold.size), fitting.place).toBe(true);
    }
  });

  it('torques and access are within reason', () => {
    for (const fitting of pattern.fittings) {
      expect(fitting.torqueNm, fitting.place).toBeGreaterThanOrEqual(2);
      // The crank pulley and the hub are the tightest things on a vehicle (common practice, no source).
      const most = ['crank-pulley-bolt', 'wheel-nut', 'hub-nut', 'towball-nut'].includes(fitting.place)
        ? 400
        : 300;
      expect(fitting.torqueNm, fitting.place).toBeLessThanOrEqual(most);
    }
    const brakes = pattern.fittings.filter((fitting) => fitting.place === 'brake-union');
    for (const union of brakes) expect(union.drive).toBe('flare');
  });

  it('[M13] masses are coherent', () => {
    const empty = pattern.emptyFrontKg + pattern.emptyRearKg;
    expect(pattern.ratedFrontKg).toBeGreaterThan(pattern.emptyFrontKg);
    expect(pattern.ratedRearKg).toBeGreaterThan(pattern.emptyRearKg);
    expect(pattern.ratedGrossKg).toBeGreaterThan(empty);
    expect(pattern.ratedGrossKg).toBeLessThanOrEqual(pattern.ratedFrontKg + pattern.ratedRearKg);
    // Payload between a fifth and nine tenths of the empty mass (common practice, no source).
    const payload = (pattern.ratedGrossKg - empty) / empty;
    expect(payload).toBeGreaterThan(0.2);
    expect(payload).toBeLessThan(0.9);
  });

  it('[M13] two tyres bear each axle', () => {
    const each = (loadOfIndex(pattern.tyre.loadIndex) ?? 0) / (pattern.tyre.passenger === true ? 1.1 : 1);
    expect(2 * each).toBeGreaterThanOrEqual(pattern.ratedRearKg);
    if (pattern.kind === 'vehicle') expect(2 * each).toBeGreaterThanOrEqual(pattern.ratedFrontKg);
  });

  it('[M13] berths lie in the vehicle and bear something', () => {
    expect(new Set(pattern.berths.map((berth) => berth.id)).size).toBe(pattern.berths.length);
    for (const berth of pattern.berths) {
      expect(berth.xMm, berth.id).toBeGreaterThan(-1000);
      expect(berth.xMm, berth.id).toBeLessThan(pattern.wheelbaseMm + 1500);
      expect(berth.limitKg, berth.id).toBeGreaterThanOrEqual(20);
    }
    const roofs = pattern.berths.filter((berth) => berth.roof === true);
    expect(roofs).toHaveLength(1);
    for (const roof of roofs) expect(roof.limitKg).toBeLessThanOrEqual(pattern.ratedRoofKg);
    if (pattern.kind === 'vehicle') expect(pattern.berths.map((b) => b.id)).toContain('front-seats');
  });
});

describe('patterns together', () => {
  it('are six, five vehicles and a trailer', () => {
    const kinds = PATTERNS.map((pattern) => pattern.kind);
    expect(kinds.filter((kind) => kind === 'vehicle')).toHaveLength(5);
    expect(kinds.filter((kind) => kind === 'trailer')).toHaveLength(1);
    expect(patternOf('no-such-kind')).toBeNull();
  });

  // Common practice, no source: 35 mm on one hand of the market, 39 mm on the other.
  it('independent-front pickups are assumed to have 35 mm hub nuts', () => {
    const hub = patternOf('frame-pickup-independent-front')?.fittings.find((f) => f.place === 'hub-nut');
    expect(hub?.size).toBe('35 mm');
    expect(hub?.offStandard).toContain('39 mm');
  });

  it('external lobes are named by tables even where no width was read', () => {
    const e18 = LOBES_EXTERNAL.rows.find((row) => row.size === 'E18');
    if (e18 === undefined) throw new Error('no E18');
    expect(printed(e18, 'across')).toBeNull();
  });
});
