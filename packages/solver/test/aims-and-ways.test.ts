import { bruteForce } from '@waymend/core/choosing/brute-force';
import { plan } from '@waymend/core/choosing/plan';
import type { PlanOptions } from '@waymend/core/choosing/plan';
import type { Aim } from '@waymend/core/choosing/problem';
import { createHighsSolver } from '@waymend/solver/highs-solver';
import { describe, expect, it } from 'vitest';
import { smallProblem, wrongWith } from './support-check.ts';

const solver = await createHighsSolver();

/** Every road through the engine: reduced or not, either form of the model, own tree, integer solver, handing over. */
const ROADS: readonly (readonly [string, PlanOptions])[] = [
  ['reduced, tight, own tree', {}],
  ['raw, tight', { reduce: false }],
  ['raw, plain', { reduce: false, form: 'plain' }],
  ['reduced, plain, integer solver alone', { form: 'plain', mostNodes: 0 }],
  ['reduced, tight, integer solver alone', { mostNodes: 0 }],
  ['handed over after two nodes', { mostNodes: 2 }],
];

describe('every aim by every road, against every subset', () => {
  it.each(ROADS)('[M6] %s', (_, options) => {
    const wrong: string[] = [];
    for (let number = 1; number <= 120; number++) {
      const problem = smallProblem(number);
      const best = bruteForce(problem, { kind: 'best-chance' });
      const aims: Aim[] = [
        { kind: 'best-chance' },
        { kind: 'must-do' },
        { kind: 'least-mass', maxLoss: (best?.evaluation.loss ?? 0) + (number % 9) * 150 },
      ];
      for (const aim of aims) {
        const fault = wrongWith(problem, aim, plan(problem, aim, solver, options));
        if (fault) wrong.push(`#${number} ${aim.kind}: ${fault}`);
      }
    }
    expect(wrong).toEqual([]);
  });
});
