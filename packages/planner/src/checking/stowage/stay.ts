import type { StowProblem } from '@waymend/core/stowing/stow-problem';
import type { LookedUp } from './lain.ts';

/** What was put by hand is where it was put; the spare wheel keeps its berth; nothing is set loose where people sit or on a roof. */
export function stayFaults(problem: StowProblem, { lain, left, berthOf }: LookedUp): readonly string[] {
  const faults: string[] = [];
  for (const piece of left)
    if (piece.byHand !== undefined) faults.push(`${piece.id} was put by hand and has lost its place.`);
  for (const { piece, bag, pocket, berth } of lain) {
    const { byHand } = piece;
    if (
      byHand?.kind === 'bag' &&
      (bag?.id !== byHand.bag || (byHand.pocket !== null && pocket?.id !== byHand.pocket))
    )
      faults.push(`${piece.id} was put in ${byHand.bag} by hand and is not there.`);
    if (byHand?.kind === 'berth' && berth.id !== byHand.berth)
      faults.push(`${piece.id} was put in ${byHand.berth} by hand and is not there.`);
    if (bag === null && byHand === undefined && (berth.roof || berth.seat))
      faults.push(`${piece.id} is loose in ${berth.id}.`);
    if (bag !== null && piece.wheel === true && byHand?.kind !== 'bag')
      faults.push(`${piece.id} is in a bag.`);
  }
  for (const bag of problem.bags) {
    const at = berthOf.get(bag.id);
    if (at === undefined) continue;
    const fixed = problem.berths.find(({ id }) => id === bag.fixedIn);
    if (fixed !== undefined && at !== fixed) faults.push(`Bag ${bag.id} was fixed in ${fixed.id}.`);
    if (fixed === undefined && (at.roof || at.seat) && at.id !== bag.berth)
      faults.push(`Bag ${bag.id} was put in ${at.id}, and not by hand.`);
  }
  for (const { piece, bag, berth } of lain) {
    const owner = piece.wheel === true || piece.byHand !== undefined;
    if (berth.wheelOnly && !owner)
      faults.push(`${piece.id} ${bag === null ? 'is' : 'is in a bag'} in the berth of the spare wheel.`);
  }
  return faults;
}
