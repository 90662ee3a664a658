import type { Need, Option, Piece, Problem, TroubleEvent, Way } from './problem.ts';
import { stream } from './random-problem.ts';

/** Size of a made-up workshop. */
export interface WorkshopShape {
  /** Same number, same problem. */
  readonly number: number;
  /** Fastener sizes; each has one or two wrenches and sockets on one or two drives. */
  readonly sizes: number;
  /** Other functions, each offered by one to three tools. */
  readonly functions: number;
  readonly spares: number;
  readonly jobs: number;
  readonly events: number;
  readonly massShare: number;
  /** Share of the volume of everything that fits; 1 or more: no volume limit. */
  readonly volumeShare?: number;
}

/**
 * A problem built the way the real one is: wrenches and sockets by size, handles and extensions shared by all sockets of a
 * drive, turn-and-hold pairs, tools by function, spares used by one to three repairs, repairs of several needs at two
 * grades. For benchmarks: closer to a garage than random sets.
 */
export function workshopProblem(shape: WorkshopShape): Problem {
  const next = stream(shape.number);
  const below = (n: number): number => Math.floor(next() * n);
  const zipf = (n: number): number => Math.min(n - 1, Math.floor(n * next() ** 2));
  const around = (grams: number): number => Math.max(5, Math.round(grams * (0.6 + 0.8 * next())));
  const pieces: Piece[] = [];
  const piece = (id: string, grams: number): number => {
    const millilitres = Math.round(grams * (0.2 + next()));
    pieces.push({ id: `${id}-${pieces.length}`, grams, millilitres, cents: 0, owned: true });
    return pieces.length - 1;
  };
  const way = (...of: number[]): Way => ({ pieces: [...new Set(of)], needs: [] });

  const drives = [0.35, 1, 2.2].map((factor) => ({
    handles: [piece('ratchet', around(300 * factor)), piece('bar', around(450 * factor))],
    extension: piece('extension', around(150 * factor)),
  }));
  const adjustables = [piece('adjustable', 260), piece('adjustable', 540), piece('grips', 480)];
  const needs: Need[] = [];
  const need = (ways: Way[]): number => needs.push({ kind: 'any', ways }) - 1;

  // Per size: how to turn it, reach it, and turn it while holding the other end, each proper or with care.
  const turning = Array.from({ length: shape.sizes }, (_, s) => {
    const mass = 30 + 12 * s;
    const wrenches = [piece('wrench', around(mass))];
    if (next() < 0.3) wrenches.push(piece('wrench', around(mass)));
    const drive = drives[s < shape.sizes / 3 ? below(2) : 1 + below(2)];
    const sockets = [piece('socket', around(mass * 0.8))];
    const long = next() < 0.5 ? [piece('deep-socket', around(mass * 1.2))] : [];
    const handles = drive?.handles ?? [];
    const extension = drive?.extension ?? 0;
    const bySocket = [...sockets, ...long].flatMap((socket) => handles.map((handle) => way(socket, handle)));
    const proper = [...wrenches.map((w) => way(w)), ...bySocket];
    const care = [...proper, ...adjustables.slice(0, 1 + below(3)).map((a) => way(a))];
    const deep = [...sockets, ...long].flatMap((socket) =>
      handles.map((handle) => way(socket, handle, extension)),
    );
    const pairs: Way[] = [];
    for (const [i, held] of wrenches.entries()) {
      for (const other of wrenches.slice(i + 1)) pairs.push(way(held, other));
      for (const turned of bySocket) pairs.push(way(held, ...turned.pieces));
    }
    const carePairs = [...pairs, ...wrenches.flatMap((w) => adjustables.map((a) => way(w, a)))];
    return [
      { proper: need(proper), care: need(care) },
      { proper: need(deep), care: need(deep) },
      { proper: need(pairs), care: need(carePairs) },
    ];
  });
  const functions = Array.from({ length: shape.functions }, (_, f) => {
    const heavy = next() < 0.15 ? 4000 : 350;
    const best = Array.from({ length: 1 + below(2) }, () => piece(`tool${f}`, around(heavy)));
    const poor = next() < 0.4 ? [piece(`makeshift${f}`, around(heavy * 0.4))] : [];
    return {
      proper: need(best.map((p) => way(p))),
      care: need([...best, ...poor].map((p) => way(p))),
    };
  });
  const spares = Array.from({ length: shape.spares }, (_, s) => {
    const copies = Array.from({ length: 1 + below(2) }, () =>
      piece(`spare${s}`, around(next() < 0.2 ? 3000 : 400)),
    );
    return need(copies.map((p) => way(p)));
  });

  const jobs = Array.from({ length: shape.jobs }, () => {
    const proper = new Set<number>();
    const care = new Set<number>();
    const ask = (of: { proper: number; care: number } | undefined): void => {
      proper.add(of?.proper ?? 0);
      care.add(of?.care ?? 0);
    };
    for (let i = 1 + below(4); i > 0; i--) ask(turning[zipf(turning.length)]?.[zipf(3)]);
    for (let i = 1 + below(3); i > 0; i--) ask(functions[zipf(functions.length)]);
    if (next() < 0.6) {
      const spare = spares[zipf(spares.length)] ?? 0;
      proper.add(spare);
      care.add(spare);
    }
    return { proper: [...proper], care: [...care] };
  });
  const events = Array.from({ length: shape.events }, (_, e): TroubleEvent => {
    const loss = Math.max(
      10,
      Math.round(30_000 * Math.exp(1.4 * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(6.283 * next()))),
    );
    const options: Option[] = [];
    for (let i = 1 + below(2); i > 0; i--) {
      const job = jobs[below(jobs.length)];
      const chance = 0.4 + 0.55 * next();
      options.push({ needs: job?.proper ?? [], gain: Math.round(loss * chance), label: 'proper' });
      options.push({ needs: job?.care ?? [], gain: Math.round(loss * chance * 0.9), label: 'with care' });
    }
    return { id: `e${e}`, loss, options };
  });
  const total = (of: (p: Piece) => number): number => pieces.reduce((sum, p) => sum + of(p), 0);
  const row = (id: string, of: (p: Piece) => number, share: number) => ({
    id,
    limit: Math.round(total(of) * share),
    carried: pieces.map((p, index) => ({ piece: index, weight: of(p) })),
  });
  const limits = [row('mass', (p) => p.grams, shape.massShare)];
  if ((shape.volumeShare ?? 1) < 1) limits.push(row('volume', (p) => p.millilitres, shape.volumeShare ?? 1));
  return { pieces, bundles: [], needs, events, limits, must: [], fixedLoss: 0 };
}
