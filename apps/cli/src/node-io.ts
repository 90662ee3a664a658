import { randomBytes } from 'node:crypto';
import { open, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Io, ReadOutcome, WriteOutcome } from './io.ts';

/** Larger files are refused before they are read: no garage or list comes near (a 20,000-line list is about 1 MB). */
const MOST_BYTES = 20_000_000;

export function nodeIo(terminal: Pick<Io, 'interactive' | 'colour' | 'stopAsked'>): Io {
  return {
    ...terminal,
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    read,
    write: writeWhole,
    clock: () => performance.now(),
  };
}

async function read(path: string): Promise<ReadOutcome> {
  try {
    const { size } = await stat(path);
    if (size > MOST_BYTES) return { kind: 'too-big', bytes: size };
    return { kind: 'bytes', bytes: await readFile(path) };
  } catch (cause) {
    const why = whyOf(cause);
    return why === 'ENOENT' ? { kind: 'missing' } : { kind: 'unreadable', why };
  }
}

/** Written beside the target, flushed to disk, then renamed over it: a crash leaves the old file or the new one. */
async function writeWhole(path: string, data: string): Promise<WriteOutcome> {
  const beside = join(dirname(path), `.${basename(path)}.${randomBytes(6).toString('hex')}.part`);
  try {
    const file = await open(beside, 'wx', 0o644);
    try {
      await file.writeFile(data, 'utf8');
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
    return { kind: 'written' };
  } catch (cause) {
    await rm(beside, { force: true });
    return { kind: 'unwritable', why: whyOf(cause) };
  }
}

/** The system's own name for what went wrong ('EACCES', 'ENOSPC'); anything else is a bug and goes on up. */
function whyOf(cause: unknown): string {
  if (cause instanceof Error && 'code' in cause && typeof cause.code === 'string') return cause.code;
  throw cause;
}
