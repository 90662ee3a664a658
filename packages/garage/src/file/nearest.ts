/** Letters to add, drop, change or swap with a neighbour to get from one text to the other, up to `most` (then most + 1). */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    before = above;
    above = row;
  }
  return Math.min(above[b.length] ?? 0, most + 1);
}

/** The word of a list that a mistyped one most likely is, or null when none is close. */
export function nearest(word: string, words: Iterable<string>): string | null {
  const typed = word.toLowerCase().slice(0, 80);
  let best: string | null = null;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const candidate of words) {
    // Only marks differ: 'CW17' means CW-17, not CW-7.
    if (letters(candidate) === letters(word)) return candidate;
    const distance = editDistance(typed, candidate.toLowerCase(), least - 1);
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

function letters(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}
