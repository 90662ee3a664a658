/** Below this an insertion sort is faster than the engine's own, which copies the list to and fro. */
const SHORT = 32;

/** Sorts a list of numbers upwards and drops its doubles, in place. */
export function sortedDistinct(values: number[]): number[] {
  if (values.length > SHORT) values.sort((a, b) => a - b);
  else insertionSort(values);
  let kept = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0;
    if (i === 0 || value !== values[kept - 1]) values[kept++] = value;
  }
  values.length = kept;
  return values;
}

function insertionSort(values: number[]): void {
  for (let i = 1; i < values.length; i++) {
    const value = values[i] ?? 0;
    let at = i;
    for (; at > 0 && (values[at - 1] ?? 0) > value; at--) values[at] = values[at - 1] ?? 0;
    values[at] = value;
  }
}
