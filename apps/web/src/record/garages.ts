import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import { Log } from '@waymend/garage/log/log';
import { clockOf } from '@waymend/garage/log/stamp';
import type { Garage } from '@waymend/garage/record/schema';
import { handled, rangeOf } from './change-store.ts';
import { openDatabase } from './database.ts';
import { changesIn, field } from './rows.ts';

/** What is kept of one garage that is not open: as it stands, its steps, and how many of them are in a copy elsewhere. */
export interface KeptGarage {
  readonly key: string;
  readonly garage: Garage;
  readonly steps: number;
  readonly copiedSteps: number;
  /** When the last step was made, milliseconds since 1970; null when there is none. */
  readonly lastAt: number | null;
}

/** Reads a garage without opening it for writing; null when there is none of the name. */
export async function readGarage(factory: IDBFactory, key: string): Promise<Result<KeptGarage | null>> {
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const tx = opened.value.transaction(['garages', 'changes', 'meta'], 'readonly');
  handled(tx.done);
  const there: unknown = await tx.objectStore('garages').get(key);
  const copied: unknown = field(await tx.objectStore('meta').get([key, 'copied']), 'value');
  const rows: readonly unknown[] = await tx.objectStore('changes').getAll(rangeOf(key));
  await tx.done;
  opened.value.close();
  if (there === undefined) return ok(null);
  const log = new Log();
  log.add(rows.flatMap(changesIn));
  return ok({
    key,
    garage: log.garage,
    steps: log.stepCount,
    copiedSteps: typeof copied === 'number' ? copied : 0,
    lastAt: log.lastStamp === null ? null : clockOf(log.lastStamp),
  });
}

/** Records that the owner has a copy of so many steps elsewhere. */
export async function noteCopyOf(factory: IDBFactory, key: string, steps: number): Promise<Result<null>> {
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const tx = opened.value.transaction(['garages', 'meta'], 'readwrite', { durability: 'strict' });
  handled(tx.done);
  if ((await tx.objectStore('garages').get(key)) !== undefined)
    await tx.objectStore('meta').put({ garage: key, key: 'copied', value: steps });
  await tx.done;
  opened.value.close();
  return ok(null);
}

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

/** Removes a garage with all its changes and photos, for good: whoever calls this has asked. */
export async function removeGarage(factory: IDBFactory, name: string): Promise<Result<null>> {
  const opened = await openDatabase(factory);
  if (!opened.ok) return opened;
  const tx = opened.value.transaction(['garages', 'changes', 'meta', 'photos'], 'readwrite', {
    durability: 'strict',
  });
  await Promise.all([
    tx.objectStore('garages').delete(name),
    tx.objectStore('changes').delete(rangeOf(name)),
    tx.objectStore('meta').delete(rangeOf(name)),
    tx.objectStore('photos').delete(rangeOf(name)),
    tx.done,
  ]);
  opened.value.close();
  return ok(null);
}
