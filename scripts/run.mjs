#!/usr/bin/env node
// The two commands of the README, on a machine with nothing but Node and git: `npm start` and `npm test`
// (also `npm run check`, `npm run bench` and `npm run screens`). Uses Node's own modules only, because nothing else is
// there yet; what needs more is imported after the install.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isFresh } from './freshness.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [task = 'start', ...rest] = process.argv.slice(2);
const windows = process.platform === 'win32';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Waymend needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

/** Runs a command with its output shown; stops with its exit code when it fails. */
function run(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (done.error) throw done.error;
  if (done.status !== 0) process.exit(done.status ?? 1);
}

function install() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const wanted = createHash('sha256')
    .update(lock)
    .update(`${major}-${process.platform}-${process.arch}`)
    .digest('hex');
  const stamp = join(root, 'node_modules', '.setup-stamp');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  console.error('Installing what is missing (once) ...');
  run(windows ? 'npm.cmd' : 'npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: windows,
    // The browser for the tests is looked for when they run.
    env: { ...process.env, PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '1' },
  });
  writeFileSync(stamp, wanted);
}

const inRoot = (...paths) => paths.map((path) => join(root, path));
const bin = (name) => join(root, 'node_modules', '.bin', windows ? `${name}.cmd` : name);

async function buildCli() {
  const [out] = inRoot('apps/cli/dist/waymend.mjs');
  if (isFresh(out, inRoot('packages', 'apps/cli', 'scripts/bundle.mjs', 'package-lock.json'))) return;
  mkdirSync(dirname(out), { recursive: true });
  const { bundleCli } = await import('./bundle.mjs');
  await bundleCli(root);
}

function buildPage() {
  const [out] = inRoot('apps/web/dist/index.html');
  if (
    isFresh(out, inRoot('packages', 'apps/web', 'examples', 'scripts/script-size.mjs', 'package-lock.json'))
  )
    return;
  console.error('Building the planner (once after each change) ...');
  run(bin('vite'), ['build', 'apps/web', '--logLevel', 'error'], {
    stdio: ['ignore', 2, 2],
    shell: windows,
  });
  run(process.execPath, [join('scripts', 'script-size.mjs')], { stdio: ['ignore', 2, 2] });
}

install();
await buildCli();
switch (task) {
  case 'start': {
    buildPage();
    const { start } = await import('./start.mjs');
    process.exitCode = await start(root, rest);
    break;
  }
  case 'test': {
    buildPage();
    const { test } = await import('./test.mjs');
    process.exitCode = await test(root, rest);
    break;
  }
  case 'check':
    buildPage();
    run(process.execPath, [join('scripts', 'check.mjs'), ...rest]);
    break;
  case 'bench':
    buildPage();
    run(process.execPath, [join('scripts', 'bench.mjs'), ...rest]);
    break;
  case 'screens':
    buildPage();
    run(process.execPath, [join('scripts', 'screens.mjs'), ...rest]);
    break;
  case 'build':
    buildPage();
    break;
  default:
    console.error(`Unknown task ${task}: use start, test, check, bench, screens or build.`);
    process.exit(2);
}
