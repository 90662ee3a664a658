import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { wrap } from 'idb';
import type { IDBPDatabase } from 'idb';

const DATABASE = 'waymend';

/**
 * Version 1: `garages` (by name), `changes` (batches of one step, by garage and the id of the first change), `meta` (by garage and key).
 * Version 2: `photos` (by garage and the place of a vehicle), which are no part of the record. A later version adds its step below and
 * leaves what is there.
 */
export const DATABASE_VERSION = 2;

export type Database = IDBPDatabase;

/**
 * Opens the database of this browser, or says in a sentence why that cannot be. One that a newer version of the planner has written is
 * left as it is.
 */
export function openDatabase(factory: IDBFactory): Promise<Result<Database>> {
  return new Promise((resolve) => {
    let request: IDBOpenDBRequest;
    try {
      request = factory.open(DATABASE, DATABASE_VERSION);
    } catch (cause) {
      resolve(unavailable(cause));
      return;
    }
    let refused = false;
    request.onupgradeneeded = ({ oldVersion }) => upgrade(request.result, oldVersion);
    request.onblocked = () => {
      refused = true;
      resolve(
        refuse(
          'database-blocked',
          'An older version of this page is open in another tab; close that tab and open this one again',
        ),
      );
    };
    request.onerror = () => resolve(unavailable(request.error));
    request.onsuccess = () => {
      const database = request.result;
      if (refused) database.close();
      // A newer version in another tab must not wait for this one; writing then says what to do.
      database.onversionchange = () => database.close();
      resolve(ok(wrap(database)));
    };
  });
}

function upgrade(database: IDBDatabase, oldVersion: number): void {
  if (oldVersion < 1) {
    database.createObjectStore('garages', { keyPath: 'name' });
    database.createObjectStore('changes', { keyPath: ['garage', 'id'] });
    database.createObjectStore('meta', { keyPath: ['garage', 'key'] });
  }
  if (oldVersion < 2) database.createObjectStore('photos', { keyPath: ['garage', 'place'] });
}

function unavailable(cause: unknown): Result<never> {
  if (nameOf(cause) === 'VersionError')
    return refuse(
      'database-newer',
      'What is kept in this browser was written by a newer version of the planner and was left as it is; reload the page to get that version',
    );
  return refuse(
    'database-unavailable',
    'This browser does not let the page keep anything (a private window, or storage is switched off); allow it, or keep a copy as a file',
  );
}

/** The name of an error of the browser, which is how they are told apart. */
export function nameOf(cause: unknown): string {
  return cause instanceof Error || cause instanceof DOMException ? cause.name : '';
}
