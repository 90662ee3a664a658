const LETTERS = 'abcdefghijkmnpqrstuvwxyz23456789';

/**
 * An id for a new thing, readable and never given twice: two devices that are apart for weeks must not give the same one.
 * `chance` gives numbers in 0..1.
 */
export function freshId(wish: string, chance: () => number = randomly): string {
  const base = wish
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  const tail = Array.from({ length: 5 }, () => LETTERS[Math.floor(chance() * LETTERS.length)] ?? 'x').join(
    '',
  );
  return `${base === '' ? 'new' : base}-${tail}`;
}

function randomly(): number {
  const [word = 0] = crypto.getRandomValues(new Uint32Array(1));
  return word / 2 ** 32;
}
