import type { Change } from '@waymend/garage/log/change';
import type { ChangeStore } from './change-store.ts';
import { nameOf } from './database.ts';

export type Saved = 'saved' | 'saving' | { readonly failed: string };

interface Waiting {
  readonly changes: readonly Change[];
  readonly written: () => void;
}

const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 60_000;

/**
 * Writes steps in the order they were made, one transaction at a time, each with all that waits. What could not be written stays
 * and is tried again: at once with the next step, and after a while by itself.
 */
export class Writer {
  private readonly store: ChangeStore;
  private readonly later: (ms: number, then: () => void) => void;
  private readonly onState: (saved: Saved) => void;
  private readonly onWritten: (keys: readonly string[]) => void;
  private readonly queue: Waiting[] = [];
  private running = false;
  private waiting = false;
  private wait = FIRST_WAIT_MS;
  private stopped = false;

  constructor(
    store: ChangeStore,
    later: (ms: number, then: () => void) => void,
    onState: (saved: Saved) => void,
    onWritten: (keys: readonly string[]) => void,
  ) {
    this.store = store;
    this.later = later;
    this.onState = onState;
    this.onWritten = onWritten;
  }

  /** Resolves when the transaction with these changes has committed, however many tries that takes. */
  write(changes: readonly Change[]): Promise<void> {
    return new Promise((resolve) => {
      this.queue.push({ changes, written: resolve });
      if (this.running) this.onState('saving');
      else this.run();
    });
  }

  stop(): void {
    this.stopped = true;
  }

  private run(): void {
    if (!this.running && !this.stopped) void this.drain();
  }

  private async drain(): Promise<void> {
    this.running = true;
    try {
      while (this.queue.length > 0) {
        this.onState('saving');
        const taken = [...this.queue];
        const failed = await this.tryOnce(taken);
        if (failed !== null) {
          this.onState({ failed });
          this.store.close();
          this.tryAgainLater();
          return;
        }
        this.wait = FIRST_WAIT_MS;
        this.queue.splice(0, taken.length);
        if (this.queue.length === 0) this.onState('saved');
        for (const { written } of taken) written();
      }
    } finally {
      // In the same breath as the last look at the queue: who writes after this starts anew.
      this.running = false;
    }
  }

  private tryAgainLater(): void {
    if (this.waiting) return;
    this.waiting = true;
    this.later(this.wait, () => {
      this.waiting = false;
      this.run();
    });
    this.wait = Math.min(this.wait * 2, LONGEST_WAIT_MS);
  }

  /** Null when it is on the disk, else a sentence. */
  private async tryOnce(taken: readonly Waiting[]): Promise<string | null> {
    try {
      const written = await this.store.append(taken.map(({ changes }) => changes));
      if (!written.ok) return written.error.message;
      this.onWritten(written.value);
      return null;
    } catch (cause) {
      return sentenceOf(cause);
    }
  }
}

function sentenceOf(cause: unknown): string {
  if (nameOf(cause) === 'QuotaExceededError')
    return 'This device has no room left, and the last changes are not saved; free some space, or keep a copy as a file';
  return 'The browser could not save the last changes; they are kept on this page and tried again, so leave it open';
}
