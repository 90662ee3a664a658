import type { KitState } from '@waymend/core/choosing/kit-state';
import type { BuiltProblem } from '@waymend/core/repairing/build-problem';
import type { LoadAnswer } from '../answer/plan-answer.ts';
import type { Prepared } from './plan-trip.ts';

/** Names listed before a sentence says "and so many more". */
const NAMED = 5;

/** What the owner should know before trusting the plan, each in a sentence. */
export function warningsOf(
  prepared: Prepared,
  state: KitState,
  load: LoadAnswer,
  broken: readonly string[],
  stated: BuiltProblem,
): readonly string[] {
  const { built } = prepared;
  const { garage, scene, tripId } = built;
  const out: string[] = [];
  for (const { fn } of stated.unmetFloor)
    out.push(`Nothing owned or affordable does this, and no trip should leave without it: ${fn}.`);
  for (const sentence of broken) out.push(`Load: ${sentence}.`);
  if (built.vehicle.ratingsAssumed === true)
    out.push(
      `The ratings of ${built.vehicle.name} are typical of its kind: read them off its plate before you trust what the load says.`,
    );
  const used = new Set(
    scene.jobs.flatMap((j) => j.needs.flatMap((n) => (n.kind === 'turn' ? [n.joint] : []))),
  );
  const assumed = scene.joints.filter((j) => j.status === 'assumed' && used.has(j.id));
  if (assumed.length > 0) {
    out.push(
      `${assumed.length} of the ${used.size} sizes this plan rests on are only assumed: ${some(assumed.map((j) => `${j.title} (${j.size.label})`))}. Measure them before you buy or leave anything.`,
    );
  }
  const names = new Map(scene.pieces.map((p) => [p.belonging, p.name]));
  const unready = Object.entries(garage.belongings).filter(
    ([, b]) => b.state !== 'ready' && b.state !== 'unproven',
  );
  if (unready.length > 0) {
    const list = unready.map(([id, b]) => `${names.get(id) ?? id} (${b.state})`);
    out.push(`Counts for nothing until it is put right: ${some(list)}.`);
  }
  const rough = Object.values(garage.legs).filter((l) => l.trip === tripId && l.helpKm > 300);
  if (rough.length > 0)
    out.push(
      'Help is more than 300 km away on part of this route: temporary repairs that are trusted for less do not count there.',
    );
  if (
    load.gross.marginKg !== null &&
    load.gross.marginKg >= 0 &&
    load.gross.marginKg < 0.1 * (load.gross.limitKg ?? 0)
  ) {
    out.push(
      `The vehicle is within ${Math.round(load.gross.marginKg)} kg of its gross limit: weigh it loaded, axle by axle.`,
    );
  }
  if (state.mustOpen > 0) out.push('Not everything the floor asks for is aboard.');
  return out;
}

function some(names: readonly string[]): string {
  const shown = names.slice(0, NAMED).join(', ');
  return names.length > NAMED ? `${shown} and ${names.length - NAMED} more` : shown;
}
