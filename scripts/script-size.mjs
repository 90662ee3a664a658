// What a phone must read before the first screen answers: every script of the build but the worker's, gzipped. Fails
// above the limit. The worker and the solver load beside the page and keep nobody waiting.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

export const LIMIT_KB = 250;

/** Gzipped size of the page's scripts in kB (1,000 bytes), largest first, and their sum. */
export function scriptSizes(root) {
  const folder = join(root, 'apps', 'web', 'dist', 'assets');
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.js') && !name.startsWith('planner-worker'))
    .map((name) => ({ name, kb: gzipSync(readFileSync(join(folder, name)), { level: 9 }).length / 1000 }))
    .sort((a, b) => b.kb - a.kb);
  return { files, kb: files.reduce((sum, { kb }) => sum + kb, 0) };
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] === self) {
  const root = dirname(dirname(self));
  if (!existsSync(join(root, 'apps', 'web', 'dist', 'assets'))) {
    console.error('The planner is not built: node scripts/run.mjs build');
    process.exit(1);
  }
  const { files, kb } = scriptSizes(root);
  console.log(`The page's scripts: ${kb.toFixed(1)} kB gzipped, limit ${LIMIT_KB} kB.`);
  if (kb > LIMIT_KB) {
    for (const file of files.slice(0, 8))
      console.error(`  ${file.kb.toFixed(1).padStart(6)} kB ${file.name}`);
    process.exit(1);
  }
}
