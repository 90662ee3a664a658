import type { Need, NeedIndex } from '../choosing/problem.ts';
import type { NeedGraph } from './need-graph.ts';

export interface Packed {
  readonly needs: readonly Need[];
  /** Old index to new; undefined for needs that nothing asks for. */
  readonly renumbered: ReadonlyMap<NeedIndex, NeedIndex>;
}

/** The needs that `roots` ask for, directly or through others, numbered anew in the same order. */
export function packed(graph: NeedGraph, roots: Iterable<NeedIndex>): Packed {
  const wanted = new Set<NeedIndex>();
  const open = [...roots];
  for (let index = open.pop(); index !== undefined; index = open.pop()) {
    if (wanted.has(index)) continue;
    wanted.add(index);
    const need = graph.at(index);
    if (need.kind === 'any') for (const way of need.ways) open.push(...way.needs);
  }
  const order = [...wanted].sort((a, b) => a - b);
  const renumbered = new Map(order.map((old, index) => [old, index]));
  const anew = (old: NeedIndex): NeedIndex => {
    const index = renumbered.get(old);
    if (index === undefined) throw new Error(`need ${old} was left out`);
    return index;
  };
  const needs = order.map((old): Need => {
    const need = graph.at(old);
    if (need.kind === 'enough') return need;
    return {
      kind: 'any',
      ways: need.ways.map((way) => ({ pieces: way.pieces, needs: way.needs.map(anew) })),
    };
  });
  return { needs, renumbered };
}
