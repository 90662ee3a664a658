import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, it } from 'vitest';

const log = join(import.meta.dirname, '../../src/log');

/** Everything a file brings along at run time; types are gone by then. */
function bringsAlong(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  if (!file.startsWith('/')) return seen;
  for (const [, from = ''] of readFileSync(file, 'utf8').matchAll(/^import (?!type )[^;]*?from '([^']+)';/gm))
    bringsAlong(from.startsWith('.') ? normalize(join(dirname(file), from)) : from, seen);
  return seen;
}

it('[M15] what a page needs of the log brings no schema along; only the reader of foreign changes does', () => {
  const heavy = readdirSync(log).filter((name) => bringsAlong(join(log, name)).has('zod'));
  expect(heavy).toEqual(['read-changes.ts']);
});
