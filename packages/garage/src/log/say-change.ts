import { ONE_OF } from '../record/collections.ts';
import { fieldWords, valueWords } from '../record/field-words.ts';
import type { Change } from './change.ts';
import { EXISTS, entityParts } from './change.ts';
import type { Log } from './log.ts';

/** A change in one plain sentence, for the history: 'mass of one (g) of belonging "Ratchet": 180, before 175'. */
export function sayChange(change: Change, log: Log): string {
  const whose = sayEntity(change.entity, log);
  if (change.field === EXISTS) {
    if (change.value !== true) return `${whose} removed`;
    return change.replaces.length === 0 ? `${whose} added` : `${whose} put back`;
  }
  const former = change.replaces
    .map((id) => log.change(id))
    .filter((one) => one?.field === change.field)
    .map((one) => sayValue(one?.value));
  const before = former.length === 0 ? '' : `, before ${former.join(' and ')}`;
  const field = fieldWords(entityParts(change.entity)?.collection ?? null, change.field);
  return `${field} of ${whose}: ${sayValue(change.value)}${before}`;
}

/** 'belonging "Ratchet"', by its name as it is or was, else by its id. */
export function sayEntity(entity: string, log: Log): string {
  const parts = entityParts(entity);
  if (parts === null) return 'the garage';
  const name = log.heads(entity, 'name').at(-1)?.value;
  return `${ONE_OF[parts.collection]} "${typeof name === 'string' && name !== '' ? name : parts.id}"`;
}

const LONGEST = 60;

function sayValue(value: unknown): string {
  const text = typeof value === 'string' ? `"${value}"` : valueWords(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}...` : text;
}
