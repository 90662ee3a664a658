import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { COLLECTIONS } from '../../src/record/collections.ts';
import {
  FIELD_WORDS,
  fieldWords,
  INNER_WORDS,
  valueWords,
  WHOLE_WORDS,
} from '../../src/record/field-words.ts';
import { garageFile } from '../../src/record/schema.ts';

/** The schema of the file as JSON Schema, which is walked for the names of its fields. */
const FILE: unknown = z.toJSONSchema(garageFile, { io: 'input', unrepresentable: 'any' });

function at(node: unknown, ...path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (one, key) => (typeof one === 'object' && one !== null ? Reflect.get(one, key) : undefined),
    node,
  );
}

const keys = (node: unknown): readonly string[] =>
  typeof node === 'object' && node !== null ? Object.keys(node) : [];

/** The names of fields inside the values of an entity's fields. */
function innerNames(node: unknown): readonly string[] {
  if (typeof node !== 'object' || node === null) return [];
  const own = keys(at(node, 'properties'));
  const below = Object.entries(node).flatMap(([key, part]) =>
    key === 'properties' ? Object.values(part as object).flatMap(innerNames) : innerNames(part),
  );
  return [...own, ...below];
}

const entityOf = (table: string): unknown =>
  at(FILE, 'properties', table, 'additionalProperties', 'properties');

describe('the words for fields', () => {
  it.each(COLLECTIONS)('every field of the table %s has some, and no word has lost its field', (table) => {
    const fields = keys(entityOf(table));
    expect(fields.length).toBeGreaterThan(0);
    expect(Object.keys(FIELD_WORDS[table]).sort()).toEqual([...fields].sort());
  });

  it('those of the whole garage have some', () => {
    const whole = keys(at(FILE, 'properties')).filter(
      (key) => key !== 'waymend' && !COLLECTIONS.some((table) => table === key),
    );
    expect(Object.keys(WHOLE_WORDS).sort()).toEqual(whole.sort());
  });

  it('those inside a value have some', () => {
    const inner = COLLECTIONS.flatMap((table) =>
      Object.values(entityOf(table) as object).flatMap((field) => innerNames(field)),
    );
    expect(inner).toContain('loadIndex');
    expect([...new Set(inner)].sort()).toEqual(Object.keys(INNER_WORDS).sort());
  });

  it('are words: no name of a field, and none twice in one table', () => {
    for (const table of COLLECTIONS) {
      const said = Object.values<string>(FIELD_WORDS[table]);
      expect(new Set(said).size, table).toBe(said.length);
      for (const words of said) expect(words).not.toMatch(/[a-z][A-Z](?!h)/);
    }
  });

  it('fall back to the name of a field that a later version has', () => {
    expect(fieldWords('belongings', 'grams')).toBe('mass of one (g)');
    expect(fieldWords(null, 'units')).toBe('units');
    expect(fieldWords('belongings', 'constructor')).toBe('constructor');
  });
});

it('says values as people read them', () => {
  expect(valueWords({ loadIndex: 112, passenger: false, ageYears: 3 })).toBe(
    'load index 112, passenger-car tyre no, age (years) 3',
  );
  expect(valueWords(['a', 'b'])).toBe('a, b');
  expect(valueWords([])).toBe('nothing');
  expect(valueWords(null)).toBe('nothing');
  expect(valueWords(true)).toBe('yes');
  expect(valueWords('17 mm')).toBe('17 mm');
});
