import { AMPACITY } from '@waymend/catalogue/standards/ampacity';
import { describe, expect, it } from 'vitest';
import type { WireQuestion } from '../../src/wire/wire-answer.ts';
import { wireAnswer } from '../../src/wire/wire-answer.ts';
import { WIRE_TABLES } from '../../src/wire/wire-tables.ts';

function answer(question: WireQuestion) {
  const got = wireAnswer(question);
  if (!got.ok) throw new Error(got.error.message);
  return got.value;
}

function refusedAs(question: WireQuestion): string {
  const got = wireAnswer(question);
  return got.ok ? 'not refused' : got.error.id;
}

describe('wire and fuse', () => {
  it('reads 33 CFR 183.425 Table 5: 12 AWG takes 45 A at 105 degrees and 25 A at 60, 0000 takes 445 A', () => {
    // 33 CFR 183.425 Table 5, rows 12 and 0000.
    const row = (label: string) => WIRE_TABLES.gauges.find((g) => g.label === label);
    const at = (label: string, c: number) => row(label)?.allowed.find((a) => a.insulationC === c)?.amps;
    expect(at('12', 105)).toBe(45);
    expect(at('12', 60)).toBe(25);
    expect(at('0000', 105)).toBe(445);
    expect(WIRE_TABLES.gauges).toHaveLength(AMPACITY.rows.length);
  });

  it('reads copper from ASTM B258: 12 AWG is 2.053 mm across and 5.21 ohm per km at 20 degrees', () => {
    // By hand: d = 0.127 x 92^((36-12)/39) = 2.0525 mm; A = 3.309 mm2; 17.241 / 3.309 = 5.211 ohm/km.
    const twelve = WIRE_TABLES.gauges.find((g) => g.label === '12');
    expect((twelve?.area ?? 0) * 1e6).toBeCloseTo(3.309, 3);
    expect((twelve?.resistance ?? 0) * 1e3).toBeCloseTo(5.211, 3);
  });

  it('a fridge: 8 A over 5 m and back at 3 % wants 6 mm2 or 10 AWG and a 10 A fuse', () => {
    const { gauge, metric, fuse, loopMetres } = answer({ amps: 8, metresOneWay: 5, insulationC: 105 });
    expect(loopMetres).toBe(10);
    // By hand, 10 AWG of SAE cable: 17.241 / 4.73 mm2 = 3.645 ohm/km, 3.9 % more at 30 degrees, x 10 m x 8 A = 0.303 V.
    expect(gauge.awg).toBe('10');
    expect(gauge.dropVolts).toBeCloseTo(0.303, 2);
    expect(gauge.dropPct).toBeCloseTo(2.53, 1);
    // One gauge thinner loses 17.241 / 2.96 x 1.039 x 0.08 = 0.484 V, 4 %: too much.
    // 4 mm2: 4.71 x 1.039 x 0.08 = 0.392 V, 3.3 %; 6 mm2: 3.14 x 1.039 x 0.08 = 0.261 V, 2.2 %.
    expect(metric?.mm2).toBe(6);
    expect(metric?.dropPct).toBeCloseTo(2.18, 1);
    expect(fuse.amps).toBe(10);
    expect(fuse.colour).toBe('red');
  });

  it('never names a fuse above what the wire takes, nor one the load would tire, over the whole range', () => {
    let looked = 0;
    for (const insulationC of [60, 75, 105, 200]) {
      for (const engineSpace of [false, true]) {
        for (let amps = 1; amps <= 80; amps += 3) {
          for (const metresOneWay of [0.5, 2, 6]) {
            const got = wireAnswer({ amps, metresOneWay, insulationC, engineSpace, mostDropPct: 10 });
            if (!got.ok) continue;
            looked += 1;
            const { fuse, gauge, metric } = got.value;
            expect(fuse.amps).toBeLessThanOrEqual(gauge.allowedAmps);
            if (metric !== null) expect(fuse.amps).toBeLessThanOrEqual(metric.allowedAmps);
            expect(fuse.amps * (engineSpace ? 0.75 : 0.8)).toBeGreaterThanOrEqual(amps - 1e-9);
            expect(gauge.dropPct).toBeLessThanOrEqual(10);
          }
        }
      }
    }
    expect(looked).toBeGreaterThan(300);
  });

  it('an engine space asks for more: 33 CFR 183.425 leaves 0.85 of the current at 105 degrees', () => {
    const open = answer({ amps: 32, metresOneWay: 0.5, insulationC: 105, mostDropPct: 10 });
    const hot = answer({ amps: 32, metresOneWay: 0.5, insulationC: 105, mostDropPct: 10, engineSpace: true });
    // 32 A: open 40 A fuse, 12 AWG takes 45 A. Hot: 50 A fuse (32 / 0.75 = 42.7), 10 AWG takes 60 x 0.85 = 51 A.
    expect([open.fuse.amps, open.gauge.awg, open.gauge.allowedAmps]).toEqual([40, '12', 45]);
    expect([hot.fuse.amps, hot.gauge.awg, hot.gauge.allowedAmps]).toEqual([50, '10', 51]);
    expect(hot.bases.map((b) => b.basis).join()).not.toMatch(/recalled, not re-read: 33 CFR/);
  });

  it('a factor from memory is said to be one', () => {
    const hot = answer({ amps: 5, metresOneWay: 1, engineSpace: true });
    expect(hot.asked).toMatchObject({ insulationC: 60, insulationAssumed: true });
    expect(hot.sentences.join(' ')).toMatch(/remembered, not re-read/);
  });

  it('names the boat rule for what it is', () => {
    const text = answer({ amps: 5, metresOneWay: 1 })
      .bases.map((b) => b.basis)
      .join('; ');
    expect(text).toMatch(/33 CFR 183\.425 Table 5 \(a rule for boats/);
  });

  it('twice the volts lose half the share', () => {
    const at = (volts: number) =>
      answer({ amps: 10, metresOneWay: 1, volts, mostDropPct: 10, insulationC: 105 });
    expect(at(12).gauge.awg).toBe(at(24).gauge.awg);
    expect(at(24).gauge.dropPct).toBeCloseTo(at(12).gauge.dropPct / 2, 1);
  });

  it('refuses what the tables do not cover', () => {
    expect(refusedAs({ amps: 300, metresOneWay: 2 })).toBe('wire-current-beyond');
    expect(refusedAs({ amps: 0, metresOneWay: 2 })).toBe('wire-current');
    expect(refusedAs({ amps: 5, metresOneWay: 31 })).toBe('wire-length');
    expect(refusedAs({ amps: 5, metresOneWay: 2, volts: 230 })).toBe('wire-supply');
    expect(refusedAs({ amps: 5, metresOneWay: 2, mostDropPct: 20 })).toBe('wire-drop');
    expect(refusedAs({ amps: 5, metresOneWay: 2, insulationC: 70 })).toBe('wire-insulation');
    expect(refusedAs({ amps: 80, metresOneWay: 30, mostDropPct: 0.5, insulationC: 105 })).toBe(
      'wire-drop-beyond',
    );
  });

  it('where metric cable ends the gauge still stands, and the answer says so', () => {
    const big = answer({ amps: 75, metresOneWay: 8, insulationC: 105 });
    expect(big.metric).toBeNull();
    expect(big.sentences.join(' ')).toMatch(/list of metric cables ends/);
  });
});
