import type { Refusal } from '@waymend/core/result';
import type { z } from 'zod';
import { ONE_OF } from '../record/collections.ts';
import { garageFile } from '../record/schema.ts';
import { nearest } from './nearest.ts';
import type { Plain, Tree } from './yaml-tree.ts';

type Issue = z.core.$ZodIssue;

const ONE: Readonly<Record<string, string>> = ONE_OF;

/** Turns the schema's complaints into refusals: one plain sentence each, with file, line, and what to do. */
export function refusalsOf(issues: readonly Issue[], tree: Tree, name: string): readonly Refusal[] {
  return issues.flatMap((issue): Refusal[] => {
    const at = (id: string, what: string, more: readonly PropertyKey[] = []): Refusal => {
      const path = [...issue.path, ...more];
      const line = tree.lineOf(path);
      return { id, message: `${name}, line ${line}: ${what}`, path: path.map(String).join('.'), line };
    };
    const where = placeOf(issue.path);
    switch (issue.code) {
      case 'unrecognized_keys':
        return issue.keys.map((key) => at('key-unknown', unknownKey(key, issue.path), [key]));
      case 'invalid_key':
        return [
          at(
            'id-unreadable',
            `"${last(issue.path)}" cannot be an id; use small letters, digits and hyphens, at most 64`,
          ),
        ];
      case 'invalid_value':
        return [at('value-unknown', notOneOf(where, valueAt(tree.value, issue.path), issue.values))];
      case 'too_big':
      case 'too_small':
        return [at('value-out-of-range', outOfRange(where, issue))];
      case 'invalid_union': {
        const said = issue.errors.flat().find((inner) => inner.code === 'custom');
        if (said !== undefined) return [at(idIn(said) ?? 'value-unreadable', `${where}: ${said.message}`)];
        const wanted = [
          ...new Set(
            issue.errors
              .flat()
              .flatMap((inner) => (inner.code === 'invalid_type' ? [word(inner.expected)] : [])),
          ),
        ];
        return [
          at('value-wrong-kind', wrongKind(where, wanted.join(' or '), valueAt(tree.value, issue.path))),
        ];
      }
      case 'invalid_type': {
        const value = valueAt(tree.value, issue.path);
        return [
          value === undefined
            ? at('value-missing', `${where} is missing; add ${word(issue.expected)}`)
            : at('value-wrong-kind', wrongKind(where, word(issue.expected), value)),
        ];
      }
      case 'custom':
        return [at(idIn(issue) ?? 'value-unreadable', `${where}: ${issue.message}`)];
      case 'invalid_format':
      case 'not_multiple_of':
      case 'invalid_element':
        return [
          at(
            'value-unreadable',
            `${where} cannot be ${show(valueAt(tree.value, issue.path))}; see the format of the garage file`,
          ),
        ];
    }
  });
}

function idIn(issue: Issue): string | null {
  if (issue.code !== 'custom') return null;
  const id: unknown = issue.params?.['id'];
  return typeof id === 'string' ? id : null;
}

/** 'grams of belonging w17', as a person would point at it. */
function placeOf(path: readonly PropertyKey[]): string {
  const [table, id, ...rest] = path.map(String);
  if (table === undefined) return 'the file';
  if (id === undefined) return table;
  const entity = `${ONE[table] ?? table} ${id}`;
  return rest.length === 0 ? entity : `${rest.join('.')} of ${entity}`;
}

function last(path: readonly PropertyKey[]): string {
  return String(path.at(-1) ?? '').slice(0, 60);
}

function unknownKey(key: string, path: readonly PropertyKey[]): string {
  const shown = key.slice(0, 60);
  const known = keysAt(path);
  const close = known === null ? null : nearest(key, known);
  const what = path.length === 0 ? 'a garage' : placeOf(path);
  return close === null
    ? `${what} has nothing called "${shown}"; remove it or put it in a note`
    : `${what} has nothing called "${shown}"; did you mean "${close}"?`;
}

/** The keys a part of the file may have; null where that is free. */
function keysAt(path: readonly PropertyKey[]): readonly string[] | null {
  const [table] = path;
  if (table === undefined) return Object.keys(garageFile.shape);
  if (path.length !== 2) return null;
  const field = Object.entries(garageFile.shape).find(([key]) => key === table)?.[1];
  const inner = field !== undefined && 'unwrap' in field ? field.unwrap() : null;
  if (inner === null || !('valueType' in inner)) return null;
  const { valueType } = inner;
  return 'shape' in valueType ? Object.keys(valueType.shape) : null;
}

function notOneOf(where: string, value: Plain | undefined, values: readonly unknown[]): string {
  const words = values.map(String);
  const close = typeof value === 'string' ? nearest(value, words) : null;
  const listed = words.slice(0, 8).join(', ');
  const help =
    close === null ? `one of ${listed}${words.length > 8 ? ' ...' : ''}` : `did you mean ${close}?`;
  return `${where} cannot be ${show(value)}; ${help}`;
}

function outOfRange(where: string, issue: Extract<Issue, { code: 'too_big' | 'too_small' }>): string {
  const limit =
    issue.code === 'too_big' ? `at most ${String(issue.maximum)}` : `at least ${String(issue.minimum)}`;
  if (issue.origin === 'string')
    return `${where} is too long; ${limit} characters fit, put the rest in a note`;
  if (issue.origin === 'array') return `${where} needs ${limit} entry; add one`;
  return `${where} must be ${limit}; correct the number`;
}

function wrongKind(where: string, wanted: string, value: Plain | undefined): string {
  if (typeof value === 'number' && wanted === 'text')
    return `${where} is the number ${value} where text belongs; put it in quotes`;
  return `${where} is ${show(value)} where ${wanted} belongs; correct it`;
}

function word(expected: string): string {
  switch (expected) {
    case 'string':
      return 'text';
    case 'number':
    case 'int':
      return 'a number';
    case 'boolean':
      return 'true or false';
    case 'array':
      return 'a list in brackets';
    case 'object':
    case 'record':
      return 'a group of entries';
    default:
      return expected;
  }
}

function show(value: Plain | undefined): string {
  if (value === undefined) return 'left out';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of entries';
  const text = String(value);
  return `"${text.length > 40 ? `${text.slice(0, 40)}...` : text}"`;
}

function valueAt(value: Plain, path: readonly PropertyKey[]): Plain | undefined {
  let here: Plain | undefined = value;
  for (const step of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = Object.entries(here).find(([key]) => key === String(step))?.[1];
  }
  return here;
}
