import type { Garage } from '@waymend/garage/record/schema';
import type { Wording } from '@waymend/planner/words/wording';
import { inWords } from '@waymend/planner/words/wording';
import type { Reply, Request } from '../protocol.ts';

/** Fields that are read by people; ids and codes stay as they are. */
const READ = new Set([
  'after',
  'breaks',
  'cautions',
  'how',
  'joins',
  'leaves',
  'message',
  'name',
  'need',
  'sentence',
  'sentences',
  'step',
  'title',
  'warnings',
  'withName',
  'words',
]);

/** Sentences that only a card, the way to it and the wire helper have. */
const READ_ON_CARDS = new Set([
  'against',
  'ask',
  'basis',
  'before',
  'check',
  'closing',
  'doNot',
  'first',
  'limits',
  'missing',
  'place',
  'reasons',
  'steps',
  'stop',
  'text',
  'wanted',
  'what',
  'why',
]);
const NOWHERE: ReadonlySet<string> = new Set();

/** Files and garages are never reworded: they would be saved so. */
const NEVER: ReadonlySet<Reply['kind']> = new Set([
  'garage',
  'text',
  'trip/started',
  'belongings/found',
  'belongings/reading',
  'belongings/made',
  'belongings/taught',
  'belongings/size',
  'curve',
  'curve-point',
  'proof',
]);

/** Names that an owner has typed. */
export interface OwnNames {
  readonly all: ReadonlySet<string>;
  /** Of vehicles, bags and the like: few, and told of inside sentences too. */
  readonly inSentences: readonly string[];
}

export const NO_NAMES: OwnNames = { all: new Set(), inSentences: [] };

/** A reply in the owner's words; names the owner has typed stay as typed. */
export function worded<R extends Reply>(reply: R, wording: Wording, own: OwnNames): R {
  if (NEVER.has(reply.kind)) return reply;
  const more = reply.kind.startsWith('jobs/') ? READ_ON_CARDS : NOWHERE;
  // Only names that rewording would change have to be kept from it, the longest first.
  const inSentences = own.inSentences
    .filter((name) => inWords(name, wording) !== name)
    .sort((a, b) => b.length - a.length);
  return walk(reply, wording, { ...own, inSentences }, false, more);
}

/** Every name of the garage that a request carries. */
export function ownNames(request: Request): OwnNames {
  if (!('garage' in request)) return NO_NAMES;
  const { vehicles, berths, people, belongings, bags, pockets, loads, trips, legs }: Garage = request.garage;
  const inSentences = namesOf([vehicles, berths, people, bags, pockets, loads, trips, legs]);
  return { all: new Set([...namesOf([belongings]), ...inSentences]), inSentences };
}

type Named = Readonly<Record<string, { readonly name?: string | undefined }>>;

function namesOf(tables: readonly Named[]): readonly string[] {
  const named = tables.flatMap((table) => Object.values(table));
  return [...new Set(named.flatMap(({ name }) => (name === undefined || name === '' ? [] : [name])))];
}

/** A copy in which strings under the fields of `READ` and `more` are reworded; `read` says that this value stands under one. */
type Keys = ReadonlySet<string>;

function walk<T>(value: T, wording: Wording, own: OwnNames, read: boolean, more: Keys): T;
function walk(value: unknown, wording: Wording, own: OwnNames, read: boolean, more: Keys): unknown {
  if (typeof value === 'string')
    return read && !own.all.has(value) ? around(value, own.inSentences, wording) : value;
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return items.map((inner) => walk(inner, wording, own, read, more));
  }
  const fields: readonly [string, unknown][] = Object.entries(value);
  return Object.fromEntries(
    // What meets a need is a list of names; what a swap is made with is one id.
    fields.map(([key, inner]) => [
      key,
      walk(
        inner,
        wording,
        own,
        READ.has(key) || more.has(key) || (key === 'with' && Array.isArray(inner)),
        more,
      ),
    ]),
  );
}

/** The text reworded, but for the names that stand in it. */
function around(text: string, names: readonly string[], wording: Wording): string {
  const [name, ...others] = names;
  if (name === undefined) return inWords(text, wording);
  return text
    .split(name)
    .map((part) => around(part, others, wording))
    .join(name);
}
