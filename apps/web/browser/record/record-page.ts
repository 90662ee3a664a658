import type { Garage } from '@waymend/garage/record/schema';
import type { OpenRecord } from '../../src/record/open-record.ts';
import { openRecord } from '../../src/record/open-record.ts';
import { actsOf } from './random-edits.ts';

declare global {
  interface Window {
    bench: typeof bench;
    /** Tells whoever watches how many acts are acknowledged; a page that dies says nothing more. */
    acknowledged?: (name: string, acts: number) => void;
  }
}

/** A page with nothing but the record, for a test that ends it in the middle of its work. */
const bench = {
  /** Does the acts of a sequence, some one after another, some while others are still being written. */
  run: async (name: string, sequence: number, count: number): Promise<void> => {
    const record = await open(name);
    let written = 0;
    const acts = actsOf(sequence, count);
    const pending: Promise<void>[] = [];
    for (const [n, act] of acts.entries()) {
      const done = act.kind === 'undo' ? record.undo() : record.edit(act.title, act.change);
      const counted = done.then(() => {
        written = Math.max(written, n + 1);
        window.acknowledged?.(name, written);
      });
      pending.push(counted);
      if ((sequence + n) % 3 !== 0) await counted;
    }
    await Promise.all(pending);
  },
  read: async (name: string): Promise<Garage> => (await open(name)).getState().garage,
  /** Does a sequence in a frame of this page, and tears the frame out after so many milliseconds; answers with what was acknowledged. */
  runAndTear: async (name: string, sequence: number, count: number, ms: number): Promise<number> => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    const inside = frame.contentWindow;
    const script = frame.contentDocument?.createElement('script');
    if (inside === null || script === undefined) throw new Error('a frame without a window');
    script.type = 'module';
    script.src = new URL('/assets/record.js', location.href).href;
    const loaded = new Promise((resolve) => script.addEventListener('load', resolve));
    frame.contentDocument?.head.append(script);
    await loaded;
    let acknowledged = 0;
    inside.acknowledged = (_, acts) => {
      acknowledged = acts;
    };
    void inside.bench.run(name, sequence, count).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, ms));
    frame.remove();
    return acknowledged;
  },
};
window.bench = bench;

async function open(name: string): Promise<OpenRecord> {
  const opened = await openRecord({
    name,
    indexedDB,
    now: () => Date.now(),
    randomId: () => crypto.randomUUID().replaceAll('-', ''),
    channel: () => null,
    later: (ms, then) => void setTimeout(then, ms),
  });
  if (!opened.ok) throw new Error(opened.error.message);
  return opened.value;
}
