import { createHighsSolver } from '@waymend/solver/highs-solver';
import wasmUrl from 'highs/runtime?url';
import type { Solver } from '@waymend/core/choosing/solver-port';
import { answer } from './answer.ts';
import { READER } from './belongings/reader-name.ts';
import type { Answering, Asking, Start } from './protocol.ts';
import { ownNames, worded } from './trip/worded.ts';

/**
 * The long-lived worker: reads, plans, proves and explains, so that the page never waits. A second one of it, named for
 * reading, answers while a proof runs in the first; it loads no solver.
 */
const solver: Promise<Solver> =
  self.name === READER
    ? Promise.resolve({ solve: () => ({ kind: 'failed', cause: 'the reader solves nothing' }) })
    : createHighsSolver({ locateFile: () => wasmUrl });
let stop: Int32Array | null = null;

addEventListener('message', ({ data }: MessageEvent<Start | Asking>) => {
  if ('kind' in data) {
    stop = data.stop === null ? null : new Int32Array(data.stop);
    return;
  }
  void serve(data);
});

async function serve({ number, request, wording }: Asking): Promise<void> {
  const own = ownNames(request);
  const say = (reply: Answering['reply'], last: boolean): void => {
    const message: Answering = { number, reply: worded(reply, wording, own), last };
    postMessage(message);
  };
  try {
    await answer(request, {
      solver: await solver,
      clock: () => performance.now() / 1000,
      // Requests are numbered upwards; the flag holds the newest number that is no longer wanted.
      stopAsked: () => stop !== null && Atomics.load(stop, 0) >= number,
      say,
    });
  } catch (cause) {
    console.error(cause);
    say({ kind: 'broken', cause: cause instanceof Error ? cause.message : String(cause) }, true);
  }
}
