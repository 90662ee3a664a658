import type { KitState } from '@waymend/core/choosing/kit-state';
import type { PieceIndex } from '@waymend/core/choosing/problem';
import { worthOf } from '@waymend/core/explaining/worth';
import type { Garage } from '@waymend/garage/record/schema';
import type { KitItem } from '../answer/plan-answer.ts';
import type { Reading } from './reading.ts';
import { byBelonging, chanceLost, jobsOf } from './reading.ts';

/** One line for each belonging that comes, most worth first (M10). */
export function kitItems(
  reading: Reading,
  state: KitState,
  bought: ReadonlySet<PieceIndex>,
  garage: Garage,
): readonly KitItem[] {
  const items: KitItem[] = [];
  for (const [id, pieces] of byBelonging(reading)) {
    const carried = pieces.filter((p) => state.carried[p] === 1);
    const first = carried[0] === undefined ? undefined : reading.pieces[carried[0]];
    if (first === undefined) continue;
    const { loss, breaksMust, optionsLost } = worthOf(state, carried);
    items.push({
      id,
      name: first.name,
      grams: carried.reduce((sum, p) => sum + (reading.pieces[p]?.grams ?? 0), 0),
      copies: carried.length,
      weighed: garage.belongings[id]?.weighed ?? false,
      worth: chanceLost(state.loss, loss),
      jobs: jobsOf(reading, optionsLost),
      reason: reasonOf(reading, state, carried, first.pin === 'always', loss > 0, breaksMust),
      berth: first.berth,
      bought: carried.some((p) => bought.has(p)) || !first.owned,
    });
  }
  return items.sort((a, b) => b.worth - a.worth || a.grams - b.grams || (a.id < b.id ? -1 : 1));
}

/** Why it comes: what the owner said, what it is worth, what every trip or a job that must be possible asks, or its set. */
function reasonOf(
  reading: Reading,
  state: KitState,
  carried: readonly PieceIndex[],
  pinned: boolean,
  worth: boolean,
  breaksMust: boolean,
): KitItem['reason'] {
  if (pinned) return 'pinned';
  if (worth) return 'worth';
  if (!breaksMust) return 'in-set';
  for (const p of carried) state.leave(p);
  const opensFloor = [...reading.floor].some((need) => !state.needMet(need));
  for (const p of carried) state.carry(p);
  return opensFloor ? 'floor' : 'must-do';
}
