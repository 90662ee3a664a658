import type { Metres } from '../quantity/units.ts';

/**
 * How far help is, in classes whose edges are the distances that temporary repairs are trusted for (M4: 1, 50, 300 km,
 * any). Inside a class a limp either reaches help everywhere or nowhere that matters, so splitting a failure by class
 * loses nothing.
 */
export type Reach = 'beside' | 'near' | 'far' | 'remote';

const EDGES: readonly { readonly reach: Reach; readonly most: number }[] = [
  { reach: 'beside', most: 1_000 },
  { reach: 'near', most: 50_000 },
  { reach: 'far', most: 300_000 },
];

export const REACHES: readonly Reach[] = ['beside', 'near', 'far', 'remote'];

export function reachOf(help: Metres): Reach {
  return EDGES.find((edge) => help <= edge.most)?.reach ?? 'remote';
}
