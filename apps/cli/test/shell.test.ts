import { execFile, execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WAGON } from './support/wagon.ts';

/** The program as it is shipped: bundled, and started as a process of its own. */
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const PROGRAM = join(ROOT, 'node_modules', '.cache', 'waymend', 'shell-test.mjs');
const ESCAPE = '\u001b';

let folder = '';
let file = '';
beforeAll(() => {
  const bundle = `import('./scripts/bundle.mjs').then((b) => b.bundle('apps/cli/src/main.ts', ${JSON.stringify(PROGRAM)}))`;
  execFileSync(process.execPath, ['-e', bundle], { cwd: ROOT });
  folder = mkdtempSync(join(tmpdir(), 'waymend-shell-'));
  file = join(folder, 'wagon.garage.yaml');
  writeFileSync(file, WAGON);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

function start(...argv: readonly string[]): Promise<Ended> {
  return new Promise((resolve) => {
    execFile(process.execPath, [PROGRAM, ...argv], { maxBuffer: 1e8 }, (cause, out, err) => {
      resolve({ code: typeof cause?.code === 'number' ? cause.code : 0, out, err });
    });
  });
}

describe('the program', () => {
  it('ends with 0 when done, 1 on refused input, 2 on wrong usage, 3 when there is no plan', async () => {
    const check = await start('check', file);
    expect(check.code).toBe(0);
    expect(check.out).toContain('is in order');
    expect((await start('check', join(folder, 'nowhere.yaml'))).code).toBe(1);
    expect((await start('fly')).code).toBe(2);
    const none = await start('plan', file, '--limit', '1 kg');
    expect(none.code).toBe(3);
    expect(none.err).toContain('more than the mass limit allows');
  });

  it('prints the whole of a long answer into a pipe, and nothing else', async () => {
    const { out, err, code } = await start('plan', file, '--json');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(JSON.parse(out)).toMatchObject({ schema: 'waymend.plan/1', status: 'proven' });
    expect(out.length).toBeGreaterThan(65_536);
    expect(out).not.toContain(ESCAPE);
  });

  it('writes the garage it was asked to, and the file reads back', async () => {
    const garage = join(folder, 'new.yaml');
    const list = join(folder, 'list.txt');
    writeFileSync(list, '1/2 deep sockets 17 19 21\n');
    const made = await start('import', garage, list, '--new', 'Mine');
    expect(made.code).toBe(0);
    expect(existsSync(garage)).toBe(false);
    expect((await start('import', garage, list, '--new', 'Mine', '--write')).code).toBe(0);
    expect(readFileSync(garage, 'utf8')).toContain('is: SD2-19');
  });

  it('does not mind a reader that has seen enough', async () => {
    const ended = await new Promise<{ code: number | null; err: string }>((resolve) => {
      const real = spawn(process.execPath, [PROGRAM, 'tables', 'belongings', '--json']);
      let err = '';
      real.stderr.on('data', (data: Buffer) => (err += data.toString()));
      real.stdout.once('data', () => real.stdout.destroy());
      real.on('close', (code) => {
        resolve({ code, err });
      });
    });
    expect(ended).toEqual({ code: 0, err: '' });
  });
});

// `script` of util-linux gives a program a terminal that is none; a container may have no terminals to give.
const hasScript =
  process.platform === 'linux' && spawnSync('script', ['-qec', 'true', '/dev/null']).status === 0;

describe.skipIf(!hasScript)('on a terminal', () => {
  const onTerminal = (more: Readonly<Record<string, string>>) =>
    execFileSync('script', ['-qec', `"${process.execPath}" "${PROGRAM}" tables jobs`, '/dev/null'], {
      encoding: 'utf8',
      env: { PATH: process.env['PATH'] ?? '', TERM: 'xterm', ...more },
    });

  it('prints headings in bold', () => {
    expect(onTerminal({})).toContain(`${ESCAPE}[1m`);
    expect(onTerminal({ NO_COLOR: '' })).toContain(`${ESCAPE}[1m`);
  });

  it.each([{ NO_COLOR: '1' }, { TERM: 'dumb' }])('prints no code at all with %o', (environment) => {
    const printed = onTerminal(environment);
    expect(printed).toContain('Repairs that can be done at the roadside');
    expect(printed).not.toContain(ESCAPE);
  });
});
