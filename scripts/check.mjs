// `npm run check`: formatting, lint, types, architecture, dead code, rules without a test, drifted documents.
// Each step is a program of its own; all run, and the exit code says whether all passed.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const bin = (name) => join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);

const steps = [
  ['formatting', bin('biome'), ['format', '.']],
  ['types', bin('tsc'), ['-p', '.']],
  ['types of the screens', bin('tsc'), ['-p', 'apps/web']],
  ['lint', bin('eslint'), ['packages', 'apps', 'tests', 'scripts', '--max-warnings=0']],
  [
    'architecture',
    bin('depcruise'),
    ['packages', 'apps', 'tests', 'scripts', '--config', '.dependency-cruiser.cjs', '--output-type', 'err'],
  ],
  ['dead code', bin('knip'), ['--no-progress']],
  ['rules have tests', process.execPath, ['scripts/rules.mjs']],
  ['file sizes', process.execPath, ['scripts/sizes.mjs']],
  ['size of the page', process.execPath, ['scripts/script-size.mjs']],
  ['pictures of the sheets', process.execPath, ['scripts/screens.mjs', '--check']],
  ['documents', process.execPath, ['scripts/docs.mjs', '--check']],
];

let failed = 0;
for (const [name, command, args] of steps) {
  const started = Date.now();
  const done = spawnSync(command, args, { cwd: root, encoding: 'utf8', shell: process.platform === 'win32' });
  const good = done.status === 0;
  if (!good) failed += 1;
  console.log(`${good ? 'ok    ' : 'FAILED'} ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
  if (!good) console.log(`${done.stdout ?? ''}${done.stderr ?? ''}${done.error ? String(done.error) : ''}`);
}
console.log(`check: ${steps.length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
