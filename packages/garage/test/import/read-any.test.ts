import { describe, expect, it } from 'vitest';
import { readAny } from '../../src/import/read-any.ts';
import { SMALL } from '../small-garage.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('reading whatever file belongings are kept in', () => {
  it('gives a typed list back as text, so that it can be mended', async () => {
    const read = await readAny(bytes('3/8 ratchet\n19 mm deep socket\n'), { name: 'tools.txt' });
    expect(read.ok && read.value.list).toBe('3/8 ratchet\n19 mm deep socket\n');
    expect(read.ok && read.value.reading.matches).toHaveLength(2);
  });

  it('reads a table in any column order and gives no text back', async () => {
    const read = await readAny(bytes('qty;weight (g);item\n2;410;3/8 ratchet\n'), { name: 'tools.csv' });
    expect(read.ok && read.value.list).toBe(null);
    expect(read.ok && read.value.reading.matches[0]).toMatchObject({ copies: 2, grams: 410, weighed: true });
  });

  it('refuses a garage file and says where it belongs', async () => {
    for (const text of [SMALL, `# kept in spring\n${SMALL}`, '{ "waymend": 1, "name": "x" }']) {
      const read = await readAny(bytes(text), { name: 'garage.yaml' });
      expect(!read.ok && read.error.id).toBe('list-is-garage');
    }
  });

  it('refuses an archive that is no spreadsheet, and what is no text', async () => {
    const archive = await readAny(Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]), { name: 'x.zip' });
    expect(!archive.ok && archive.error.id).toBe('spreadsheet-broken');
    const binary = await readAny(Uint8Array.from([1, 0, 2, 0, 3]), { name: 'x.bin' });
    expect(!binary.ok && binary.error.id).toBe('file-binary');
  });
});
