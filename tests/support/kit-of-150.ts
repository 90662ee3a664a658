import { readFileSync } from 'node:fs';
import type { Solver } from '@waymend/core/choosing/solver-port';
import type { StowProblem } from '@waymend/core/stowing/stow-problem';
import { readGarage } from '@waymend/garage/file/read-garage';
import { buildScene } from '@waymend/planner/scene/build-scene';
import { SHIPPED_TRADE } from '@waymend/planner/shipped-trade';
import { stowProblemOf } from '@waymend/planner/stow/stow-problem-of';

const FILE = 'examples/demo.garage.yaml';

/** The first 150 belongings of the demo, by id, into its fourteen bags: the size that must be stowed in three seconds. */
export function kitOf150(solver: Solver): StowProblem {
  const read = readGarage(readFileSync(FILE, 'utf8'), FILE);
  if (!read.ok) throw new Error(read.error.map(({ message }) => message).join('\n'));
  const built = buildScene(read.value, 'loop', SHIPPED_TRADE);
  if (!built.ok) throw new Error(built.error.message);
  const carried = built.value.scene.pieces
    .flatMap((p) => (p.owned && p.grams <= 2_500 ? [p.id] : []))
    .slice(0, 150);
  const asked = stowProblemOf(built.value, { carried, wholeSets: [] }, SHIPPED_TRADE, solver);
  if (!asked.ok) throw new Error(asked.error.message);
  return asked.value.problem;
}
