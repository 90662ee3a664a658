import type { Randomness } from '@waymend/core/simulating/simulate';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Streams apart from each other by this many seeds, so that stream 1 of seed 1 is not stream 0 of seed 2. */
const STRIDE = 0x9e3779b1;

/** Repeatable uniform numbers: the same seed and stream give the same numbers on every machine. */
export function seeded(seed: number): Randomness {
  return (stream) => {
    const generator = xoroshiro128plus((seed ^ Math.imul(stream + 1, STRIDE)) | 0);
    return () => uniformFloat64(generator);
  };
}
