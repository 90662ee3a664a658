import { describe, expect, it } from 'vitest';
import { printed, si, statusOf } from '../src/shape/define-table.ts';
import { toSi } from '../src/shape/table-units.ts';
import { AMPACITY } from '../src/standards/ampacity.ts';
import { AMPACITY_HEAT } from '../src/standards/ampacity-heat.ts';
import { AWG } from '../src/standards/awg.ts';
import { AWG_SAE } from '../src/standards/awg-sae.ts';
import { BRAKE_TUBE_NUTS } from '../src/standards/brake-tube-nuts.ts';
import { CLAMPS_SAE } from '../src/standards/clamps-sae.ts';
import { FAILURE_COUNTS } from '../src/standards/failure-counts.ts';
import { FAILURE_DISTANCES } from '../src/standards/failure-distances.ts';
import { FUSES_BLADE } from '../src/standards/fuses-blade.ts';
import { FUSES_MAXI } from '../src/standards/fuses-maxi.ts';
import { LOAD_PLACARD } from '../src/standards/load-placard.ts';
import { loadOfIndex } from '../src/standards/lookup.ts';
import { SHELF_LIFE } from '../src/standards/shelf-life.ts';
import { TYRE_RULES } from '../src/standards/tyre-rules.ts';
import { TYRE_SPEED_SYMBOLS } from '../src/standards/tyre-speed-symbols.ts';
import { WIRE_METRIC } from '../src/standards/wire-metric.ts';

describe('tyres and load', () => {
  // ISO 4000-1 and a tyre dealer's list.
  it.each([
    [60, 250],
    [70, 335],
    [80, 450],
    [91, 615],
    [100, 800],
    [108, 1000],
    [112, 1120],
    [115, 1215],
    [121, 1450],
    [126, 1700],
  ])('[M13] load index %i carries %i kg', (index, kg) => {
    expect(loadOfIndex(index)).toBe(kg);
  });

  it('[M13] ten times the load every 80 steps, within 2.5 %', () => {
    let pairs = 0;
    for (let low = 30; low <= 70; low += 1) {
      const [a, b] = [loadOfIndex(low), loadOfIndex(low + 80)];
      if (a === null || b === null) throw new Error(`${low} or ${low + 80} is not listed`);
      expect(Math.abs(b / a / 10 - 1), String(low)).toBeLessThan(0.025);
      pairs += 1;
    }
    expect(pairs).toBe(41);
    expect(loadOfIndex(29)).toBeNull();
    expect(loadOfIndex(100.5)).toBeNull();
  });

  // NHTSA interpretation nht76-1.47 of FMVSS 120 S5.1.2.
  it('[M13] a passenger tyre on a truck counts for its rating over 1.10', () => {
    const rule = TYRE_RULES.rows.find((row) => row.rule.startsWith('passenger tyre'));
    expect(Math.round((loadOfIndex(100) ?? 0) / (rule?.factor ?? 0))).toBe(727);
  });

  // NHTSA text as restated in a vehicle manual: 1500 lb less 750 lb of people leaves 750 lb.
  it('[M13] placard: together less occupants is cargo', () => {
    const row = LOAD_PLACARD.rows[0];
    if (row === undefined) throw new Error('no example');
    expect([row.total, row.occupants, row.cargo]).toEqual([1500, 750, 1500 - 750]);
    expect(si(LOAD_PLACARD, row, 'cargo')).toBeCloseTo(340.2, 1);
  });

  // Tyre dealers' lists of speed symbols.
  it('speed symbols: Q 160, H 210 after U 200; the slow ones are only recalled', () => {
    const row = (symbol: string) => {
      const found = TYRE_SPEED_SYMBOLS.rows.find((r) => r.symbol === symbol);
      if (found === undefined) throw new Error(`no ${symbol}`);
      return found;
    };
    expect(['J', 'Q', 'S', 'U', 'H', 'V'].map((s) => row(s).speed)).toEqual([100, 160, 180, 200, 210, 240]);
    expect(statusOf(TYRE_SPEED_SYMBOLS, row('B'), 'speed')).toBe('recalled');
    expect(statusOf(TYRE_SPEED_SYMBOLS, row('H'), 'speed')).toBe('verified');
  });
});

