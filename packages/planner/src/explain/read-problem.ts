import { compile } from '@waymend/core/choosing/compile';
import type { BuiltProblem } from '@waymend/core/repairing/build-problem';
import type { Reading } from './reading.ts';

/** Turns the problem inside out for explanations; the words are the builder's own. */
export function readProblem(built: BuiltProblem): Reading {
  const { scene, pieces, indexOf, options, troubles, blocked, unmetFloor } = built;
  const floor = new Set(built.floor.keys());
  return {
    scene,
    compiled: compile(built.problem),
    pieces,
    indexOf,
    options,
    troubles,
    blocked,
    floor,
    unmetFloor,
  };
}
