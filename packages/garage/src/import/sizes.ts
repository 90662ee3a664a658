/** '1-1/8 in' of a width in mm, to the nearest 64th. */
export function inchLabel(mm: number): string {
  const sixtyFourths = Math.round((mm / 25.4) * 64);
  const whole = Math.floor(sixtyFourths / 64);
  let over = sixtyFourths % 64;
  let under = 64;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return `${whole} in`;
  return whole === 0 ? `${over}/${under} in` : `${whole}-${over}/${under} in`;
}

export function mmLabel(mm: number): string {
  return `${Number(mm.toFixed(2))} mm`;
}

/**
 * Mass of a size between two whose mass is known, in proportion; beyond the last one by the square of the size. Grams,
 * rounded; an estimate like the masses it comes from.
 */
export function gramsBetween(
  value: number,
  known: readonly { readonly value: number; readonly grams: number }[],
): number | null {
  const sorted = [...known].sort((a, b) => a.value - b.value);
  const above = sorted.find((point) => point.value >= value);
  const below = [...sorted].reverse().find((point) => point.value <= value);
  if (above !== undefined && below !== undefined) {
    if (above.value === below.value) return above.grams;
    const share = (value - below.value) / (above.value - below.value);
    return Math.round(below.grams + share * (above.grams - below.grams));
  }
  const end = above ?? below;
  return end === undefined ? null : Math.round(end.grams * (value / end.value) ** 2);
}
