import type { Plain } from './yaml-tree.ts';

/** What changed from one file version to the next, on plain values: the schema of an old version is not kept in code. */
export interface MigrationStep {
  /** Version the step starts from; it ends at the next. */
  readonly from: number;
  readonly why: string;
  /** Receives a copy it may change. */
  readonly change: (file: { [key: string]: Plain }) => { [key: string]: Plain };
}

/**
 * Every step since version 1, in order. Version 1 is the newest, so there is none yet; test/data/garage-v1.yaml is frozen
 * and has to be read the same for ever.
 */
export const MIGRATION_STEPS: readonly MigrationStep[] = [];

/** Brings a file of version `from` to version `to`, step by step. The input is left as it was. */
export function migrate(
  file: { readonly [key: string]: Plain },
  from: number,
  to: number,
  steps: readonly MigrationStep[] = MIGRATION_STEPS,
): { [key: string]: Plain } {
  let current: { [key: string]: Plain } = structuredClone({ ...file });
  for (let version = from; version < to; version++) {
    const step = steps.find((candidate) => candidate.from === version);
    if (step === undefined) throw new Error(`no step leads from file version ${version} to ${version + 1}`);
    current = { ...step.change(current), waymend: version + 1 };
  }
  return current;
}
