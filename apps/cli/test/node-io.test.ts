import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nodeIo } from '../src/node-io.ts';
import { generationOf, sealed } from './support/sealed.ts';

const KILLS = 30;
/** Several writes' worth of time, so that the end comes at any point of one. */
const LONGEST_LIFE_MS = 60;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'waymend-io-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const quiet = { interactive: false, colour: false, stopAsked: () => false };

describe('writing a file', () => {
  it(`killed ${KILLS} times in the middle, always leaves the old file or the new one`, async () => {
    const writer = join(folder, 'writer.mjs');
    await build({
      stdin: {
        contents: `
          import { nodeIo } from '../src/node-io.ts';
          import { sealed } from './support/sealed.ts';
          const io = nodeIo({ interactive: false, colour: false, stopAsked: () => false });
          process.stdout.write('ready');
          for (let n = Number(process.argv[3]); ; n++) await io.write(process.argv[2], sealed(n));
        `,
        resolveDir: fileURLToPath(new URL('.', import.meta.url)),
      },
      outfile: writer,
      bundle: true,
      platform: 'node',
      format: 'esm',
    });
    const target = join(folder, 'garage.yaml');
    writeFileSync(target, sealed(0));
    let generation = 0;
    let grew = 0;
    for (let kill = 0; kill < KILLS; kill++) {
      await new Promise<void>((resolve, reject) => {
        const child = spawn(process.execPath, [writer, target, String(generation + 1)]);
        child.on('error', reject);
        child.on('exit', () => {
          resolve();
        });
        child.stdout.once('data', () => {
          setTimeout(() => child.kill('SIGKILL'), (kill / KILLS) * LONGEST_LIFE_MS);
        });
      });
      const found = generationOf(readFileSync(target, 'utf8')) ?? -1;
      expect(found, `after kill ${kill + 1}`).toBeGreaterThanOrEqual(generation);
      if (found > generation) grew += 1;
      generation = found;
    }
    // Otherwise nothing was ever being written when the end came.
    expect(grew).toBeGreaterThan(5);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part')).length).toBeGreaterThan(0);
  });

  it('leaves nothing beside a file that was written, and makes new ones', async () => {
    const place = join(folder, 'clean');
    mkdirSync(place);
    const io = nodeIo(quiet);
    expect(await io.write(join(place, 'a.yaml'), 'one\n')).toEqual({ kind: 'written' });
    expect(await io.write(join(place, 'a.yaml'), 'two\n')).toEqual({ kind: 'written' });
    expect(readFileSync(join(place, 'a.yaml'), 'utf8')).toBe('two\n');
    expect(readdirSync(place)).toEqual(['a.yaml']);
  });

  it('says why it could not, and leaves what was there', async () => {
    const io = nodeIo(quiet);
    expect(await io.write(join(folder, 'no-folder', 'a.yaml'), 'x')).toEqual({
      kind: 'unwritable',
      why: 'ENOENT',
    });
    const full = join(folder, 'is-a-folder');
    mkdirSync(full);
    writeFileSync(join(full, 'inside'), 'kept');
    expect(await io.write(full, 'x')).toMatchObject({ kind: 'unwritable' });
    expect(readFileSync(join(full, 'inside'), 'utf8')).toBe('kept');
    expect(readdirSync(folder).filter((name) => name.startsWith('.is-a-folder'))).toEqual([]);
  });
});

describe('reading a file', () => {
  it('gives its bytes, or says that it is missing, too big, or a folder', async () => {
    const io = nodeIo(quiet);
    const file = join(folder, 'b.yaml');
    writeFileSync(file, 'abc');
    const read = await io.read(file);
    expect(read.kind === 'bytes' ? [...read.bytes] : read).toEqual([97, 98, 99]);
    expect(await io.read(join(folder, 'nowhere'))).toEqual({ kind: 'missing' });
    expect(await io.read(folder)).toEqual({ kind: 'unreadable', why: 'EISDIR' });
    writeFileSync(file, Buffer.alloc(20_000_001));
    expect(await io.read(file)).toEqual({ kind: 'too-big', bytes: 20_000_001 });
  });
});
