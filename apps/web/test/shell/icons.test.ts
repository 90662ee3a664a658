import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

describe('the installed planner', () => {
  test('its icons have the sizes that the manifest says', () => {
    const config = readFileSync(new URL('../../vite.config.ts', import.meta.url), 'utf8');
    const named = [...config.matchAll(/src: '\/icons\/([\w-]+\.png)', sizes: '(\d+)x(\d+)'/g)];
    expect(named.length).toBe(3);
    for (const [, name, width, height] of named) {
      const png = readFileSync(new URL(`../../public/icons/${name ?? ''}`, import.meta.url));
      // PNG (ISO/IEC 15948): the header chunk gives width and height as the first two big-endian words of its data.
      expect(png.toString('latin1', 12, 16)).toBe('IHDR');
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([Number(width), Number(height)]);
    }
  });
});
