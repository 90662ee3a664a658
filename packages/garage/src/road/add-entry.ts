import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Collection } from '../record/collections.ts';
import { ONE_OF } from '../record/collections.ts';
import { isForbiddenName } from '../record/forbidden-names.ts';
import type { Garage } from '../record/schema.ts';

const ID = /^[a-z0-9][a-z0-9-]{0,63}$/;

/** A new garage with one entity more; refuses an id that is taken or cannot be one. */
export function addEntry<T extends Collection>(
  garage: Garage,
  table: T,
  id: string,
  entry: Garage[T][string],
): Result<Garage> {
  if (!ID.test(id) || isForbiddenName(id)) {
    return refuse(
      'id-unusable',
      `"${id.slice(0, 64)}" cannot name a ${ONE_OF[table]}; use small letters, digits and hyphens`,
    );
  }
  if (Object.hasOwn(garage[table], id))
    return refuse(
      'id-taken',
      `There is a ${ONE_OF[table]} "${id}" already; choose another name for the new one`,
    );
  return ok({ ...garage, [table]: { ...garage[table], [id]: entry } });
}

type Tables = { readonly [T in Collection]: Readonly<Record<string, Garage[T][string]>> };

/** The entity of an id, or a sentence that says there is none. */
export function entryOf<T extends Collection>(
  garage: Garage,
  table: T,
  id: string,
): Result<Garage[T][string]> {
  const tables: Tables = garage;
  const entry: Garage[T][string] | undefined = Object.hasOwn(tables[table], id)
    ? tables[table][id]
    : undefined;
  return entry === undefined
    ? refuse('reference-unknown', `There is no ${ONE_OF[table]} "${id.slice(0, 64)}" in this garage`)
    : ok(entry);
}
