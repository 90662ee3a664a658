import type { Problem } from './problem.ts';

/** Lists of lists in two flat arrays: list i is `item[start[i]] .. item[start[i + 1] - 1]`. */
export interface Lists {
  readonly start: Int32Array;
  readonly item: Int32Array;
}

export function lists(of: readonly (readonly number[])[]): Lists {
  const start = new Int32Array(of.length + 1);
  for (let i = 0; i < of.length; i++) start[i + 1] = (start[i] ?? 0) + (of[i]?.length ?? 0);
  const item = new Int32Array(start[of.length] ?? 0);
  for (let i = 0; i < of.length; i++) item.set(of[i] ?? [], start[i]);
  return { start, item };
}

/**
 * A problem turned inside out: for each piece and need, what it helps to complete. Everything is a flat typed array, so
 * that carrying or leaving a piece touches a few numbers and allocates nothing.
 */
export interface CompiledProblem {
  readonly problem: Problem;
  /** Distinct pieces plus distinct smaller needs in each way; ways are numbered through all needs. */
  readonly waySize: Int32Array;
  readonly wayNeed: Int32Array;
  /** Ways each piece, and each need, is part of. */
  readonly pieceWays: Lists;
  readonly needWays: Lists;
  /** 'enough' needs each piece adds to, and by how many units (parallel to `item`). */
  readonly pieceEnough: Lists;
  readonly pieceEnoughUnits: Float64Array;
  /** Units asked by an 'enough' need; 1 for an 'any' need, whose units are its complete ways. */
  readonly needUnits: Float64Array;
  /** Options are numbered through all events; options of event e are `eventStart[e] .. eventStart[e + 1] - 1`. */
  readonly eventStart: Int32Array;
  readonly optionEvent: Int32Array;
  readonly optionSize: Int32Array;
  readonly optionGain: Float64Array;
  readonly needOptions: Lists;
  /** 1 where the need must be met. */
  readonly must: Uint8Array;
  readonly mustCount: number;
  readonly grams: Float64Array;
  /** Loss when nothing at all is done. */
  readonly totalLoss: number;
}

export function compile(problem: Problem): CompiledProblem {
  const { pieces, needs, events } = problem;
  const empty = (length: number): number[][] => Array.from({ length }, () => []);
  const pieceWays = empty(pieces.length);
  const needWays = empty(needs.length);
  const pieceEnough = empty(pieces.length);
  const pieceUnits = empty(pieces.length);
  const needOptions = empty(needs.length);
  const waySize: number[] = [];
  const wayNeed: number[] = [];
  const needUnits = new Float64Array(needs.length);

  needs.forEach((need, n) => {
    if (need.kind === 'enough') {
      needUnits[n] = need.units;
      for (const { piece, units } of need.from) {
        pieceEnough[piece]?.push(n);
        pieceUnits[piece]?.push(units);
      }
      return;
    }
    needUnits[n] = 1;
    for (const way of need.ways) {
      const w = waySize.length;
      const ofPieces = new Set(way.pieces);
      const ofNeeds = new Set(way.needs);
      waySize.push(ofPieces.size + ofNeeds.size);
      wayNeed.push(n);
      for (const p of ofPieces) pieceWays[p]?.push(w);
      for (const smaller of ofNeeds) needWays[smaller]?.push(w);
    }
  });

  const eventStart = new Int32Array(events.length + 1);
  const optionEvent: number[] = [];
  const optionSize: number[] = [];
  const optionGain: number[] = [];
  let totalLoss = problem.fixedLoss;
  events.forEach((event, e) => {
    totalLoss += event.loss;
    for (const option of event.options) {
      const o = optionEvent.length;
      const ofNeeds = new Set(option.needs);
      optionEvent.push(e);
      optionSize.push(ofNeeds.size);
      optionGain.push(option.gain);
      for (const n of ofNeeds) needOptions[n]?.push(o);
    }
    eventStart[e + 1] = optionEvent.length;
  });

  const must = new Uint8Array(needs.length);
  for (const n of problem.must) must[n] = 1;
  return {
    problem,
    waySize: Int32Array.from(waySize),
    wayNeed: Int32Array.from(wayNeed),
    pieceWays: lists(pieceWays),
    needWays: lists(needWays),
    pieceEnough: lists(pieceEnough),
    pieceEnoughUnits: Float64Array.from(pieceUnits.flat()),
    needUnits,
    eventStart,
    optionEvent: Int32Array.from(optionEvent),
    optionSize: Int32Array.from(optionSize),
    optionGain: Float64Array.from(optionGain),
    needOptions: lists(needOptions),
    must,
    mustCount: must.reduce((sum, one) => sum + one, 0),
    grams: Float64Array.from(pieces, (piece) => piece.grams),
    totalLoss,
  };
}
