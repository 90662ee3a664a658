import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Change } from '@waymend/garage/log/change';
import type { Database } from './database.ts';
import { openDatabase } from './database.ts';
import { batchesOf, changesIn, field } from './rows.ts';

const ALL = ['garages', 'changes', 'meta'] as const;

export interface Kept {
  readonly installation: string;
  /** Steps in the record when the owner last kept a copy elsewhere. */
  readonly copiedSteps: number;
  readonly changes: readonly Change[];
}

/** The changes of one garage in the browser's database. Opens it anew when it was closed underneath. */
export class ChangeStore {
  private readonly factory: IDBFactory;
  private readonly garage: string;
  /** Tells this garage from a later one of the same name. */
  private born = '';
  private database: Database | null = null;

  constructor(factory: IDBFactory, garage: string) {
    this.factory = factory;
    this.garage = garage;
  }

  /** Everything kept of the garage, which is made if there is none of the name. */
  async open(randomId: () => string): Promise<Result<Kept>> {
    const opened = await this.connect();
    if (!opened.ok) return opened;
    const tx = opened.value.transaction(ALL, 'readwrite', { durability: 'strict' });
    handled(tx.done);
    const [garages, changes, meta] = [
      tx.objectStore('garages'),
      tx.objectStore('changes'),
      tx.objectStore('meta'),
    ];
    const born: unknown = field(await garages.get(this.garage), 'born');
    if (typeof born === 'string') this.born = born;
    else {
      this.born = randomId();
      await garages.put({ name: this.garage, born: this.born });
    }
    // One for all garages of this browser and all its tabs.
    let installation: unknown = field(await meta.get(['', 'installation']), 'value');
    if (typeof installation !== 'string') {
      installation = randomId();
      await meta.put({ garage: '', key: 'installation', value: installation });
    }
    const copied: unknown = field(await meta.get([this.garage, 'copied']), 'value');
    const rows: readonly unknown[] = await changes.getAll(rangeOf(this.garage));
    await tx.done;
    return ok({
      installation: String(installation),
      copiedSteps: typeof copied === 'number' ? copied : 0,
      changes: rows.flatMap(changesIn),
    });
  }

  /** Writes the changes in one transaction, and resolves with the keys of what was written when it is on the disk. */
  async append(steps: readonly (readonly Change[])[]): Promise<Result<readonly string[]>> {
    const opened = await this.connect();
    if (!opened.ok) return opened;
    const tx = opened.value.transaction(['garages', 'changes'], 'readwrite', { durability: 'strict' });
    handled(tx.done);
    const there: unknown = field(await tx.objectStore('garages').get(this.garage), 'born');
    if (there !== this.born) {
      await tx.done;
      return removed();
    }
    const store = tx.objectStore('changes');
    const batches = steps.flatMap((changes) => batchesOf(this.garage, changes));
    // A second try may meet what the first has written: the same id is the same change.
    await Promise.all([...batches.map((batch) => store.put(batch)), tx.done]);
    return ok(batches.map(({ id }) => id));
  }

  /** The batches of these keys; null where one is not there. */
  async read(keys: readonly string[]): Promise<readonly (readonly Change[] | null)[]> {
    const opened = await this.connect();
    if (!opened.ok) return keys.map(() => null);
    const tx = opened.value.transaction('changes', 'readonly');
    handled(tx.done);
    const rows: readonly unknown[] = await Promise.all(keys.map((key) => tx.store.get([this.garage, key])));
    await tx.done;
    return rows.map((row) => (row === undefined ? null : changesIn(row)));
  }

  async keys(): Promise<readonly string[]> {
    const opened = await this.connect();
    if (!opened.ok) return [];
    const keys = await opened.value.getAllKeys('changes', rangeOf(this.garage));
    return keys.flatMap((key) => (Array.isArray(key) && typeof key[1] === 'string' ? [key[1]] : []));
  }

  async noteCopied(steps: number): Promise<void> {
    const opened = await this.connect();
    if (!opened.ok) return;
    const tx = opened.value.transaction(['garages', 'meta'], 'readwrite', { durability: 'strict' });
    handled(tx.done);
    // A garage made anew under the name has no copy yet.
    if (field(await tx.objectStore('garages').get(this.garage), 'born') === this.born)
      await tx.objectStore('meta').put({ garage: this.garage, key: 'copied', value: steps });
    await tx.done;
  }

  /** Whatever is asked for next opens it anew. */
  close(): void {
    this.database?.close();
    this.database = null;
  }

  private async connect(): Promise<Result<Database>> {
    if (this.database !== null) return ok(this.database);
    const opened = await openDatabase(this.factory);
    if (opened.ok) this.database = opened.value;
    return opened;
  }
}

/** Every key of a garage in `changes` and `meta`. */
export function rangeOf(garage: string): IDBKeyRange {
  return IDBKeyRange.bound([garage], [garage, []]);
}

/** What a tab says whose garage was removed in another one. */
export const REMOVED =
  'This garage was removed in another tab, and changes can no longer be saved here; keep a copy as a file';

const removed = (): Result<never> => refuse('garage-removed', REMOVED);

/** A transaction that breaks off is told by the request that is waited for; `done` says it a second time. */
export function handled(done: Promise<void>): void {
  done.catch(() => undefined);
}
