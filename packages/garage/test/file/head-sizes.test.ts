import { standardHeadSizes } from '@waymend/garage/file/head-sizes';
import { describe, expect, it } from 'vitest';

describe('sizes of heads that need not be asked about', () => {
  it('has what standards have and not what they have not', () => {
    const sizes = new Set(standardHeadSizes());
    for (const size of [
      '10 mm',
      '13 mm',
      '17 mm',
      '5.5 mm',
      '3/4 in',
      '11/16 in',
      'T30',
      'E12',
      'cross 2',
      'slot 6.5 mm',
    ])
      expect(sizes, size).toContain(size);
    for (const size of ['29 mm', '16.5 mm', 'T29', 'cross 9', '47/64 in'])
      expect(sizes, size).not.toContain(size);
  });
});
