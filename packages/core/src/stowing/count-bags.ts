import type { Solver } from '../choosing/solver-port.ts';
import { packByFlow } from './pack-by-flow.ts';

/** How many equal bags some sizes need. */
export interface BagCount {
  readonly count: number;
  /** No packing has fewer. */
  readonly bound: number;
  readonly proven: boolean;
  /** Indices of the sizes, bag by bag. */
  readonly bags: readonly (readonly number[])[];
  /** What first-fit decreasing needs. */
  readonly firstFit: number;
}

/** Steps of the search for one bag fewer; most cases take some thousands. */
const STEPS = 300_000;
/** Fillings of one bag that are looked at; with more, a search that finds nothing proves nothing. */
const FILLINGS = 3_000;

/**
 * The least number of bags of one capacity that hold sizes of one dimension (one-dimensional bin packing). First-fit
 * decreasing, the bound L2 of Martello and Toth, and a search bag by bag for packings with fewer: each bag takes the
 * largest size left with whatever leaves least over, within what may be left over in all.
 *
 * What the search leaves open the solver settles, when there is one.
 *
 * @param sizes Whole numbers, 0 to `capacity`.
 * @returns null where a size is greater than the capacity, or not a whole number of 0 or more.
 */
export function countBags(sizes: readonly number[], capacity: number, solver?: Solver): BagCount | null {
  if (sizes.some((size) => !Number.isSafeInteger(size) || size < 0 || size > capacity)) return null;
  const order = [...sizes.keys()].sort((a, b) => (sizes[b] ?? 0) - (sizes[a] ?? 0) || a - b);
  let bags = firstFitDecreasing(order, sizes, capacity);
  const firstFit = bags.length;
  let bound = boundL2(sizes, capacity);
  while (bags.length > bound) {
    const fewer = packInto(order, sizes, capacity, bags.length - 1);
    if (fewer.bags !== null) bags = fewer.bags;
    else {
      const settled = fewer.exhausted
        ? 'impossible'
        : solver === undefined
          ? null
          : packByFlow(order, sizes, capacity, bags.length - 1, solver);
      if (settled === 'impossible') bound = bags.length;
      if (settled === 'impossible' || settled === null) break;
      bags = settled;
    }
  }
  return { count: bags.length, bound, proven: bags.length === bound, bags, firstFit };
}

function firstFitDecreasing(
  order: readonly number[],
  sizes: readonly number[],
  capacity: number,
): number[][] {
  const bags: { left: number; of: number[] }[] = [];
  for (const i of order) {
    const size = sizes[i] ?? 0;
    const bag = bags.find(({ left }) => left >= size);
    if (bag === undefined) bags.push({ left: capacity - size, of: [i] });
    else {
      bag.left -= size;
      bag.of.push(i);
    }
  }
  return bags.map(({ of }) => of);
}

/**
 * Martello and Toth's L2: for every threshold k, sizes above capacity - k stand alone, those above half stand apart, and
 * those from k to half fill what these leave. The greatest over all k.
 */
export function boundL2(sizes: readonly number[], capacity: number): number {
  const thresholds = new Set([0, ...sizes.filter((size) => size <= capacity / 2)]);
  let best = 0;
  for (const k of thresholds) {
    const alone = sizes.filter((size) => size > capacity - k);
    const large = sizes.filter((size) => size <= capacity - k && size > capacity / 2);
    const small = sizes.filter((size) => size <= capacity / 2 && size >= k);
    const left = large.length * capacity - sum(large);
    const more = capacity > 0 ? Math.max(0, Math.ceil((sum(small) - left) / capacity)) : 0;
    best = Math.max(best, alone.length + large.length + more);
  }
  return best;
}

function sum(list: readonly number[]): number {
  return list.reduce((whole, n) => whole + n, 0);
}

interface Search {
  readonly bags: number[][] | null;
  /** Every packing was looked at: there is none. */
  readonly exhausted: boolean;
}

function packInto(
  order: readonly number[],
  sizes: readonly number[],
  capacity: number,
  count: number,
): Search {
  let steps = 0;
  // Out of steps: give up. Some fillings not looked at: go on, but nothing found proves nothing.
  const missed = { steps: false, fillings: false };
  const made: number[][] = [];
  const size = (i: number): number => sizes[i] ?? 0;

  const fill = (left: readonly number[], spare: number): boolean => {
    const [first, ...rest] = left;
    if (first === undefined) return true;
    if (made.length === count) return false;
    if (++steps > STEPS) {
      missed.steps = true;
      return false;
    }
    for (const filling of fillings(first, rest, spare)) {
      const inside = new Set(filling.of);
      made.push(filling.of);
      if (
        fill(
          left.filter((i) => !inside.has(i)),
          spare - filling.over,
        )
      )
        return true;
      made.pop();
      if (missed.steps) return false;
    }
    return false;
  };

  /** Fillings of a bag that holds `first`, least left over first. */
  const fillings = (
    first: number,
    rest: readonly number[],
    spare: number,
  ): { of: number[]; over: number }[] => {
    const out: { of: number[]; over: number }[] = [];
    const add = (from: number, of: readonly number[], room: number): void => {
      if (out.length >= FILLINGS) missed.fillings = true;
      if (++steps > STEPS) missed.steps = true;
      if (missed.steps || out.length >= FILLINGS) return;
      if (room <= spare) out.push({ of: [...of], over: room });
      let last = -1;
      for (let at = from; at < rest.length; at++) {
        const i = rest[at] ?? -1;
        // Of equal sizes one stands for all.
        if (size(i) > room || size(i) === last) continue;
        last = size(i);
        add(at + 1, [...of, i], room - size(i));
      }
    };
    add(0, [first], capacity - size(first));
    return out.sort((a, b) => a.over - b.over || a.of.length - b.of.length);
  };

  const spare = count * capacity - sum(sizes);
  if (spare < 0) return { bags: null, exhausted: true };
  const found = fill(order, spare);
  return { bags: found ? made : null, exhausted: !found && !missed.steps && !missed.fillings };
}
