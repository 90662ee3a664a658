import { describe, expect, it } from 'vitest';
import { amountIn, readQuantity } from '../../src/record/quantity-text.ts';

describe('a number with its unit', () => {
  it.each([
    ['1.2 kg', { kind: 'mass', mass: 1200 }],
    ['1,5 kg', { kind: 'mass', mass: 1500 }],
    ['180 g', { kind: 'mass', mass: 180 }],
    ['180g', { kind: 'mass', mass: 180 }],
    // international pound, 1959: 453.59237 g
    ['2 lb', { kind: 'mass', mass: 907 }],
    ['12 oz', { kind: 'mass', mass: 340 }],
    ['1 200 g', { kind: 'mass', mass: 1200 }],
    ['1.200,5 kg', { kind: 'mass', mass: 1200500 }],
    ['1,200.5 kg', { kind: 'mass', mass: 1200500 }],
    ['.9 kg', { kind: 'mass', mass: 900 }],
    ['0.5 l', { kind: 'volume', volume: 500 }],
    ['250 ML', { kind: 'volume', volume: 250 }],
  ])('%s', (text, value) => {
    expect(readQuantity(text)).toEqual({ ok: true, value });
  });

  it.each([
    ['300 mm', 0.3],
    ['30 cm', 0.3],
    // international inch: 25.4 mm
    ['12"', 0.3048],
    ['1/2 in', 0.0127],
    ['1-1/2 in', 0.0381],
    ['1½"', 0.0381],
    ["6'", 1.8288],
    ['2 m', 2],
  ])('%s is %d m', (text, length) => {
    const read = readQuantity(text);
    expect(read).toMatchObject({ ok: true, value: { kind: 'length' } });
    expect(read.ok && read.value.kind === 'length' ? read.value.length : Number.NaN).toBeCloseTo(length, 9);
  });

  it.each([
    ['130 Nm', 130],
    ['130 N m', 130],
    ['130 N·m', 130],
    // 1 lbf ft = 1.3558179483314004 N m (NIST SP 811, appendix B)
    ['95 ft-lb', 128.8027],
    ['95 lb-ft', 128.8027],
    ['95 ft lbs', 128.8027],
    ['10 kgm', 98.0665],
  ])('%s is %d N m', (text, torque) => {
    const read = readQuantity(text);
    expect(read.ok && read.value.kind === 'torque' ? read.value.torque : Number.NaN).toBeCloseTo(torque, 4);
  });

  it('reads pressure in kPa', () => {
    // 1 psi = 6.894757 kPa (NIST SP 811, appendix B)
    const read = readQuantity('65 psi');
    expect(read.ok && read.value.kind === 'pressure' ? read.value.kPa : 0).toBeCloseTo(448.1592, 3);
    expect(readQuantity('2.4 bar')).toEqual({ ok: true, value: { kind: 'pressure', kPa: 240 } });
  });

  it.each([
    ['unit-missing', '12'],
    ['unit-unknown', '12 stones'],
    ['unit-doubtful', '2 gal'],
    ['number-ambiguous', '1,200 g'],
    ['quantity-unreadable', 'heavy'],
    ['quantity-unreadable', ''],
    ['quantity-unreadable', 'x'.repeat(5000)],
    ['number-unreadable', '1/0 in'],
    ['number-unreadable', '1.2.3 kg'],
    ['number-too-large', '99999999999999999999 kg'],
  ])('%s: %j', (id, text) => {
    expect(readQuantity(text)).toMatchObject({ ok: false, error: { id } });
  });

  it('takes a bare number in the unit of its key and refuses another kind', () => {
    expect(amountIn('kg', '37')).toEqual({ ok: true, value: 37 });
    expect(amountIn('kg', '37000 g')).toEqual({ ok: true, value: 37 });
    expect(amountIn('g', '1,5 kg')).toEqual({ ok: true, value: 1500 });
    expect(amountIn('g', '3 mm')).toMatchObject({ ok: false, error: { id: 'unit-wrong' } });
  });
});
