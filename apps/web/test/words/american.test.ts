import { inWords } from '@waymend/planner/words/wording';
import i18next from 'i18next';
import { expect, it } from 'vitest';
import american from '../../src/words/en-us.json';
import en from '../../src/words/en.json';
import enBags from '../../src/words/en-bags.json';
import enJobs from '../../src/words/en-jobs.json';
import { openWords, sayIn } from '../../src/words/words.ts';

/** Keys with their texts: 'trip.leg.name'. */
function flat(node: unknown, path = ''): readonly (readonly [key: string, text: string])[] {
  if (typeof node === 'string') return [[path, node]];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, part]) => flat(part, path === '' ? key : `${path}.${key}`));
}

const BRITISH = new Map(flat({ ...en, ...enJobs, ...enBags }));
const AMERICAN = new Map(flat(american));

/** These name a British word on purpose: what each setting does. */
const ON_PURPOSE = /^settings\.wordingRemarks\./;
/** What is put in at its place comes from elsewhere. */
const plain = (text: string): string => text.replace(/\{\{.*?\}\}/g, '{}');
/** Spellings that are in no list of the trade's words (common American usage, recalled). */
const SPELT =
  /\b(catalogue|dialogue|programme|tonnes?|licence|practis\w+|organis\w+|recognis\w+|realis\w+|analys(?:e|ed|es)|towards|mould|plough|neighbour|favour\w*|labour|harbour|odour|rumour|honour|draught|ageing|kerb|lorry|caravan|whilst|learnt|cosy|jewell\w+|travell\w+|cancell\w+|labell\w+|modell\w+|carburettor|manoeuvr\w+|storey|cheque|pyjamas)\b/i;

const isBritish = (text: string): boolean =>
  inWords(plain(text), 'american') !== plain(text) || SPELT.test(plain(text));

it('no text with British words is without its American one', () => {
  const missing = [...BRITISH].filter(
    ([key, text]) => !ON_PURPOSE.test(key) && isBritish(text) && !AMERICAN.has(key),
  );
  expect(missing).toEqual([]);
  // The search finds what it is for.
  expect(['Tyres', 'a kerb', 'the bonnet', 'in colour', 'Catalogue'].every(isBritish)).toBe(true);
  expect(isBritish('{{litres}} l')).toBe(false);
});

it('American texts are only those that differ, without British words, with the same places for what is put in', () => {
  const places = (text: string) => [...text.matchAll(/\{\{.*?\}\}/g)].map(([all]) => all).sort();
  for (const [key, text] of AMERICAN) {
    const ours = BRITISH.get(key);
    expect(ours, key).toBeDefined();
    expect(text, key).not.toBe(ours);
    expect(isBritish(text), `${key}: ${text}`).toBe(false);
    expect(places(text), key).toEqual(places(ours ?? ''));
  }
  expect(AMERICAN.size).toBeGreaterThan(40);
});

it('American texts stand over the British ones when chosen, and go when they are not', async () => {
  await openWords('british');
  expect(i18next.hasResourceBundle('en-US', 'translation')).toBe(false);
  expect(i18next.t('vehicle.loadIndex')).toBe('Tyre load index');
  await sayIn('american');
  expect(i18next.t('vehicle.loadIndex')).toBe('Tire load index');
  expect(i18next.t('vehicle.age')).toBe(en.vehicle.age);
  expect(i18next.t('people.headline', { count: 1 })).toBe('1 person');
  await sayIn('british');
  expect(i18next.t('vehicle.loadIndex')).toBe('Tyre load index');
});
