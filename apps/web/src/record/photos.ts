import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { IDBPTransaction } from 'idb';
import { handled, rangeOf } from './change-store.ts';
import { openDatabase } from './database.ts';
import { field } from './rows.ts';

/** What the photos of a garage take of this device. */
export interface PhotoTotals {
  readonly count: number;
  readonly bytes: number;
}

/**
 * Photos of places of a vehicle, one for each place. They lie beside the record and are no part of it: no step, no undo, and in no
 * copy. `place` names a vehicle and a place of it, see photoKey.
 */
export class PhotoStore {
  private readonly factory: IDBFactory;
  private readonly garage: string;

  constructor(factory: IDBFactory, garage: string) {
    this.factory = factory;
    this.garage = garage;
  }

  /** Keeps a JPEG in place of the one before; refuses when the garage was removed meanwhile. */
  async put(place: string, jpeg: Blob): Promise<Result<null>> {
    // Bytes rather than a blob: some browsers lose blobs of their database.
    const bytes = await jpeg.arrayBuffer();
    return this.within(async (tx) => {
      if ((await tx.objectStore('garages').get(this.garage)) === undefined)
        return refuse('garage-removed', 'This garage was removed in another tab; the photo was not kept');
      await tx.objectStore('photos').put({ garage: this.garage, place, bytes });
      return ok(null);
    });
  }

  async get(place: string): Promise<Result<Blob | null>> {
    return this.within(async (tx) => {
      const bytes = field(await tx.objectStore('photos').get([this.garage, place]), 'bytes');
      return ok(bytes instanceof ArrayBuffer ? new Blob([bytes], { type: 'image/jpeg' }) : null);
    });
  }

  async remove(place: string): Promise<Result<null>> {
    return this.within(async (tx) => {
      await tx.objectStore('photos').delete([this.garage, place]);
      return ok(null);
    });
  }

  async totals(): Promise<Result<PhotoTotals>> {
    return this.within(async (tx) => {
      const rows: readonly unknown[] = await tx.objectStore('photos').getAll(rangeOf(this.garage));
      const sizes = rows.map((row) => field(row, 'bytes')).filter((bytes) => bytes instanceof ArrayBuffer);
      return ok({ count: sizes.length, bytes: sizes.reduce((sum, { byteLength }) => sum + byteLength, 0) });
    });
  }

  private async within<T>(work: (tx: Opened) => Promise<Result<T>>): Promise<Result<T>> {
    const opened = await openDatabase(this.factory);
    if (!opened.ok) return opened;
    try {
      const tx = opened.value.transaction(['garages', 'photos'], 'readwrite');
      handled(tx.done);
      const done = await work(tx);
      await tx.done;
      return done;
    } catch {
      return refuse('photo-not-kept', 'The photo was not kept: no room is left, or the browser forbids it');
    } finally {
      opened.value.close();
    }
  }
}

type Opened = IDBPTransaction<unknown, string[], 'readwrite'>;
