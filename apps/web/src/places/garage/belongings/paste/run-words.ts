/**
 * Several sizes of one thing in few words: '8 mm, 1/2 in drive' and '10 mm, 1/2 in drive' become '8, 10 mm, 1/2 in drive'. Sizes
 * that share no ending stand one after the other.
 */
export function runOfSizes(sizes: readonly string[]): string {
  const [first] = sizes;
  if (first === undefined || sizes.length === 1) return first ?? '';
  const cut = sizes.map((size) => /^(\S+)(.*)$/.exec(size));
  const tails = new Set(cut.map((match) => match?.[2] ?? ''));
  if (tails.size > 1) return sizes.join('; ');
  return `${cut.map((match) => match?.[1] ?? '').join(', ')}${[...tails][0] ?? ''}`;
}
