/** Names that objects of the language answer to by themselves; no id and no taught word may be one. */
const FORBIDDEN: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

export function isForbiddenName(name: string): boolean {
  return FORBIDDEN.has(name);
}
