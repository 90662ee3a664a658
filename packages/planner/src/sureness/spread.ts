import type { Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { SureBand } from '../answer/sure-answer.ts';
import { rateRatios } from '../explain/at-real-mass.ts';
import type { Prepared, Solved } from '../plan/plan-trip.ts';
import { seeded } from '../simulate/randomness.ts';
import type { Trade } from '../trade.ts';
import type { OpenByGroup } from './band.ts';
import { bandOf, chanceUnder } from './band.ts';
import type { GroupPrior } from './draws.ts';
import { rateDraws } from './draws.ts';
import { openByGroup } from './open-by-group.ts';
import { groupPriors } from './priors.ts';

/** Beliefs that only weigh a kit: cheap, so there are many, and always the same ones. */
const BAND_DRAWS = 1_000;
const BAND_SEED = 1;

/** The spread beside a plan's chance, without looking for any other kit: quick enough for every change. */
export function spreadOf(
  { built, reading }: Prepared,
  solved: Pick<Solved, 'outcome' | 'state'>,
  trade: Trade,
): Result<SureBand> {
  const ratio = rateRatios(built, trade, solved.outcome.grams);
  if (!ratio.ok) return ratio;
  return ok(band(openByGroup(reading, solved.state, ratio.value), groupPriors(built, trade)));
}

export function band(open: OpenByGroup, priors: readonly GroupPrior[], together = false): SureBand {
  const draws = rateDraws(priors, BAND_DRAWS, seeded(BAND_SEED), together);
  return { chance: chanceUnder(open, new Map()), ...bandOf(open, draws) };
}
