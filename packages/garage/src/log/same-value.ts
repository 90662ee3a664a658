/** Whether two values of a field are the same; a key that is undefined counts as left out. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    if (!Array.isArray(a) || !Array.isArray(b) || a.length !== b.length) return false;
    return a.every((item: unknown, i) => sameValue(item, b[i]));
  }
  const left = fieldsOf(a);
  const right = fieldsOf(b);
  if (left.size !== right.size) return false;
  for (const [key, value] of left) if (!right.has(key) || !sameValue(value, right.get(key))) return false;
  return true;
}

/** The fields of an entity that are said. */
export function fieldsOf(entity: object): ReadonlyMap<string, unknown> {
  const entries: readonly [string, unknown][] = Object.entries(entity);
  return new Map(entries.filter(([, value]) => value !== undefined));
}
