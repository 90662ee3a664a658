import { BELONGING_BY_ID, BELONGINGS } from '@waymend/catalogue/belongings/all';
import { describe, expect, it } from 'vitest';
import { findThings } from '../../src/import/find-things.ts';

const names = (text: string, words = {}): readonly string[] =>
  findThings(text, { words }).map((id) => BELONGING_BY_ID.get(id)?.name ?? id);

describe('searching the catalogue', () => {
  it('finds wrenches by the word of other places (common practice, no source)', () => {
    expect(names('spanner').filter((name) => name.includes('wrench')).length).toBeGreaterThan(40);
    expect(findThings('spanner 17')).toContain('CW-17');
  });

  it('finds by beginnings while a word is being typed', () => {
    expect(names('ratche').some((name) => name.includes('ratchet'))).toBe(true);
    expect(names('compres').some((name) => name.includes('compressor'))).toBe(true);
  });

  it('takes a number whole once something follows it', () => {
    const found = findThings('1/2 socket 17');
    expect(found).toContain('SK2-17');
    expect(found).not.toContain('SK2-19');
    expect(findThings('17 socket')).not.toContain('SK3-7');
  });

  it('puts first what the line would be read as', () => {
    expect(findThings('deep socket 17 mm 1/2 in drive')[0]).toBe('SD2-17');
  });

  it('finds a misspelt word by what the line is read as', () => {
    expect(names('raatchet').some((name) => name.includes('ratchet'))).toBe(true);
  });

  it('knows the words the owner taught', () => {
    expect(findThings('grabber')).not.toContain('PR-L25');
    expect(findThings('grabber', { words: { grabber: { means: 'PR-L25' } } })).toContain('PR-L25');
  });

  it('finds every thing of the catalogue by its own name and size', () => {
    const lost = BELONGINGS.filter(({ id, name, size }) => !findThings(`${name} ${size ?? ''}`).includes(id));
    expect(lost.map(({ id }) => id)).toEqual([]);
  });

  it('finds nothing for nothing, for signs, and for what no name holds', () => {
    expect(findThings('')).toEqual([]);
    expect(findThings('<>&')).toEqual([]);
    expect(findThings('harpsichord')).toEqual([]);
  });
});
