import { expect, it } from 'vitest';
import { keepDraft, keptDraft } from '../../src/places/garage/belongings/paste/kept-draft.ts';

class Small {
  readonly kept = new Map<string, string>();
  getItem = (key: string): string | null => this.kept.get(key) ?? null;
  setItem = (key: string, value: string): void => void this.kept.set(key, value);
  removeItem = (key: string): void => void this.kept.delete(key);
}

const DRAFT = {
  text: '2 locking pliers\nfrobnicator',
  decisions: new Map([
    ['frobnicator', { kind: 'own' as const }],
    ['pliers', { kind: 'thing' as const, id: 'PR-LK' }],
  ]),
  taught: { zugöse: { means: 'recovery point' }, constructor: { means: 'odd' } },
};

it('what was typed, decided and taught comes back to the same garage, and to no other', () => {
  const store = new Small();
  keepDraft(store, 'mine', DRAFT);
  const found = keptDraft(store, 'mine');
  expect(found?.text).toBe(DRAFT.text);
  expect(found?.decisions).toEqual(DRAFT.decisions);
  expect(found?.taught).toEqual(DRAFT.taught);
  expect(keptDraft(store, 'other')).toBe(null);
});

it('nothing is kept of an empty paper, and nothing unreadable is believed', () => {
  const store = new Small();
  keepDraft(store, 'mine', DRAFT);
  keepDraft(store, 'mine', { text: '', decisions: new Map(), taught: {} });
  expect(store.kept.size).toBe(0);
  for (const odd of ['{', '[]', '{"garage":"mine"}', '{"garage":"mine","text":3}']) {
    store.setItem('waymend.draft', odd);
    expect(keptDraft(store, 'mine')).toBe(null);
  }
  store.setItem(
    'waymend.draft',
    '{"garage":"mine","text":"a","decisions":[["k",{"kind":"blow up"}],["l",{"kind":"set"}],7],"taught":[["w",{}]]}',
  );
  expect(keptDraft(store, 'mine')).toEqual({ text: 'a', decisions: new Map(), taught: {} });
  expect(keptDraft(null, 'mine')).toBe(null);
});
