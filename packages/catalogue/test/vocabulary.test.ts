import { describe, expect, it } from 'vitest';
import { IDS_BY_TEXT, plainText, THINGS } from '../src/aliases.ts';
import { BELONGING_BY_ID, BELONGINGS } from '../src/belongings/all.ts';
import { VOCABULARY } from '../src/vocabulary.ts';

const meant = (text: string) => IDS_BY_TEXT.get(plainText(text)) ?? [];

describe('vocabulary', () => {
  it('lists each word once and no twin twice under it', () => {
    expect(new Set(VOCABULARY.map((t) => t.word)).size).toBe(VOCABULARY.length);
    for (const { word, also } of VOCABULARY) {
      const texts = [word, ...also.map((a) => a.text)];
      expect(new Set(texts).size, word).toBe(texts.length);
    }
  });

  it('ties both halves of the locale pairs', () => {
    const pairs = [
      ['bonnet', 'hood'],
      ['boot', 'trunk'],
      ['windscreen', 'windshield'],
      ['bulkhead', 'firewall'],
      ['petrol', 'gasoline'],
      ['paraffin', 'kerosene'],
      ['tyre', 'tire'],
      ['earth', 'ground'],
    ];
    for (const [word, twin] of pairs) {
      const term = VOCABULARY.find((t) => t.word === word);
      expect(
        term?.also.map((a) => a.text),
        word,
      ).toContain(twin);
    }
  });

  it('leads every word for a tool or a material to catalogue entries', () => {
    for (const { word, kind, also } of VOCABULARY) {
      if (kind !== 'tool' && kind !== 'material') continue;
      for (const text of [word, ...also.map((a) => a.text)])
        expect(meant(text).length, text).toBeGreaterThan(0);
    }
  });
});

describe('what people type', () => {
  it.each([
    ['spanner', 'CW-10'],
    ['combo wrench', 'CW-13'],
    ['ring spanner', 'CW-17'],
    ['dikes', 'PR-SC'],
    ['cheater', 'TP-1'],
    ['ratchet', 'RT-3'],
    ['breaker', 'BB-2M'],
    ['power bar', 'BB-2M'],
    ['jump starter', 'JP-LI'],
    ['tyre plugger', 'TK-P'],
    ['zip ties', 'ZT-A'],
    ['gaffer tape', 'DT-1'],
    ['shifter', 'AW-250'],
    ['axle stand', 'ST-1'],
    ['come-along', 'HH-2'],
    ['Long-Nose Pliers', 'PR-LN'],
    ['deep socket', 'SD3-17'],
    ['cotter pin', 'SP-A'],
  ])('"%s" may mean %s', (text, id) => {
    expect(meant(text)).toContain(id);
  });

  it('names every belonging, and only belongings', () => {
    const named = new Set(THINGS.flatMap((t) => t.ids));
    for (const { id } of BELONGINGS) expect(named.has(id), id).toBe(true);
    for (const id of named) expect(BELONGING_BY_ID.has(id), id).toBe(true);
  });

  it('puts the usual one first and each id once', () => {
    expect(meant('jack')[0]).toBe('JB-4');
    expect(meant('adjustable spanner')[0]).toBe('AW-250');
    expect(meant('fuse')[0]).toBe('FU-A');
    for (const [text, ids] of IDS_BY_TEXT) expect(new Set(ids).size, text).toBe(ids.length);
  });
});
