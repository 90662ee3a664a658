import { describe, expect, it } from 'vitest';
import type { Typed } from '../../src/format/field-units.ts';
import { fieldUnit } from '../../src/format/field-units.ts';

type Case = readonly [of: Typed, units: 'metric' | 'inch', typed: string, recorded: number];

describe('a quantity as it is typed', () => {
  // Pound, inch, foot and mile by the international agreement of 1959: 0.45359237 kg, 25.4 mm.
  it.each<Case>([
    ['load', 'metric', '2900', 2900],
    ['load', 'metric', '6400 lb', 2902.991],
    ['load', 'inch', '6400', 2902.991],
    ['load', 'inch', '2900 kg', 2900],
    ['load', 'inch', '2.9 t', 2900],
    ['mass', 'inch', '52.5', 23.814],
    ['length', 'metric', '2.9 m', 2900],
    ['length', 'metric', '114"', 2895.6],
    ['length', 'inch', '114 1/4', 2901.95],
    ['length', 'inch', '2900 mm', 2900],
    ['length', 'inch', "9.5'", 2895.6],
    ['distance', 'metric', '100 miles', 160.934],
    ['distance', 'inch', '160 km', 160],
    ['height', 'metric', '10000 ft', 3048],
    ['height', 'inch', '3048 m', 3048],
    ['piece', 'metric', '1.2 kg', 1200],
    ['piece', 'inch', '180 g', 180],
    ['piece', 'inch', '12', 340.194],
    ['room', 'metric', '2 ft³', 56.634],
    ['room', 'metric', '2 cu ft', 56.634],
    ['room', 'inch', '2', 56.634],
    ['room', 'inch', '60 l', 60],
    ['torque', 'metric', '95 ft-lb', 128.803],
    ['torque', 'inch', '130 Nm', 130],
    ['temperature', 'metric', '95 °F', 35],
    ['temperature', 'metric', '-12', -12],
    ['temperature', 'inch', '35 C', 35],
    ['temperature', 'inch', '-4', -20],
  ])('%s in %s: %s is recorded as %s', (of, units, typed, recorded) => {
    const read = fieldUnit(of, units).readText(typed);
    expect(read.ok && read.value).toBeCloseTo(recorded, 3);
  });

  it('is none when the field was emptied', () => {
    expect(fieldUnit('load', 'metric').readText('  ')).toEqual({ ok: true, value: null });
  });

  it.each<readonly [of: Typed, typed: string, id: string]>([
    ['load', '6400 mm', 'unit-wrong'],
    ['load', 'about two tonnes', 'quantity-unreadable'],
    ['length', '1,200', 'number-ambiguous'],
    ['room', '10 gallons', 'unit-doubtful'],
    ['temperature', '35 K', 'temperature-unreadable'],
    ['distance', '4 leagues', 'unit-unknown'],
  ])('%s of %s is refused with a sentence (%s)', (of, typed, id) => {
    const read = fieldUnit(of, 'metric').readText(typed);
    expect(!read.ok && read.error.id).toBe(id);
    expect(!read.ok && read.error.message.length).toBeGreaterThan(20);
  });

  it('shows what was typed in inch units again', () => {
    for (const [of, typed] of [
      ['length', 114.25],
      ['mass', 52.5],
      ['piece', 12.3],
      ['room', 2.5],
      ['torque', 95],
    ] as const) {
      const unit = fieldUnit(of, 'inch');
      expect(unit.show(unit.read(typed)), of).toBe(typed);
    }
  });
});
