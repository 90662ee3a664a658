import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseSize } from '../../src/fastening/size.ts';
import { sizeOf } from './sizes.ts';

const refusal = (text: string) => {
  const size = parseSize(text);
  return size.ok ? null : size.error.id;
};

describe('[M2] sizes as people write them', () => {
  it.each([
    ['17 mm', '17 mm', 0.017],
    ['17', '17 mm', 0.017],
    ['17mm', '17 mm', 0.017],
    ['5.5', '5.5 mm', 0.0055],
    ['5,5 mm', '5.5 mm', 0.0055],
    ['20.8 mm', '20.8 mm', 0.0208],
    // 1 in = 25.4 mm exactly (international yard and pound, 1959).
    ['11/16 in', '11/16 in', 0.0174625],
    ['11/16"', '11/16 in', 0.0174625],
    ['22/32 in', '11/16 in', 0.0174625],
    ['1-1/2 in', '1-1/2 in', 0.0381],
    ['1 1/2', '1-1/2 in', 0.0381],
    ['3/2 in', '1-1/2 in', 0.0381],
    ['1.5 in', '1-1/2 in', 0.0381],
    ['1 in', '1 in', 0.0254],
    ['3/8', '3/8 in', 0.009525],
  ])('[M2] %s is read as %s', (text, label, width) => {
    const size = sizeOf(text);
    expect(size.label).toBe(label);
    if (size.kind !== 'across-flats') throw new Error(`${text} was read as ${size.kind}`);
    expect(size.width).toBeCloseTo(width, 9);
    expect(size.system).toBe(label.endsWith('mm') ? 'metric' : 'inch');
  });

  it('[M2] letters and words mark the other shapes', () => {
    expect(sizeOf('T30')).toEqual({ kind: 'lobe', label: 'T30', family: 'T', number: 30 });
    expect(sizeOf('e12')).toEqual({ kind: 'lobe', label: 'E12', family: 'E', number: 12 });
    expect(sizeOf('cross 2')).toEqual({ kind: 'cross', label: 'cross 2', number: 2 });
    expect(sizeOf('slot 6.5 mm')).toEqual({ kind: 'slot', label: 'slot 6.5 mm', width: 0.0065 });
    expect(sizeOf('M10 spline')).toEqual({ kind: 'spline', label: 'M10 spline', thread: 10 });
    expect(sizeOf('spline M10')).toEqual(sizeOf('M10 spline'));
  });

  it('[M2] a thread is no size of a head', () => {
    // M10 alone has heads of 13, 14, 15, 16 and 17 mm (ISO 4014, DIN 931, EN 1662, ISO 4161 and small-hex lists).
    for (const text of ['M10', 'M12x1.5', 'm8 x 1']) expect(refusal(text)).toBe('size-is-a-thread');
  });

  it('[M2] slips of digit or unit are refused', () => {
    for (const text of [
      '17 in',
      '1700',
      '0.2',
      '250 mm',
      'T150',
      'E2',
      'cross 9',
      'slot 65 mm',
      'M99 spline',
    ])
      expect(refusal(text), text).toBe('size-out-of-range');
    for (const text of ['', 'big', '17 cm', '1/3 in', '5/0', '0.813 in', 'PH2', '17-19', '-17', '17 17'])
      expect(refusal(text), text).toBe('size-unknown');
  });

  it('[M2] every label reads back as the same size', () => {
    const inch = fc.integer({ min: 4, max: 128 }).map((n) => `${n}/64 in`);
    const metric = fc.integer({ min: 10, max: 600 }).map((n) => `${n / 10} mm`);
    const other = fc.constantFrom('T8', 'T100', 'E24', 'cross 0', 'slot 4 mm', 'M8 spline');
    fc.assert(
      fc.property(fc.oneof(inch, metric, other), (text) => {
        const size = sizeOf(text);
        expect(sizeOf(size.label)).toEqual(size);
      }),
    );
  });
});
