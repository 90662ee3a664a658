#!/usr/bin/env node
// The two commands of the README, on a machine with nothing but Node and git: `npm start` and `npm test`
// (also `npm run check` and `npm run bench`). Uses Node's own modules only, because nothing else is there yet.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [task = 'start', ...rest] = process.argv.slice(2);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Waymend needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

/** Runs a command with its output shown; stops with its exit code when it fails. */
function run(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (done.error) throw done.error;
  if (done.status !== 0 && !options.keepGoing) process.exit(done.status ?? 1);
  return done.status ?? 1;
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
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  run(npm, ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  writeFileSync(stamp, wanted);
}

/** Newest change below a folder, so that the bundle is rebuilt only when a source is newer. */
function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name === 'dist' || entry.name === 'test') continue;
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return latest;
}

async function build() {
  const out = join(root, 'apps', 'cli', 'dist', 'waymend.mjs');
  const sources = Math.max(
    newest(join(root, 'packages')),
    newest(join(root, 'apps')),
    newest(join(root, 'scripts')),
  );
  if (existsSync(out) && statSync(out).mtimeMs >= sources) return;
  mkdirSync(dirname(out), { recursive: true });
  const { bundleCli } = await import('./bundle.mjs');
  await bundleCli(root);
}

const bin = (name) => join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);
const waymend = join(root, 'apps', 'cli', 'bin', 'waymend.mjs');

install();
switch (task) {
  case 'start':
    await build();
    run(process.execPath, [waymend, 'plan', join('examples', 'demo.garage.yaml'), ...rest]);
    break;
  case 'test':
    await build();
    run(bin('vitest'), ['run', ...rest], { shell: process.platform === 'win32' });
    break;
  case 'check':
    await build();
    run(process.execPath, [join('scripts', 'check.mjs'), ...rest]);
    break;
  case 'bench':
    await build();
    run(process.execPath, [join('scripts', 'bench.mjs'), ...rest]);
    break;
  case 'build':
    await build();
    break;
  default:
    console.error(`Unknown task ${task}: use start, test, check, bench or build.`);
    process.exit(2);
}
