// What a phone must read before a sheet is drawn: the page's scripts up to that sheet, gzipped; the worker and the solver
// load beside the page and keep nobody waiting. Fails when any one sheet needs more than the limit.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

export const LIMIT_KB = 250;

/**
 * Gzipped kB (1,000 bytes): of the first screen, of the sheet that needs most (each counted from nothing, with all that
 * leads to it), and of all scripts of the page together.
 */
export function scriptSizes(root) {
  const dist = join(root, 'apps', 'web', 'dist');
  const chunks = JSON.parse(readFileSync(join(dist, '.vite', 'manifest.json'), 'utf8'));
  const sizes = new Map();
  const size = (key) => {
    const { file } = chunks[key];
    if (!sizes.has(file))
      sizes.set(
        file,
        file.endsWith('.js') ? gzipSync(readFileSync(join(dist, file)), { level: 9 }).length : 0,
      );
    return sizes.get(file) / 1000;
  };
  const closure = (key, into = new Set()) => {
    if (into.has(key)) return into;
    into.add(key);
    for (const next of chunks[key].imports ?? []) closure(next, into);
    return into;
  };
  const [entry] = Object.keys(chunks).filter((key) => chunks[key].isEntry && key.endsWith('index.html'));
  const needed = new Map([[entry, closure(entry)]]);
  // Sheets are reached through their place, places through the page: walk the lazy imports outwards.
  const queue = [entry];
  while (queue.length > 0) {
    const from = queue.shift();
    const sofar = needed.get(from);
    for (const key of new Set([...sofar].flatMap((chunk) => chunks[chunk].dynamicImports ?? []))) {
      if (needed.has(key)) continue;
      needed.set(key, closure(key, new Set(sofar)));
      queue.push(key);
    }
  }
  const kbOf = (keys) => [...keys].reduce((sum, key) => sum + size(key), 0);
  const sheets = [...needed].map(([key, keys]) => ({ name: chunks[key].name ?? key, kb: kbOf(keys) }));
  sheets.sort((a, b) => b.kb - a.kb);
  const all = new Set([...needed.values()].flatMap((keys) => [...keys]));
  return {
    entryKb: kbOf(needed.get(entry)),
    sheets,
    allKb: kbOf(all),
    files: [...all].map((key) => ({ name: chunks[key].file, kb: size(key) })).sort((a, b) => b.kb - a.kb),
  };
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] === self) {
  const root = dirname(dirname(self));
  if (!existsSync(join(root, 'apps', 'web', 'dist', '.vite', 'manifest.json'))) {
    console.error('The planner is not built: node scripts/run.mjs build');
    process.exit(1);
  }
  const { sheets, allKb, files } = scriptSizes(root);
  const [most] = sheets;
  console.log(
    `Scripts before the worker, gzipped: ${most.kb.toFixed(0)} kB for the sheet that needs most (${most.name}), limit ${LIMIT_KB} kB; all sheets together ${allKb.toFixed(0)} kB.`,
  );
  if (most.kb > LIMIT_KB) {
    for (const file of files.slice(0, 12))
      console.error(`  ${file.kb.toFixed(1).padStart(6)} kB ${file.name}`);
    process.exit(1);
  }
}
