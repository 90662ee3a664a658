/**
 * The gamma distribution with rate 1, for priors of rates. The regularised incomplete gamma function by its series below
 * the mean and by its continued fraction above (NIST Digital Library of Mathematical Functions 8.11.4 and 8.9.2).
 */

const TINY = 1e-300;
const ENOUGH = 1e-15;
const MOST_TERMS = 10_000;

/** ln Gamma(x) for x > 0: Stirling's series (DLMF 5.11.1) after shifting x upwards. */
export function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  for (; z < 12; z += 1) shift += Math.log(z);
  const w = 1 / (z * z);
  const series = (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w / 1188)))) / z;
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - shift;
}

/** Chance that a gamma variable of this shape and rate 1 is at most x. */
export function gammaBelow(shape: number, x: number): number {
  if (!(shape > 0)) throw new Error(`A gamma distribution has a shape above 0, not ${shape}`);
  if (x <= 0) return 0;
  const scale = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  if (x < shape + 1) {
    let term = 1 / shape;
    let sum = term;
    for (let n = 1; n < MOST_TERMS && term > sum * ENOUGH; n++) {
      term *= x / (shape + n);
      sum += term;
    }
    return Math.min(1, scale * sum);
  }
  let b = x + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const a = -n * (n - shape);
    b += 2;
    d = 1 / (Math.abs(a * d + b) < TINY ? TINY : a * d + b);
    c = Math.abs(b + a / c) < TINY ? TINY : b + a / c;
    const step = c * d;
    fraction *= step;
    if (Math.abs(step - 1) < ENOUGH) break;
  }
  return Math.max(0, 1 - scale * fraction);
}

/** The value that a gamma variable of this shape and rate 1 stays below with the chance given, 0 < chance < 1. */
export function gammaQuantile(shape: number, chance: number): number {
  let low = 0;
  let high = Math.max(1, shape);
  while (gammaBelow(shape, high) < chance) high *= 2;
  for (let n = 0; n < 200 && high - low > 1e-13 * high; n++) {
    const middle = (low + high) / 2;
    if (gammaBelow(shape, middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
