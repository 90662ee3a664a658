import { parseSize } from '@waymend/core/fastening/size';
import { describe, expect, it } from 'vitest';
import { entryOf, nearestOf, sizeText, typedOf } from '../../src/places/vehicle/fittings/size-text.ts';

describe('a size typed on the pad', () => {
  it('is the marking that the record and the core read the same', () => {
    const typed = [
      ['17', 'width', 'mm', '17 mm'],
      ['5.5', 'width', 'mm', '5.5 mm'],
      ['5,5', 'width', 'mm', '5.5 mm'],
      ['11/16', 'width', 'in', '11/16 in'],
      ['12/16', 'width', 'in', '3/4 in'],
      ['1-1/8', 'width', 'in', '1-1/8 in'],
      ['1', 'width', 'in', '1 in'],
      ['30', 'T', 'mm', 'T30'],
      ['12', 'E', 'mm', 'E12'],
      ['2', 'cross', 'mm', 'cross 2'],
      ['6.5', 'slot', 'mm', 'slot 6.5 mm'],
      ['10', 'spline', 'mm', 'M10 spline'],
    ] as const;
    for (const [text, entry, unit, marking] of typed) {
      expect(sizeText(text, entry, unit), text).toBe(marking);
      const read = parseSize(marking);
      expect(read.ok && read.value.label).toBe(marking);
      if (!text.includes(',') && text !== '12/16') expect(typedOf(marking).typed).toBe(text);
    }
  });

  it('is none while it is half typed, or nothing that is made', () => {
    for (const text of ['', '.', '1/', '1/3', '/', '-', '17mm', '1/0', '0', '500', '1e3'])
      expect([sizeText(text, 'width', 'mm'), sizeText(text, 'width', 'in')], text).toContain(null);
    expect(sizeText('11/16', 'width', 'mm')).toBeNull();
    expect(sizeText('17', 'width', 'in')).toBeNull();
    expect(sizeText('2.5', 'cross', 'mm')).toBeNull();
  });

  it('names the nearest standard size of an odd one', () => {
    expect(nearestOf('33 mm', ['30 mm', '32 mm', '36 mm', '1-1/4 in'])).toBe('32 mm');
    expect(nearestOf('3/4 in', ['19 mm'])).toBeNull();
  });

  it('is asked for by the head', () => {
    expect(entryOf('lobe')).toBe('T');
    expect(entryOf('hex-key')).toBe('width');
  });
});
