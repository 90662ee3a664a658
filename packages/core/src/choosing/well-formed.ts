import type { Problem } from './problem.ts';

/**
 * Throws on a problem that breaks the shape's own rules: an index out of range, a need that refers to a later one, a
 * number that is not whole. Such a problem is a bug of whoever built it, not a mistake of the user.
 */
export function assertWellFormed(problem: Problem): void {
  const { pieces, bundles, needs, events, limits } = problem;
  const index = (value: number, length: number, what: string): void => {
    if (!Number.isInteger(value) || value < 0 || value >= length)
      throw new Error(`${what} ${value} does not exist`);
  };
  const whole = (value: number, what: string): void => {
    if (!Number.isSafeInteger(value)) throw new Error(`${what} is ${value}, not a whole number`);
  };
  const least = (value: number, what: string): void => {
    whole(value, what);
    if (value < 0) throw new Error(`${what} is ${value}, below 0`);
  };

  pieces.forEach((piece, p) => {
    least(piece.grams, `grams of piece ${p}`);
    least(piece.millilitres, `millilitres of piece ${p}`);
    if (piece.cents !== null) least(piece.cents, `cents of piece ${p}`);
    for (const b of piece.bundles ?? []) index(b, bundles.length, `piece ${p}: bundle`);
  });
  bundles.forEach((bundle, b) => {
    least(bundle.cents, `cents of bundle ${b}`);
    least(bundle.caseGrams, `case grams of bundle ${b}`);
    least(bundle.caseMillilitres, `case millilitres of bundle ${b}`);
  });
  needs.forEach((need, n) => {
    if (need.kind === 'enough') {
      least(need.units, `units of need ${n}`);
      for (const { piece, units } of need.from) {
        index(piece, pieces.length, `need ${n}: piece`);
        least(units, `units in need ${n}`);
      }
      return;
    }
    for (const way of need.ways) {
      for (const piece of way.pieces) index(piece, pieces.length, `need ${n}: piece`);
      for (const smaller of way.needs) index(smaller, n, `need ${n}: smaller need`);
    }
  });
  events.forEach((event, e) => {
    whole(event.loss, `loss of event ${e}`);
    for (const option of event.options) {
      whole(option.gain, `a gain of event ${e}`);
      for (const need of option.needs) index(need, needs.length, `event ${e}: need`);
    }
  });
  limits.forEach((row, r) => {
    whole(row.limit, `limit ${r}`);
    for (const { piece, weight } of [...row.carried, ...(row.bought ?? [])]) {
      index(piece, pieces.length, `limit ${r}: piece`);
      whole(weight, `a weight of limit ${r}`);
    }
    for (const { bundle, weight } of row.bundles ?? []) {
      index(bundle, bundles.length, `limit ${r}: bundle`);
      whole(weight, `a weight of limit ${r}`);
    }
  });
  for (const need of problem.must) index(need, needs.length, 'must: need');
  whole(problem.fixedLoss, 'fixed loss');
}
