import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect } from '../support/planner.ts';

/** One figure with its limit. */
interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly most: number;
}

const FILE = fileURLToPath(new URL('../../../../reports/web-speed.json', import.meta.url));

/** Keeps a figure for `npm run bench`, and fails when it is over its limit. */
export function row(what: string, value: number, unit: string, most: number): void {
  const kept = existsSync(FILE) ? (JSON.parse(readFileSync(FILE, 'utf8')) as readonly Row[]) : [];
  mkdirSync(fileURLToPath(new URL('.', `file://${FILE}`)), { recursive: true });
  const rows = [...kept.filter((other) => other.what !== what), { what, value, unit, most }];
  writeFileSync(FILE, `${JSON.stringify(rows, null, 2)}\n`);
  expect(value, what).toBeLessThanOrEqual(most);
}
