import { LinearBuilder } from '../choosing/linear-builder.ts';
import type { Solver } from '../choosing/solver-port.ts';

/**
 * Equal bags as paths from empty to full (arc-flow model of Valerio de Carvalho): a unit of flow is a bag, an arc from a to
 * a + w a thing of size w laid into it after larger ones, and every size flows as often as there is of it. Null when the
 * solver ends without an answer.
 *
 * @param order Indices of the sizes, largest first.
 */
export function packByFlow(
  order: readonly number[],
  sizes: readonly number[],
  capacity: number,
  most: number,
  solver: Solver,
): number[][] | 'impossible' | null {
  const bySize = new Map<number, number[]>();
  for (const i of order) {
    const size = sizes[i] ?? 0;
    if (size > 0) bySize.set(size, [...(bySize.get(size) ?? []), i]);
  }
  const arcs = arcsOf(bySize, capacity);
  const builder = new LinearBuilder();
  const columns = arcs.map(({ size }) =>
    builder.column(0, size === 0 ? most : (bySize.get(size)?.length ?? 0), true),
  );
  const out = new Map<number, [number, number][]>();
  const join = (node: number, column: number, value: number): void => {
    out.set(node, [...(out.get(node) ?? []), [column, value]]);
  };
  const bySizeTerms = new Map<number, [number, number][]>();
  for (const [n, { from, to, size }] of arcs.entries()) {
    const column = columns[n] ?? 0;
    join(from, column, 1);
    join(to, column, -1);
    if (size > 0) bySizeTerms.set(size, [...(bySizeTerms.get(size) ?? []), [column, 1]]);
  }
  for (const [node, terms] of out) {
    if (node === 0) builder.row(0, most, terms);
    else if (node < capacity) builder.row(0, 0, terms);
  }
  for (const [size, terms] of bySizeTerms) {
    const asked = bySize.get(size)?.length ?? 0;
    builder.row(asked, asked, terms);
  }
  const answer = solver.solve(builder.build(new Float64Array(builder.columns)));
  if (answer.kind === 'infeasible') return 'impossible';
  if (answer.kind !== 'optimal') return null;
  const flow = arcs.map((arc, n) => ({ arc, left: Math.round(answer.x[columns[n] ?? 0] ?? 0) }));
  const bags: number[][] = [];
  for (;;) {
    let node = 0;
    const of: number[] = [];
    while (node < capacity) {
      const step = flow.find(({ arc, left }) => left > 0 && arc.from === node);
      if (step === undefined) break;
      step.left--;
      const thing = step.arc.size > 0 ? bySize.get(step.arc.size)?.pop() : undefined;
      if (thing !== undefined) of.push(thing);
      node = step.arc.to;
    }
    if (of.length === 0) break;
    bags.push(of);
  }
  // What takes no room lies anywhere.
  const [any] = bags;
  for (const i of order) if (sizes[i] === 0) (any ?? bags[bags.push([]) - 1])?.push(i);
  return bags;
}

interface Arc {
  readonly from: number;
  readonly to: number;
  /** 0: room left over. */
  readonly size: number;
}

/** Arcs that some bag filled largest first could take, and those that leave the rest of it empty. */
function arcsOf(bySize: ReadonlyMap<number, readonly number[]>, capacity: number): readonly Arc[] {
  const arcs: Arc[] = [];
  const reached = new Set([0]);
  for (const [size, of] of bySize) {
    const starts = new Set(reached);
    let front = [...reached];
    for (let copy = 0; copy < of.length && front.length > 0; copy++) {
      const next: number[] = [];
      for (const from of front) {
        const to = from + size;
        if (to > capacity) continue;
        starts.add(from);
        next.push(to);
        reached.add(to);
      }
      front = next.filter((node) => !starts.has(node));
    }
    for (const from of starts) if (from + size <= capacity) arcs.push({ from, to: from + size, size });
  }
  for (const node of reached)
    if (node > 0 && node < capacity) arcs.push({ from: node, to: capacity, size: 0 });
  return arcs;
}
