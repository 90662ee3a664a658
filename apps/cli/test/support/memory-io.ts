import type { ExitCode, Io } from '../../src/io.ts';
import { run } from '../../src/run.ts';

export interface MachineOptions {
  /** Files by path; text or bytes. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly colour?: boolean;
  readonly interactive?: boolean;
  /** Milliseconds until the person asks to stop; never, when absent. */
  readonly stopAfter?: number;
  /** Paths that cannot be written. */
  readonly locked?: readonly string[];
  /** Paths whose size is said to be this many bytes, too many to read. */
  readonly huge?: Readonly<Record<string, number>>;
}

export interface Ran {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
  /** Files written, in order. */
  readonly written: readonly { readonly path: string; readonly data: string }[];
}

/** Runs one command line on a machine that is only memory. */
export async function runOn(machine: MachineOptions, ...argv: readonly string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const written: { path: string; data: string }[] = [];
  const files = new Map(Object.entries(machine.files ?? {}));
  const huge = new Map(Object.entries(machine.huge ?? {}));
  const started = performance.now();
  const io: Io = {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    interactive: machine.interactive ?? false,
    colour: machine.colour ?? false,
    read: (path) => {
      const bytes = huge.get(path);
      if (bytes !== undefined) return Promise.resolve({ kind: 'too-big', bytes });
      const data = files.get(path);
      if (data === undefined) return Promise.resolve({ kind: 'missing' });
      return Promise.resolve({
        kind: 'bytes',
        bytes: typeof data === 'string' ? new TextEncoder().encode(data) : data,
      });
    },
    write: (path, data) => {
      if (machine.locked?.includes(path) === true)
        return Promise.resolve({ kind: 'unwritable', why: 'EACCES' });
      written.push({ path, data });
      return Promise.resolve({ kind: 'written' });
    },
    clock: () => performance.now(),
    stopAsked: () => performance.now() - started > (machine.stopAfter ?? Number.POSITIVE_INFINITY),
  };
  const code = await run(argv, io);
  return { code, out: out.join(''), err: err.join(''), written };
}
