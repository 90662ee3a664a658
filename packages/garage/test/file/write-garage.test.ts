import fc from 'fast-check';
import { expect, it } from 'vitest';
import { garageJsonSchema } from '../../src/file/json-schema.ts';
import type { MigrationStep } from '../../src/file/migrate.ts';
import { migrate, MIGRATION_STEPS } from '../../src/file/migrate.ts';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import { FILE_VERSION, garageFile } from '../../src/record/schema.ts';
import { SMALL } from '../small-garage.ts';

const allowed = (name: string): boolean => !['constructor', 'prototype'].includes(name);
const id = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,12}$/).filter(allowed);
const words = fc.string({ unit: 'grapheme', maxLength: 40 });
const finite = fc.double({ min: 0, max: 500, noNaN: true }).map((n) => n + 0);
const optional = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });

/** Drops undefined fields, which a file cannot hold. */
function present(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}

const belonging = fc
  .record({
    name: optional(words),
    copies: optional(fc.integer({ min: 1, max: 99 })),
    grams: optional(finite.map((n) => n + 1)),
    note: optional(fc.string({ unit: 'binary', maxLength: 60 })),
    pin: optional(fc.constantFrom('always', 'never')),
    forSale: optional(fc.boolean()),
    price: optional(finite),
    line: optional(words),
  })
  .map(present);
const bag = fc.record({ name: words, grams: optional(finite) }).map(present);
const garage = fc
  .record({
    waymend: fc.constant(1),
    name: words,
    currency: optional(fc.constantFrom('EUR', 'ZAR')),
    belongings: fc.dictionary(id, belonging, { maxKeys: 6 }),
    bags: fc.dictionary(id, bag, { maxKeys: 3 }),
    words: fc.dictionary(
      fc.stringMatching(/^[a-z =+-]{1,12}$/).filter(allowed),
      fc.record({ means: words }),
      { maxKeys: 3 },
    ),
  })
  .map(present);

it('writes what it reads back to the same garage, whatever the texts and numbers', () => {
  fc.assert(
    fc.property(garage, (input) => {
      const parsed = garageFile.parse(input);
      const text = writeGarage(parsed);
      expect(readGarage(text, 'x', { for: 'edit' })).toEqual({ ok: true, value: parsed });
      // What is written does not depend on who wrote it before.
      expect(writeGarage(garageFile.parse(parsed))).toBe(text);
    }),
    { numRuns: 400 },
  );
});

it('leaves defaults out and keeps the order of the schema', () => {
  const result = readGarage(SMALL, 'x');
  if (!result.ok) throw new Error('refused');
  const text = writeGarage(result.value);
  expect(text).not.toContain('rusty');
  expect(text).not.toContain('weakPoints');
  expect(text.indexOf('vehicles:')).toBeLessThan(text.indexOf('belongings:'));
});

it('has a migration step from every version since the first', () => {
  expect(MIGRATION_STEPS.map(({ from }) => from)).toEqual(
    Array.from({ length: FILE_VERSION - 1 }, (_, i) => i + 1),
  );
});

it('takes a file through the steps one after the other and leaves the original alone', () => {
  const steps: readonly MigrationStep[] = [
    { from: 1, why: 'called otherwise', change: ({ title, ...rest }) => ({ ...rest, name: title ?? '' }) },
    { from: 2, why: 'counted', change: (file) => ({ ...file, bags: {} }) },
  ];
  const old = { waymend: 1, title: 'x' };
  expect(migrate(old, 1, 3, steps)).toEqual({ waymend: 3, name: 'x', bags: {} });
  expect(migrate(old, 1, 2, steps)).toEqual({ waymend: 2, name: 'x' });
  expect(old).toEqual({ waymend: 1, title: 'x' });
  expect(() => migrate(old, 1, 4, steps)).toThrow('no step leads from file version 3');
});

it('publishes a JSON Schema of what a person writes: defaults optional, masses as number or text', () => {
  const schema = garageJsonSchema();
  expect(schema).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    required: ['waymend', 'name'],
    additionalProperties: false,
    properties: {
      waymend: { const: 1 },
      belongings: {
        additionalProperties: {
          additionalProperties: false,
          properties: { grams: { anyOf: [{ type: 'number' }, { type: 'string', maxLength: 80 }] } },
        },
      },
    },
  });
  expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
});
