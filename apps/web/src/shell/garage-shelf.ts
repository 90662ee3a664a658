import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import { createGarage, listGarages, noteCopyOf, readGarage, removeGarage } from '../record/garages.ts';
import type { KeptGarage } from '../record/garages.ts';
import type { RecordSurroundings } from '../record/open-record.ts';
import { openRecord } from '../record/open-record.ts';
import { channelOf } from '../record/tabs.ts';
import { FIRST_GARAGE } from './chosen-garage.ts';

/** The garages of this browser, of which this tab has one open. */
export interface GarageShelf {
  /** Of the garage that is open here. */
  readonly openKey: string;
  readonly list: () => Promise<Result<readonly KeptGarage[]>>;
  /** Makes an empty garage of that name and opens it in this tab. */
  readonly make: (title: string, name: string) => Promise<Result<null>>;
  /** Loads the page again with another garage; call it when everything is written. */
  readonly open: (key: string) => void;
  readonly rename: (key: string, title: string, name: string) => Promise<Result<null>>;
  readonly noteCopy: (key: string, steps: number) => Promise<Result<null>>;
  /** For good; the tab that has it open goes on with another, and others that have it say so. */
  readonly remove: (key: string) => Promise<Result<null>>;
}

export interface ShelfPort extends Omit<RecordSurroundings, 'name'> {
  /** Remembers the garage and loads the page again. */
  readonly load: (key: string) => void;
}

export function openShelf(openKey: string, port: ShelfPort): GarageShelf {
  const factory = port.indexedDB;
  const list = async (): Promise<Result<readonly KeptGarage[]>> => {
    const keys = await listGarages(factory);
    if (!keys.ok) return keys;
    const kept: KeptGarage[] = [];
    for (const key of keys.value) {
      const read = await readGarage(factory, key);
      if (!read.ok) return read;
      if (read.value !== null) kept.push(read.value);
    }
    return ok(kept);
  };
  const rename = async (key: string, title: string, name: string): Promise<Result<null>> => {
    const opened = await openRecord({ ...port, name: key });
    if (!opened.ok) return opened;
    await opened.value.edit(title, (garage) => ({ ...garage, name }));
    opened.value.close();
    return ok(null);
  };
  return {
    openKey,
    list,
    rename,
    open: port.load,
    make: async (title, name) => {
      const key = await createGarage(factory, `garage-${port.randomId()}`, port.randomId);
      if (!key.ok) return key;
      const named = await rename(key.value, title, name);
      if (named.ok) port.load(key.value);
      return named;
    },
    noteCopy: (key, steps) => noteCopyOf(factory, key, steps),
    remove: async (key) => {
      const gone = await removeGarage(factory, key);
      if (!gone.ok) return gone;
      const channel = port.channel(channelOf(key));
      channel?.postMessage({ kind: 'removed' });
      channel?.close();
      if (key === openKey) {
        const left = await listGarages(factory);
        port.load(left.ok ? (left.value[0] ?? FIRST_GARAGE) : FIRST_GARAGE);
      }
      return gone;
    },
  };
}
