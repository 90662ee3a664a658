// `npm test`: everything that runs in Node, then everything that needs a real browser; the last line counts both.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './browser.mjs';
import { closingLine } from './closing-line.mjs';

/** Arguments go to the first runner; the browser's tests always run whole. */
export async function test(root, args) {
  const windows = process.platform === 'win32';
  const bin = (name) => join(root, 'node_modules', '.bin', windows ? `${name}.cmd` : name);
  const run = (name, given, env = {}) =>
    spawnSync(bin(name), given, {
      cwd: root,
      stdio: 'inherit',
      shell: windows,
      env: { ...process.env, ...env },
    }).status ?? 1;
  const reports = join(root, 'reports');
  mkdirSync(reports, { recursive: true });
  for (const name of ['vitest.json', 'playwright.json']) rmSync(join(reports, name), { force: true });

  const inNode = run('vitest', [
    'run',
    '--reporter=default',
    '--reporter=json',
    '--outputFile.json=reports/vitest.json',
    ...args,
  ]);
  const browser = await findBrowser(root, (line) => console.log(line));
  let inBrowser = 1;
  if (browser.ok) {
    console.log(`The browser for the tests: ${browser.path}`);
    inBrowser = run('playwright', ['test'], { CHROMIUM_PATH: browser.path });
  } else console.error(browser.sentence);
  const { line, good, late } = closingLine(root);
  for (const title of late) console.log(`passed at the second try: ${title}`);
  console.log(line);
  return inNode === 0 && inBrowser === 0 && good ? 0 : 1;
}
