import 'fake-indexeddb/auto';
import { emptyGarage } from '@waymend/garage/log/empty-garage';
import type { Garage } from '@waymend/garage/record/schema';
import type { OpenRecord, RecordSurroundings } from '../../src/record/open-record.ts';
import { openRecord } from '../../src/record/open-record.ts';
import type { Channel } from '../../src/record/tabs.ts';

/** A browser of the tests: one database, a clock, and channels that join the tabs. */
export class Browser {
  factory: IDBFactory = new IDBFactory();
  now = 1_700_000_000_000;
  readonly waiting: (() => void)[] = [];
  private ids = 0;
  private readonly tabs = new Map<string, Set<Channel>>();

  around(name = 'mine'): RecordSurroundings {
    return {
      name,
      indexedDB: this.factory,
      now: () => (this.now += 1000),
      randomId: () => `id${++this.ids}`,
      channel: (key) => this.join(key),
      later: (_ms, then) => void this.waiting.push(then),
    };
  }

  async open(name?: string): Promise<OpenRecord> {
    const opened = await openRecord(this.around(name));
    if (!opened.ok) throw new Error(opened.error.message);
    return opened.value;
  }

  /** Lets the timers that wait now go off. */
  ring(): void {
    for (const then of this.waiting.splice(0)) then();
  }

  private join(key: string): Channel {
    const all = this.tabs.get(key) ?? new Set<Channel>();
    this.tabs.set(key, all);
    const channel: Channel = {
      onmessage: null,
      postMessage: (message) => {
        for (const other of all)
          if (other !== channel)
            setTimeout(() =>
              other.onmessage?.(new MessageEvent('message', { data: structuredClone(message) })),
            );
      },
      close: () => void all.delete(channel),
    };
    all.add(channel);
    return channel;
  }
}

export function withBag(id: string, name: string): (garage: Garage) => Garage {
  return (garage) => ({ ...garage, bags: { ...garage.bags, [id]: { name, grams: 0 } } });
}

export function rename(name: string): (garage: Garage) => Garage {
  return (garage) => ({ ...garage, name });
}

export const EMPTY = emptyGarage();

/** Until something is so, or the test fails by running out of time. */
export async function until(isSo: () => boolean): Promise<void> {
  while (!isSo())
    await new Promise((resolve) => {
      setTimeout(resolve, 1);
    });
}
