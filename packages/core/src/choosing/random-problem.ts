import type { LimitRow, Need, NeedIndex, Option, Piece, Problem, TroubleEvent, Way } from './problem.ts';

/** What a random problem should look like; for tests and benchmarks. */
export interface RandomShape {
  /** Same number, same problem. */
  readonly number: number;
  readonly pieces: number;
  readonly needs: number;
  readonly events: number;
  /** Room of the mass limit as a share of the mass of all pieces. */
  readonly massShare: number;
  /** Further limit rows: volume, a berth, an axle with negative weights. */
  readonly rows?: number;
  /** Share of pieces that are only for sale; adds a money row. */
  readonly forSale?: number;
  readonly bundles?: number;
  /** Share of needs counted in units. */
  readonly enough?: number;
  readonly must?: number;
  readonly pins?: number;
  /** Gains are drawn up to about this; small numbers make many ties. */
  readonly gain?: number;
  /** Few distinct masses, so that ties are common. */
  readonly coarse?: boolean;
}

/** A fixed stream of numbers in [0, 1) (32-bit mix of a counter): no clock, no global state. */
export function stream(number: number): () => number {
  let counter = (Math.imul(number, 0x9e3779b1) ^ 0x5bd1e995) | 0;
  return () => {
    counter = (counter + 0x6d2b79f5) | 0;
    let mixed = Math.imul(counter ^ (counter >>> 15), 1 | counter);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Tools of lognormal mass; needs with one to six ways of one to three pieces, popular tools named far more often (Zipf);
 * a tenth of the ways built on smaller needs; events with up to three options, the weaker ones asking for less.
 * A guess at the shape of the real thing, not data.
 */
export function randomProblem(shape: RandomShape): Problem {
  const next = stream(shape.number);
  const below = (n: number): number => Math.floor(next() * n);
  const zipf = (n: number): number => Math.min(n - 1, Math.floor(n * next() ** 2.2));
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const bundleCount = shape.bundles ?? 0;

  const pieces = Array.from({ length: shape.pieces }, (_, p): Piece => {
    const grams = shape.coarse
      ? 100 * (1 + below(5))
      : Math.max(5, Math.round(Math.exp(5.3 + 1.1 * normal())));
    const owned = next() >= (shape.forSale ?? 0);
    const bundles = bundleCount > 0 && next() < 0.35 ? [below(bundleCount)] : [];
    const pin =
      next() < (shape.pins ?? 0) ? (next() < 0.5 ? ('always' as const) : ('never' as const)) : undefined;
    return {
      id: `p${p}`,
      grams,
      millilitres: Math.round(grams * (0.3 + next())),
      cents: owned ? 0 : next() < 0.2 && bundles.length > 0 ? null : 100 * (1 + below(80)),
      owned,
      ...(bundles.length > 0 ? { bundles } : {}),
      ...(pin ? { pin } : {}),
    };
  });
  const bundles = Array.from({ length: bundleCount }, (_, b) => ({
    id: `b${b}`,
    cents: 100 * (5 + below(150)),
    caseGrams: 50 * below(8),
    caseMillilitres: 100 * below(8),
    carry: next() < 0.5 ? ('whole' as const) : ('loose' as const),
    owned: next() < 0.4,
  }));

  const order = pieces.map((_, p) => p);
  for (let i = order.length - 1; i > 0; i--) {
    const j = below(i + 1);
    [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
  }
  const popular = (): number => order[zipf(pieces.length)] ?? 0;
  const way = (n: number): Way => {
    const size = 1 + below(3);
    const named = new Set<number>();
    for (let i = 0; i < size; i++) named.add(popular());
    return { pieces: [...named], needs: n > 3 && next() < 0.1 ? [below(n)] : [] };
  };
  const needs: Need[] = [];
  for (let n = 0; n < shape.needs; n++) {
    if (next() < (shape.enough ?? 0)) {
      const from = Array.from({ length: 2 + below(4) }, () => ({ piece: popular(), units: 1 + below(4) }));
      needs.push({ kind: 'enough', units: 1 + below(6), from });
      continue;
    }
    const count = 1 + Math.min(5, Math.floor(-1.1 * Math.log(1 - next())));
    needs.push({ kind: 'any', ways: Array.from({ length: count }, () => way(n)) });
  }

  const events = Array.from({ length: shape.events }, (_, e): TroubleEvent => {
    const gain = Math.max(1, Math.round((shape.gain ?? 40_000) * Math.exp(1.2 * normal()) * 0.3));
    const asked = new Set<NeedIndex>();
    for (let i = 1 + below(5); i > 0; i--) asked.add(zipf(needs.length));
    const full = [...asked];
    const options: Option[] = [{ needs: full, gain, label: 'proper' }];
    if (next() < 0.5)
      options.push({ needs: full.slice(1), gain: Math.round(gain * 0.6), label: 'with care' });
    if (next() < 0.25)
      options.push({ needs: [zipf(needs.length)], gain: Math.round(gain * 0.4), label: 'other' });
    return { id: `e${e}`, loss: gain + below(gain + 1), options };
  });

  const total = pieces.reduce((sum, { grams }) => sum + grams, 0);
  const mass: LimitRow = {
    id: 'mass',
    limit: Math.round(total * shape.massShare),
    carried: pieces.map(({ grams }, piece) => ({ piece, weight: grams })),
    bundles: bundles.flatMap(({ caseGrams, carry }, bundle) =>
      carry === 'whole' && caseGrams > 0 ? [{ bundle, weight: caseGrams }] : [],
    ),
  };
  const limits = [mass];
  for (let row = 0; row < (shape.rows ?? 0); row++) {
    // The third is an axle: loads behind it count against it, loads ahead of the other lift it.
    const carried = pieces.map(({ grams, millilitres }, piece) => ({
      piece,
      weight:
        row === 0
          ? millilitres
          : row === 1
            ? next() < 0.3
              ? grams
              : 0
            : Math.round(grams * (next() * 1.3 - 0.2)),
    }));
    const most = carried.reduce((sum, { weight }) => sum + Math.max(0, weight), 0);
    limits.push({ id: `row${row}`, limit: Math.round(most * (0.3 + 0.2 * next())), carried });
  }
  if ((shape.forSale ?? 0) > 0) {
    const bought = pieces.flatMap(({ cents, owned }, piece) =>
      !owned && cents !== null ? [{ piece, weight: cents }] : [],
    );
    const ofBundles = bundles.flatMap(({ cents, owned }, bundle) =>
      owned ? [] : [{ bundle, weight: cents }],
    );
    const price = [...bought, ...ofBundles].reduce((sum, { weight }) => sum + weight, 0);
    limits.push({ id: 'money', limit: Math.round(price * 0.25), carried: [], bought, bundles: ofBundles });
  }
  const must: NeedIndex[] = [];
  for (let i = 0; i < (shape.must ?? 0); i++) must.push(below(needs.length));
  return { pieces, bundles, needs, events, limits, must: [...new Set(must)], fixedLoss: below(1000) };
}
