// A Chromium for the tests, on a machine that may have none and no way to get one but the package registry: what is named,
// what was fetched before, what is installed, Playwright's own, the system's, one that comes as an npm package.
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** The newest release of this package that runs on Node 20; for Linux on x64 only. */
const PACKAGE = '@sparticuz/chromium';
const PACKAGE_VERSION = '147.0.0';

const NOTHING =
  'No browser for the tests could be had here: install Chromium or Chrome, or name one in CHROMIUM_PATH, and run this again.';

/** A browser that is here already, without fetching anything; null when there is none. */
export function installedBrowser(root) {
  const named = process.env.CHROMIUM_PATH;
  if (named) return named;
  return (
    [cachedPath(root), ...systemPaths(), playwrightsOwn(root)].find((path) => path && starts(path)) ?? null
  );
}

/** Climbs the ladder; `say` hears what is being fetched. */
export async function findBrowser(root, say) {
  const named = process.env.CHROMIUM_PATH;
  if (named)
    return starts(named)
      ? { ok: true, path: named }
      : { ok: false, sentence: `CHROMIUM_PATH names ${named}, which does not start.` };
  const here = installedBrowser(root);
  if (here) return { ok: true, path: here };
  const rungs = [
    ["Playwright's own browser", () => fetchPlaywrights(root)],
    ["the system's Chromium", () => fetchFromSystem()],
    // Last, for a machine without root: it is older than what people have.
    [`the browser in the npm package ${PACKAGE}`, () => fetchPackage(root)],
  ];
  for (const [what, fetch] of rungs) {
    say(`Looking for a browser for the tests: trying ${what} (once) ...`);
    const path = await fetch();
    if (path && starts(path)) return { ok: true, path };
  }
  return { ok: false, sentence: NOTHING };
}

/** Whether it runs at all: a binary without its libraries is no browser. */
function starts(path) {
  if (!existsSync(path)) return false;
  // Asking for the version opens a window there.
  if (process.platform === 'win32') return true;
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;
}

function systemPaths() {
  const inPath = (process.env.PATH ?? '').split(process.platform === 'win32' ? ';' : ':');
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
  switch (process.platform) {
    case 'darwin':
      return ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
        ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((app) =>
          join(folder, `${app}.app`, 'Contents', 'MacOS', app),
        ),
      );
    case 'win32':
      return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
        .filter((folder) => folder !== undefined)
        .flatMap((folder) => [
          join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
          join(folder, 'Chromium', 'Application', 'chrome.exe'),
          join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
        ]);
    default:
      return inPath.flatMap((folder) => names.map((name) => join(folder, name)));
  }
}

function playwrightsOwn(root) {
  const require = createRequire(join(root, 'package.json'));
  const { chromium } = require('@playwright/test');
  const whole = chromium.executablePath();
  if (existsSync(whole)) return whole;
  // The headless shell lies beside it under a name of its own.
  const [folder] = whole.split(/[\\/]chromium-\d+[\\/]/);
  if (!folder || !existsSync(folder)) return null;
  const shells = readdirSync(folder).filter((name) => name.startsWith('chromium_headless_shell-'));
  const inside = ['chrome-headless-shell-linux64/chrome-headless-shell', 'chrome-linux/headless_shell'];
  return (
    shells
      .flatMap((shell) => inside.map((path) => join(folder, shell, path)))
      .find((path) => existsSync(path)) ?? null
  );
}

function fetchPlaywrights(root) {
  const cli = join(root, 'node_modules', '@playwright', 'test', 'cli.js');
  spawnSync(process.execPath, [cli, 'install', '--only-shell', 'chromium'], {
    cwd: root,
    stdio: 'ignore',
    timeout: 180_000,
    env: { ...process.env, PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '' },
  });
  return playwrightsOwn(root);
}

const cacheFolder = (root) => join(root, '.cache', 'browser');
const cachedPath = (root) => join(cacheFolder(root), 'chromium.sh');

/** Unpacks the package below .cache and writes a small script that starts it with its own libraries. */
async function fetchPackage(root) {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  const folder = cacheFolder(root);
  const unpacked = join(folder, 'unpacked');
  mkdirSync(unpacked, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  const npm = spawnSync(
    'npm',
    ['install', '--no-audit', '--no-fund', '--no-save', '--loglevel=error', `${PACKAGE}@${PACKAGE_VERSION}`],
    { cwd: folder, stdio: ['ignore', 'ignore', 'inherit'], timeout: 300_000 },
  );
  if (npm.status !== 0) return null;
  const entry = createRequire(join(folder, 'package.json')).resolve(PACKAGE);
  // It unpacks beside the temporary folder, and its libraries only when it believes to be where it was made for.
  const code = `const { default: c } = await import(${JSON.stringify(pathToFileURL(entry).href)}); console.log(await c.executablePath());`;
  const done = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    encoding: 'utf8',
    timeout: 120_000,
    env: { ...process.env, TMPDIR: unpacked, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
  });
  const binary = done.stdout.trim().split('\n').at(-1);
  if (done.status !== 0 || !binary) return null;
  const libraries = join(unpacked, 'al2023', 'lib');
  writeFileSync(
    cachedPath(root),
    `#!/bin/sh\nexport LD_LIBRARY_PATH="${libraries}:$LD_LIBRARY_PATH"\nexec "${binary}" "$@"\n`,
  );
  chmodSync(cachedPath(root), 0o755);
  return cachedPath(root);
}

function fetchFromSystem() {
  if (process.platform !== 'linux') return null;
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const apt = (...args) => {
    const [command, ...rest] = [...asRoot, 'apt-get', ...args];
    return spawnSync(command, rest, {
      stdio: 'ignore',
      timeout: 400_000,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status;
  };
  if (apt('update') !== 0) return null;
  if (apt('install', '-y', '--no-install-recommends', 'chromium') !== 0) return null;
  return systemPaths().find((path) => existsSync(path)) ?? null;
}