describe('wire', () => {
  // ASTM B258 as in GNU units: diameters are in geometric progression, 0000 is 0.46 in and 36 is 0.005 in.
  it('gauges follow from the two defining diameters', () => {
    const step = (0.46 / 0.005) ** (1 / 39);
    for (const row of AWG.rows) {
      const diameter = toSi(0.46, 'in') / step ** (row.number + 3);
      expect(si(AWG, row, 'diameter')).toBeCloseTo(diameter, 7);
      const area = (Math.PI / 4) * (diameter * 1000) ** 2;
      // Three decimals are printed.
      expect(Math.abs(row.area - area)).toBeLessThan(0.0006);
      expect(Math.abs(row.resistance - 17.241 / area)).toBeLessThan(0.0011);
    }
  });

  // A marine wiring example: 12 V, 15 A, 6 m run, so 12 m of wire.
  it.each([
    ['14', 1.49, 12.4],
    ['10', 0.59, 4.9],
    ['8', 0.37, 3.1],
  ])('15 A over a 6 m run in gauge %s drops %f V, %f %% of 12 V', (awg, volts, share) => {
    const row = AWG.rows.find((gauge) => gauge.awg === awg);
    if (row === undefined) throw new Error(`no gauge ${awg}`);
    const drop = (si(AWG, row, 'resistance') ?? Number.NaN) * 12 * 15;
    expect(drop).toBeCloseTo(volts, 2);
    expect((drop / 12) * 100).toBeCloseTo(share, 1);
  });

  // 33 CFR 183.425 Table 5: more copper or better insulation never carries less.
  it('ampacity never falls with thicker wire or better insulation', () => {
    const columns = ['c60', 'c75', 'c80', 'c90', 'c105', 'c125', 'c200'] as const;
    AMPACITY.rows.forEach((row, i) => {
      columns.forEach((column, j) => {
        const [above, left] = [AMPACITY.rows[i - 1], columns[j - 1]];
        if (above !== undefined) expect(row[column], `${row.awg} ${column}`).toBeGreaterThan(above[column]);
        if (left !== undefined) expect(row[column], `${row.awg} ${column}`).toBeGreaterThanOrEqual(row[left]);
      });
    });
    const ten = AMPACITY.rows.find((row) => row.awg === '10');
    expect(columns.map((column) => ten?.[column])).toEqual([40, 40, 50, 55, 60, 70, 70]);
  });

  it('only the 105 degC engine space factor was read; it turns 160 A into 136 A on gauge 4', () => {
    const read = AMPACITY_HEAT.rows.filter((row) => statusOf(AMPACITY_HEAT, row, 'factor') === 'verified');
    expect(read.map((row) => row.insulation)).toEqual([105]);
    const four = AMPACITY.rows.find((row) => row.awg === '4');
    expect((four?.c105 ?? 0) * (read[0]?.factor ?? 0)).toBeCloseTo(136, 9);
  });

  // A marine cable maker's catalogue, page 70.
  it('SAE-marked cable is 5 to 12 % thinner than the gauge of its name', () => {
    expect(AWG_SAE.rows.length).toBeGreaterThan(8);
    for (const row of AWG_SAE.rows) {
      const full = AWG.rows.find((gauge) => gauge.awg === row.awg)?.area ?? Number.NaN;
      expect(row.area / full).toBeGreaterThan(0.88);
      expect(row.area / full).toBeLessThan(0.98);
    }
  });

  it('metric cable: resistance falls as area grows, and is recalled', () => {
    const row = WIRE_METRIC.rows.find((wire) => wire.area === 2.5);
    expect((row?.resistance ?? 0) * 2.5).toBeCloseTo(19, 6);
    expect(WIRE_METRIC.status).toBe('recalled');
  });
});

describe('fuses, clamps, tube nuts', () => {
  // Three independent lists of blade fuse colours.
  it.each([
    [5, 'tan'],
    [7.5, 'brown'],
    [10, 'red'],
    [15, 'blue'],
    [20, 'yellow'],
    [30, 'green'],
  ])('a %f A blade fuse is %s', (rating, colour) => {
    expect(FUSES_BLADE.rows.find((row) => row.rating === rating)?.colour).toBe(colour);
  });

  it('red is 10 A on a small blade and 50 A on a large one', () => {
    expect(FUSES_BLADE.rows.find((row) => row.colour === 'red')?.rating).toBe(10);
    expect(FUSES_MAXI.rows.find((row) => row.colour === 'red')?.rating).toBe(50);
    const recalled = FUSES_MAXI.rows.filter((row) => statusOf(FUSES_MAXI, row, 'colour') === 'recalled');
    expect(recalled.map((row) => row.rating)).toEqual([25, 35, 70, 80, 100]);
  });

  // A brake line supplier: M10x1 starts in 3/8-24 and strips it.
  it('M10x1 and 3/8-24 nuts forbid each other', () => {
    const nut = (name: string) => BRAKE_TUBE_NUTS.rows.find((row) => row.nut === name);
    expect(nut('M10x1')?.never).toBe('3/8-24');
    expect(nut('3/8-24')?.never).toBe('M10x1');
  });

  // Recalled, not re-read: SAE J1508 size n closes on n/16 in plus 7/16 in, about.
  it('clamp sizes: the greatest diameter of size n is (n + 8)/16 in, within 2 mm', () => {
    const sizes = CLAMPS_SAE.rows.filter((row) => row.size >= 12);
    expect(sizes.length).toBeGreaterThan(6);
    for (const row of sizes) expect(Math.abs(row.to - ((row.size + 8) / 16) * 25.4)).toBeLessThan(2);
  });
});

describe('keeping and failing', () => {
  it('shelf life: primary cells were read, adhesives are recalled', () => {
    const alkaline = SHELF_LIFE.rows.find((row) => row.thing === 'alkaline cells');
    const epoxy = SHELF_LIFE.rows.find((row) => row.thing === 'two-part epoxy');
    if (alkaline === undefined || epoxy === undefined) throw new Error('rows are gone');
    expect(printed(alkaline, 'high')).toBe(60);
    expect(statusOf(SHELF_LIFE, alkaline, 'high')).toBe('verified');
    expect(statusOf(SHELF_LIFE, epoxy, 'high')).toBe('recalled');
    expect(si(SHELF_LIFE, alkaline, 'high')).toBeCloseTo(5 * 365.2425 * 86400, 3);
  });

  // 90,852 breakdowns of which 54,787 unknown, other or not recorded: tyres are 47 % of the 36,065 with a known cause.
  it('tyres are 47 % of moving breakdowns with a known cause', () => {
    const tyres = FAILURE_COUNTS.rows.find(
      (row) => row.dataset === 'National Highways (England) Nov23-Feb24' && row.cause === 'tyre',
    );
    expect((tyres?.events ?? 0) / (90_852 - 54_787)).toBeCloseTo(0.47, 2);
  });

  // MIL-T-46780D 3.1.1: 2,600 miles are 4,184 km.
  it('miles convert by code', () => {
    const army = FAILURE_DISTANCES.rows.find((row) => row.dataset.startsWith('US Army'));
    if (army === undefined) throw new Error('no army row');
    expect((si(FAILURE_DISTANCES, army, 'distance') ?? 0) / 1000).toBeCloseTo(4184, 0);
  });
});
