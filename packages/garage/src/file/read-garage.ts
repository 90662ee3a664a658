import type { Refusal, Result } from '@waymend/core/result';
import { ok } from '@waymend/core/result';
import type { Garage } from '../record/schema.ts';
import { FILE_VERSION, garageFile } from '../record/schema.ts';
import { danglingReferences } from './check-references.ts';
import { doubtfulSizes } from './check-sizes.ts';
import { missingForPlanning } from './check-trips.ts';
import { doubtfulValues } from './check-values.ts';
import type { KnownIds } from './known-ids.ts';
import { SHIPPED_IDS } from './known-ids.ts';
import { whyUnreadable } from './limits.ts';
import { migrate } from './migrate.ts';
import { placeInFile } from './place-in-file.ts';
import { refusalsOf } from './schema-sentences.ts';
import { versionOf } from './version.ts';
import type { Plain } from './yaml-tree.ts';
import { parseTree } from './yaml-tree.ts';

const MOST_REFUSALS = 20;

export interface ReadOptions {
  /** 'plan' (default) also refuses a garage without vehicle, trip or route; 'edit' reads one that is being written. */
  readonly for?: 'plan' | 'edit';
  /** What the catalogue knows; the shipped one by default. */
  readonly known?: KnownIds;
}

/**
 * Reads a garage file (YAML or JSON). Everything in it is looked at before any of it is believed; refusals, at most 20,
 * come most useful first and say file, line and what to do. Ids that end in '-ask' are questions: the file is accepted
 * once the entity says `confirmed: true`.
 */
export function readGarage(
  text: string,
  name: string,
  options: ReadOptions = {},
): Result<Garage, readonly Refusal[]> {
  const unreadable = whyUnreadable(text, name);
  if (unreadable !== null) return refused([unreadable]);
  const tree = parseTree(text, name);
  if (!tree.ok) return refused(tree.error);
  const { value, lineOf } = tree.value;
  const version = versionOf(value, FILE_VERSION, name, lineOf);
  if ('refusal' in version) return refused([version.refusal]);
  const newest = isGroup(value) ? migrate(value, version.version, FILE_VERSION) : value;
  const parsed = garageFile.safeParse(newest);
  if (!parsed.success) return refused(refusalsOf(parsed.error.issues, tree.value, name));
  const garage = parsed.data;
  const at = placeInFile(name, lineOf);
  const known = options.known ?? SHIPPED_IDS;
  const refusals = [
    ...(options.for === 'edit' ? [] : missingForPlanning(garage, at)),
    ...danglingReferences(garage, known, at),
    ...questionsLast([...doubtfulValues(garage, at), ...doubtfulSizes(garage, at)]),
  ];
  return refusals.length > 0 ? refused(refusals) : ok(garage);
}

function isGroup(value: Plain): value is { [key: string]: Plain } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function questionsLast(refusals: readonly Refusal[]): readonly Refusal[] {
  const isQuestion = ({ id }: Refusal): boolean => id.endsWith('-ask');
  return [...refusals.filter((r) => !isQuestion(r)), ...refusals.filter(isQuestion)];
}

function refused(refusals: readonly Refusal[]): Result<never, readonly Refusal[]> {
  return { ok: false, error: refusals.slice(0, MOST_REFUSALS) };
}
