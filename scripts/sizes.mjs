// No source file and no suite of tests over 400 lines, tables and lists of the catalogue apart; says the medians.
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const LIMIT = 400;

function* sources(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (['node_modules', 'dist', 'data', 'testdata'].includes(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.(ts|tsx|mjs)$/.test(entry.name)) yield path;
  }
}

const files = ['packages', 'apps', 'tests', 'scripts', 'bench'].flatMap((top) => {
  try {
    return [...sources(join(root, top))];
  } catch {
    return [];
  }
});
const isTable = (path) =>
  /packages\/catalogue\/src\/(belongings|spares|jobs|places|failures|standards|patterns|care|rates|vocabulary|aliases|boxed-sets|substitutions)/.test(
    path,
  );
const isTest = (path) => /(^|\/)tests?\//.test(path);
const lengths = files
  .map((path) => [relative(root, path).replaceAll('\\', '/'), readFileSync(path, 'utf8').split('\n').length])
  .filter(([path]) => !isTable(path))
  .sort((a, b) => b[1] - a[1]);
const over = lengths.filter(([, lines]) => lines > LIMIT);
const median = (list) => list[Math.floor(list.length / 2)]?.[1] ?? 0;
const code = lengths.filter(([path]) => !isTest(path));
const tests = lengths.filter(([path]) => isTest(path));
console.log(
  `median ${median(code)} lines over ${code.length} files, ${median(tests)} over ${tests.length} of tests`,
);
for (const [path, lines] of over) console.error(`${path}: ${lines} lines (limit ${LIMIT})`);
process.exit(over.length === 0 ? 0 : 1);
