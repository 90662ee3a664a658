import { describe, expect, it } from 'vitest';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import { teach } from '../../src/import/own-words.ts';
import type { Garage } from '../../src/record/schema.ts';
import { SMALL } from '../small-garage.ts';
import { read, said } from './said.ts';

function small(): Garage {
  const result = readGarage(SMALL, 'small.yaml');
  if (!result.ok) throw new Error('refused');
  return result.value;
}

function taught(word: string, means: string): Garage {
  const result = teach(small(), word, means);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('my words', () => {
  it('understands a word from the moment it was taught, in any number and place', () => {
    expect(said(read('2 zonkers 250 mm'))).toBe('? 2 zonkers 250 mm');
    const { words } = taught('zonkers', 'PR-L25');
    expect(said(read('2 zonkers 250 mm', { words }))).toBe('2 PR-L25');
    expect(said(read('zonkers (the red ones)', { words }))).toBe('PR-L25');
  });

  it('takes other words as a meaning, with sizes typed around them', () => {
    const { words } = taught('Zonkgrip', 'locking pliers');
    expect(said(read('zonkgrip 180', { words }))).toBe('PR-L18');
    expect(said(read('zonkgrips 180 x2', { words }))).toBe('2 PR-L18');
  });

  it('goes before what the catalogue calls it', () => {
    const { words } = taught('persuader', 'HM-90');
    expect(said(read('persuader', { words }))).toBe('HM-90');
    const own = taught('hammer', 'HM-SF').words;
    expect(said(read('hammer', { words: own }))).toBe('HM-SF');
  });

  it('is kept in the garage file', () => {
    const again = readGarage(writeGarage(taught('zonkers', 'PR-L25')), 'x');
    expect(again.ok && again.value.words).toEqual({ zonkers: { means: 'PR-L25' } });
  });

  it('leaves the garage it was given as it was', () => {
    const garage = small();
    teach(garage, 'zonkers', 'PR-L25');
    expect(garage.words).toEqual({});
  });

  it.each([
    ['word-unusable', '17', 'PR-L25'],
    ['word-unusable', '', 'PR-L25'],
    ['word-unusable', '__proto__', 'PR-L25'],
    ['word-unusable', 'Constructor', 'PR-L25'],
    ['meaning-missing', 'zonkers', '  '],
    ['meaning-circular', 'zonkers', 'big zonkers'],
  ])('refuses %s: %j', (id, word, means) => {
    expect(teach(small(), word, means)).toMatchObject({ ok: false, error: { id } });
  });

  it('is not led astray by words that look like patterns', () => {
    const { words } = taught('(aa+)+x [', 'locking pliers');
    expect(said(read('aaaaaaaaaaaaaaaaaaaaaaaaaaaa multimeter', { words }))).toBe('MM-1');
  });
});
