// `npm run bench`: bundles and runs bench/bench.ts, then measures the planner in a real browser.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './browser.mjs';
import { bundle } from './bundle.mjs';
import { LIMIT_KB, scriptSizes } from './script-size.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const out = join(root, 'node_modules', '.cache', 'waymend-bench.mjs');
mkdirSync(dirname(out), { recursive: true });
await bundle(join(root, 'bench', 'bench.ts'), out);
const done = spawnSync(process.execPath, [out, ...process.argv.slice(2)], { cwd: root, stdio: 'inherit' });
process.exitCode = done.status ?? 1;

const { entryKb, sheets } = scriptSizes(root);
const most = sheets[0]?.kb ?? 0;
const say = (met, what) => console.log(`${met ? 'met   ' : 'MISSED'} ${what}`);
console.log('\nThe planner in the browser');
say(
  most <= LIMIT_KB,
  `scripts before the worker, gzipped: ${entryKb.toFixed(0)} kB for the page, ${most.toFixed(0)} kB with the largest sheet (target ${LIMIT_KB} kB)`,
);

const browser = await findBrowser(root, console.log);
if (!browser.ok) {
  console.error(browser.sentence);
  process.exitCode = 1;
} else {
  const kept = join(root, 'reports', 'web-speed.json');
  rmSync(kept, { force: true });
  spawnSync(
    process.execPath,
    [join(root, 'node_modules', '@playwright', 'test', 'cli.js'), 'test', '--project=speed', '--no-deps'],
    { cwd: root, stdio: 'ignore', env: { ...process.env, CHROMIUM_PATH: browser.path } },
  );
  const rows = existsSync(kept) ? JSON.parse(readFileSync(kept, 'utf8')) : [];
  if (rows.length === 0)
    say(false, 'nothing could be measured: npx playwright test --project=speed --no-deps');
  for (const { what, value, unit, most: limit } of rows) {
    const digits = unit === 'ms' ? 0 : unit === 's' ? 2 : 4;
    const bound = unit === '' ? '' : ` ${unit}`;
    say(value <= limit, `${what}: ${value.toFixed(digits)}${bound} (target ${limit}${bound})`);
  }
}
