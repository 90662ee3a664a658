// `npm run check`: formatting, lint, types, architecture, dead code, rules without a test, drifted documents.
// Each step is a program of its own, two at a time; all run, and the exit code says whether all passed.
import { spawn } from 'node:child_process';
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

/** Two at a time, the longest first; what each says is printed when it has ended. */
const AT_ONCE = 2;
const LONGEST = 'lint';

let failed = 0;
const waiting = [...steps].sort(([a], [b]) => Number(b === LONGEST) - Number(a === LONGEST));
await Promise.all(
  Array.from({ length: AT_ONCE }, async () => {
    for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) {
      const [name, command, args] = step;
      const started = Date.now();
      const { code, output } = await run(command, args);
      if (code !== 0) failed += 1;
      console.log(
        `${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)`,
      );
      if (code !== 0) console.log(output);
    }
  }),
);
console.log(`check: ${steps.length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

function run(command, args) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, shell: process.platform === 'win32' });
    let output = '';
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (data) => {
        output += data;
      });
    child.once('error', (cause) => resolve({ code: 1, output: String(cause) }));
    child.once('close', (code) => resolve({ code: code ?? 1, output }));
  });
}
