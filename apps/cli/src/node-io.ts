import { randomBytes } from 'node:crypto';
import { open, readFile, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Io, ReadOutcome } from './io.ts';

/** Larger files are refused before they are read: no garage or list comes near (a 20,000-line list is about 1 MB). */
const MOST_BYTES = 20_000_000;

export function nodeIo(): Io {
  let stop = false;
  process.once('SIGINT', () => {
    stop = true;
  });
  return {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    interactive: process.stderr.isTTY,
    colour: process.stdout.isTTY && process.env['NO_COLOR'] === undefined && process.env['TERM'] !== 'dumb',
    read,
    write: writeWhole,
    clock: () => performance.now(),
    stopAsked: () => stop,
  };
}

async function read(path: string): Promise<ReadOutcome> {
  try {
    const { size } = await stat(path);
    if (size > MOST_BYTES) return { kind: 'too-big', bytes: size };
    return { kind: 'bytes', bytes: await readFile(path) };
  } catch (cause) {
    const code = typeof cause === 'object' && cause !== null && 'code' in cause ? String(cause.code) : '';
    if (code === 'ENOENT') return { kind: 'missing' };
    return { kind: 'unreadable', why: code === '' ? String(cause) : code };
  }
}

/** Written beside the target, flushed to disk, then renamed over it: a crash leaves the old file or the new one. */
async function writeWhole(path: string, data: string): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${randomBytes(6).toString('hex')}.part`);
  const file = await open(beside, 'wx', 0o644);
  try {
    await file.writeFile(data, 'utf8');
    await file.sync();
  } catch (cause) {
    await file.close();
    await unlink(beside);
    throw cause;
  }
  await file.close();
  await rename(beside, path);
}
