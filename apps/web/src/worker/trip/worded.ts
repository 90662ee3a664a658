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

/** A reply in the owner's words; names the owner has typed stay as typed. */
export function worded<R extends Reply>(reply: R, wording: Wording, own: ReadonlySet<string>): R {
  return NEVER.has(reply.kind) ? reply : walk(reply, wording, own, false);
}

/** Every name of the garage that a request carries. */
export function ownNames(request: Request): ReadonlySet<string> {
  return 'garage' in request ? namesOf(request.garage) : new Set();
}

function namesOf(garage: Garage): ReadonlySet<string> {
  const tables = [
    garage.vehicles,
    garage.berths,
    garage.people,
    garage.belongings,
    garage.bags,
    garage.loads,
    garage.trips,
    garage.legs,
  ];
  const named = tables.flatMap((table) => Object.values<{ readonly name?: string | undefined }>(table));
  return new Set(named.flatMap(({ name }) => (name === undefined ? [] : [name])));
}

/** A copy in which strings under the fields of `READ` are reworded; `read` says that this value stands under one. */
function walk<T>(value: T, wording: Wording, own: ReadonlySet<string>, read: boolean): T;
function walk(value: unknown, wording: Wording, own: ReadonlySet<string>, read: boolean): unknown {
  if (typeof value === 'string') return read && !own.has(value) ? inWords(value, wording) : value;
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return items.map((inner) => walk(inner, wording, own, read));
  }
  const fields: readonly [string, unknown][] = Object.entries(value);
  return Object.fromEntries(
    // What meets a need is a list of names; what a swap is made with is one id.
    fields.map(([key, inner]) => [
      key,
      walk(inner, wording, own, READ.has(key) || (key === 'with' && Array.isArray(inner))),
    ]),
  );
}
