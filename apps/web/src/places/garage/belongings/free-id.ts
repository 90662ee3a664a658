import { isForbiddenName } from '@waymend/garage/record/forbidden-names';

/** An id nothing has yet, made from what a thing is: 'CW-17' -> 'cw-17', then 'cw-17-2'. */
export function freeId(wish: string, taken: Readonly<Record<string, unknown>>): string {
  const base =
    wish
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 56) || 'thing';
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`;
    if (!Object.hasOwn(taken, id) && !isForbiddenName(id)) return id;
  }
}
