import type { Result } from '@waymend/core/result';
import { ok, refuse } from '@waymend/core/result';
import type { Collection } from './record/collections.ts';
import { COLLECTIONS, ONE_OF } from './record/collections.ts';
import type { Garage } from './record/schema.ts';

/** What happens to an entity when what its field names is gone: it goes too, it loses the field, or the one item of a list. */
type Fate = 'goes' | 'loses-field' | 'loses-item';

interface Reference {
  readonly from: Collection;
  readonly field: string;
  readonly to: Collection;
  readonly fate: Fate;
}

const refs = (
  to: Collection,
  fate: Fate,
  ...fields: readonly (readonly [Collection, string])[]
): readonly Reference[] => fields.map(([from, field]) => ({ from, field, to, fate }));

/** Every reference from one entity of a garage to another. */
export const REFERENCES: readonly Reference[] = [
  ...refs(
    'vehicles',
    'goes',
    ['fittings', 'vehicle'],
    ['berths', 'vehicle'],
    ['trips', 'vehicle'],
    ['weakPoints', 'vehicle'],
  ),
  ...refs('vehicles', 'goes', ['musters', 'vehicle'], ['repairs', 'vehicle'], ['readings', 'vehicle']),
  ...refs('vehicles', 'goes', ['breakdowns', 'vehicle'], ['drills', 'vehicle']),
  ...refs('vehicles', 'loses-field', ['trips', 'trailer']),
  ...refs(
    'berths',
    'loses-field',
    ['belongings', 'berth'],
    ['bags', 'berth'],
    ['loads', 'berth'],
    ['people', 'berth'],
  ),
  ...refs('berths', 'loses-field', ['trips', 'kitBerth']),
  ...refs('people', 'loses-item', ['trips', 'people']),
  ...refs('people', 'loses-field', ['careMarks', 'by'], ['drills', 'by']),
  ...refs('loads', 'loses-item', ['trips', 'loads']),
  ...refs('bags', 'goes', ['pockets', 'bag']),
  ...refs('bags', 'loses-field', ['belongings', 'bag']),
  ...refs('pockets', 'loses-field', ['belongings', 'pocket']),
  // What is inside a boxed set goes with it.
  ...refs(
    'belongings',
    'goes',
    ['belongings', 'inside'],
    ['careMarks', 'belonging'],
    ['counts', 'belonging'],
  ),
  ...refs('belongings', 'goes', ['loans', 'belonging'], ['uses', 'belonging']),
  ...refs('trips', 'goes', ['legs', 'trip'], ['uses', 'trip']),
  ...refs('trips', 'loses-field', ['musters', 'trip'], ['breakdowns', 'trip']),
  ...refs('musters', 'goes', ['counts', 'muster']),
  ...refs('repairs', 'goes', ['rechecks', 'repair']),
  ...refs('repairs', 'loses-field', ['breakdowns', 'repair']),
];

/** A new garage without one entity and without anything that named it and means nothing now; no reference is left dangling. */
export function removeEntity(garage: Garage, table: Collection, id: string): Result<Garage> {
  if (!Object.hasOwn(garage[table], id)) {
    const word = ONE_OF[table];
    const list = table === 'belongings' ? 'look at the list of belongings' : 'it may be gone already';
    return refuse(
      `${word.replaceAll(' ', '-')}-unknown`,
      `There is no ${word} "${id.slice(0, 64)}"; ${list}`,
    );
  }
  const gone = new Map<Collection, Set<string>>(COLLECTIONS.map((name) => [name, new Set<string>()]));
  const waiting: (readonly [Collection, string])[] = [[table, id]];
  let next = garage;
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    const [of, dead] = one;
    if (gone.get(of)?.has(dead) === true) continue;
    gone.get(of)?.add(dead);
    for (const reference of REFERENCES) {
      if (reference.to !== of) continue;
      const { from } = reference;
      const { table: changed, orphans } = release(next[from], reference, dead);
      next = { ...next, [from]: changed };
      for (const orphan of orphans) waiting.push([from, orphan]);
    }
  }
  for (const [name, ids] of gone) if (ids.size > 0) next = { ...next, [name]: without(next[name], ids) };
  return ok(next);
}

/** A table in which nothing names the dead entity any more, but for those that go with it. */
function release(
  table: Readonly<Record<string, object>>,
  { field, fate }: Reference,
  dead: string,
): { readonly table: Readonly<Record<string, object>>; readonly orphans: readonly string[] } {
  const orphans: string[] = [];
  const changed = new Map<string, object>();
  for (const [id, entity] of Object.entries(table)) {
    const value: unknown = Object.entries(entity).find(([key]) => key === field)?.[1];
    if (fate === 'loses-item') {
      if (!Array.isArray(value) || !value.includes(dead)) continue;
      const left = value.filter((item) => item !== dead);
      changed.set(id, { ...entity, [field]: left });
      // A trip without anybody aboard is no trip.
      if (field === 'people' && left.length === 0) orphans.push(id);
    } else if (value === dead) {
      if (fate === 'goes') orphans.push(id);
      else changed.set(id, Object.fromEntries(Object.entries(entity).filter(([key]) => key !== field)));
    }
  }
  return { table: changed.size === 0 ? table : { ...table, ...Object.fromEntries(changed) }, orphans };
}

function without(
  table: Readonly<Record<string, object>>,
  ids: ReadonlySet<string>,
): Readonly<Record<string, object>> {
  return Object.fromEntries(Object.entries(table).filter(([id]) => !ids.has(id)));
}
