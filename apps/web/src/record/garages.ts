import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { handled, rangeOf } from './change-store.ts';
import { openDatabase } from './database.ts';
import { field } from './rows.ts';

/** The names of the garages this browser keeps, in alphabetical order. */
export async function listGarages(factory: IDBFactory): Promise<Result<readonly string[]>> {
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const rows: readonly unknown[] = await opened.value.getAll('garages');
  opened.value.close();
  return ok(rows.map((row) => field(row, 'name')).filter((name) => typeof name === 'string'));
}

/** A new, empty garage; refuses a name that is taken or empty. */
export async function createGarage(
  factory: IDBFactory,
  name: string,
  randomId: () => string,
): Promise<Result<string>> {
  if (name.trim() === '') return refuse('garage-unnamed', 'A garage needs a name; type one');
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const tx = opened.value.transaction('garages', 'readwrite', { durability: 'strict' });
  handled(tx.done);
  const taken = (await tx.store.get(name)) !== undefined;
  if (!taken) await tx.store.put({ name, born: randomId() });
  await tx.done;
  opened.value.close();
  return taken
    ? refuse('garage-name-taken', `There is a garage called "${name}" already; choose another name`)
    : ok(name);
}

/** Removes a garage with all its changes, for good: whoever calls this has asked. */
export async function removeGarage(factory: IDBFactory, name: string): Promise<Result<null>> {
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const tx = opened.value.transaction(['garages', 'changes', 'meta'], 'readwrite', { durability: 'strict' });
  await Promise.all([
    tx.objectStore('garages').delete(name),
    tx.objectStore('changes').delete(rangeOf(name)),
    tx.objectStore('meta').delete(rangeOf(name)),
    tx.done,
  ]);
  opened.value.close();
  return ok(null);
}
