/**
 * Draws a kind in constant time from one uniform number (alias tables: Walker 1977, built as by Vose 1991; recalled, not
 * re-read). Weights are at least 0 and not all 0; a kind of weight 0 is never drawn.
 */
export function kindDrawer(weights: readonly number[]): (uniform: number) => number {
  const total = weights.reduce((sum, w) => sum + w, 0);
  if (!(total > 0)) throw new Error('there is nothing to draw from');
  const n = weights.length;
  const share = Float64Array.from(weights, (w) => (w / total) * n);
  const keep = new Float64Array(n).fill(1);
  const other = Int32Array.from(weights, (_, i) => i);
  const small: number[] = [];
  const large: number[] = [];
  share.forEach((s, i) => (s < 1 ? small : large).push(i));
  for (let s = small.pop(), l = large.pop(); s !== undefined; s = small.pop()) {
    if (l === undefined) {
      // Only rounding leaves a small one alone; a kind that cannot happen still never does.
      keep[s] = (weights[s] ?? 0) > 0 ? 1 : 0;
      if (keep[s] === 0) other[s] = weights.findIndex((w) => w > 0);
      continue;
    }
    keep[s] = share[s] ?? 0;
    other[s] = l;
    share[l] = (share[l] ?? 0) + (share[s] ?? 0) - 1;
    if ((share[l] ?? 0) < 1) {
      small.push(l);
      l = large.pop();
    }
  }
  return (uniform) => {
    const scaled = uniform * n;
    const column = Math.min(n - 1, Math.floor(scaled));
    return scaled - column < (keep[column] ?? 0) ? column : (other[column] ?? 0);
  };
}
