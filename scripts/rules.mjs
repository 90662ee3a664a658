// Every rule that docs/model.md marks as built must be quoted, as "[M2] ...", by at least one test name.
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

function* testFiles(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name === 'dist') continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* testFiles(path);
    else if (entry.name.endsWith('.test.ts')) yield path;
  }
}

const model = readFileSync(join(root, 'docs', 'model.md'), 'utf8');
const built = [...model.matchAll(/^## (M\d+) .*\*\(built/gm)].map((m) => m[1]);
const quoted = new Map();
for (const top of ['packages', 'apps', 'tests']) {
  for (const file of testFiles(join(root, top))) {
    for (const [, rule] of readFileSync(file, 'utf8').matchAll(/\[(M\d+)\]/g))
      quoted.set(rule, (quoted.get(rule) ?? 0) + 1);
  }
}
const missing = built.filter((rule) => !quoted.has(rule));
console.log(built.map((rule) => `${rule}: ${quoted.get(rule) ?? 0} tests`).join(', '));
if (built.length === 0 || missing.length > 0) {
  console.error(`Rules without a test: ${missing.join(', ') || 'docs/model.md marks none as built'}`);
  process.exit(1);
}
