// Whether what was built is as new as what it was built from.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Folders that nothing is built from. */
const APART = new Set(['node_modules', 'dist', 'test', 'browser']);

/** Newest change below a path, in ms; 0 when there is nothing. */
export function newest(path) {
  if (!existsSync(path)) return 0;
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => (APART.has(name) ? 0 : newest(join(path, name)))));
}

/** True when the built file is there and no source is newer. */
export function isFresh(built, sources) {
  return existsSync(built) && statSync(built).mtimeMs >= Math.max(0, ...sources.map(newest));
}
