import { isMainThread, Worker, workerData } from 'node:worker_threads';
import { nodeIo } from './node-io.ts';
import { run } from './run.ts';

/** What the main thread tells the working one: the terminal's nature, and a flag that Ctrl-C raises. */
interface Errand {
  readonly argv: readonly string[];
  readonly flag: SharedArrayBuffer;
  readonly interactive: boolean;
  readonly colour: boolean;
}

/** A person who presses Ctrl-C again does not want the best plan so far. */
const INTERRUPTED = 130;

if (isMainThread) {
  // The solver works without a break, so the thread that listens for Ctrl-C is another one: the first press stops the
  // search with the best plan so far and its gap, the second leaves at once.
  const flag = new SharedArrayBuffer(4);
  const raised = new Int32Array(flag);
  const errand: Errand = {
    argv: process.argv.slice(2),
    flag,
    interactive: process.stderr.isTTY,
    colour: process.stdout.isTTY && (process.env['NO_COLOR'] ?? '') === '' && process.env['TERM'] !== 'dumb',
  };
  const worker = new Worker(new URL(import.meta.url), { workerData: errand });
  process.on('SIGINT', () => {
    if (Atomics.exchange(raised, 0, 1) === 1) process.exit(INTERRUPTED);
  });
  // The reader has seen enough (`waymend plan FILE | head`): nothing is wrong.
  process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
    if (cause.code === 'EPIPE') process.exit(0);
    throw cause;
  });
  worker.on('error', (cause) => {
    process.stderr.write(`${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}\n`);
    process.exitCode = 70;
  });
  worker.on('exit', (code) => {
    process.exitCode ??= code;
  });
} else {
  const { argv, flag, interactive, colour } = workerData as Errand;
  const raised = new Int32Array(flag);
  process.exitCode = await run(
    argv,
    nodeIo({ interactive, colour, stopAsked: () => Atomics.load(raised, 0) === 1 }),
  );
}
