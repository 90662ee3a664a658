import { entityParts } from '@waymend/garage/log/change';
import type { Collection } from '@waymend/garage/record/collections';
import { fieldWords, valueWords } from '@waymend/garage/record/field-words';
import type { Garage } from '@waymend/garage/record/schema';
import type { Wording } from '@waymend/planner/words/wording';
import { inWords } from '@waymend/planner/words/wording';

/** Fields whose value is the id of another thing, or a list of such. */
const POINTS_TO: Readonly<Record<string, Collection>> = {
  vehicle: 'vehicles',
  trailer: 'vehicles',
  berth: 'berths',
  kitBerth: 'berths',
  bag: 'bags',
  pocket: 'pockets',
  inside: 'belongings',
  belonging: 'belongings',
  people: 'people',
  loads: 'loads',
  trip: 'trips',
};

/** 'Ratchet 1/2: mass of one (g)': the thing by the name its owner gave it, the field in the owner's words. */
export function titleOf(garage: Garage, entity: string, field: string, wording: Wording): string {
  const words = fieldWords(entityParts(entity)?.collection ?? null, field);
  return `${nameOf(garage, entity)}: ${inWords(words, wording)}`;
}

/** A value in words; one that points to another thing by the name of that. */
export function wordsOf(garage: Garage, field: string, value: unknown): string {
  const table = POINTS_TO[field];
  if (table === undefined) return valueWords(value);
  const named = (one: unknown): unknown =>
    typeof one === 'string' ? nameOf(garage, `${table}/${one}`) : one;
  return valueWords(Array.isArray(value) ? value.map(named) : named(value));
}

/** The name its owner gave it, else its id. */
export function nameOf(garage: Garage, entity: string): string {
  const parts = entityParts(entity);
  if (parts === null) return garage.name;
  const table: Readonly<Record<string, object>> = garage[parts.collection];
  const thing = Object.hasOwn(table, parts.id) ? table[parts.id] : undefined;
  const name: unknown = thing === undefined ? undefined : Reflect.get(thing, 'name');
  return typeof name === 'string' && name !== '' ? name : parts.id;
}
