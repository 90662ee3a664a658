import type { Refusal, Result } from '@waymend/core/result';
import type { Document, ParsedNode } from 'yaml';
import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument } from 'yaml';
import { isForbiddenName } from '../record/forbidden-names.ts';
import { MOST_DEPTH, tooDeep } from './limits.ts';

/** What YAML and JSON share: plain values. */
export type Plain = string | number | boolean | null | Plain[] | { [key: string]: Plain };

/** A parsed file: its value, and the line on which each part of it stands. */
export interface Tree {
  readonly value: Plain;
  /** 1-based line of a path, or of the nearest part around it. */
  readonly lineOf: (path: readonly PropertyKey[]) => number;
}

const MOST_REFUSALS = 20;

/**
 * Parses YAML 1.2 (JSON is a part of it) with nothing but plain values: aliases, tags, merge keys, twice the same key and
 * names of object internals are refused, each with its line. An empty value counts as left out.
 */
export function parseTree(text: string, name: string): Result<Tree, readonly Refusal[]> {
  const lines = new LineCounter();
  const lineAtOffset = (offset: number): number => lines.linePos(offset).line;
  const refusals: Refusal[] = [];
  const refuse = (id: string, line: number, what: string): void => {
    if (refusals.length < MOST_REFUSALS)
      refusals.push({ id, message: `${name}, line ${line}: ${what}`, line });
  };

  const document = parseSafely(text, lines);
  if (document === null) return { ok: false, error: [tooDeep(name, 1)] };
  for (const error of document.errors) {
    refuse('yaml-broken', lineAtOffset(error.pos[0]), sentenceOf(error.code));
  }
  const contents = document.contents;
  if (refusals.length > 0 || contents === null) {
    return { ok: false, error: refusals.length > 0 ? refusals : [nothing(name)] };
  }

  const lineByPath = new Map<string, number>();
  const deep: number[] = [];

  const plain = (node: ParsedNode | null, path: readonly PropertyKey[]): Plain => {
    if (node === null) return null;
    const line = lineAtOffset(node.range[0]);
    const known = keyOf(path);
    if (!lineByPath.has(known)) lineByPath.set(known, line);
    if (path.length > MOST_DEPTH) {
      deep.push(line);
      return null;
    }
    if (isAlias(node)) {
      refuse(
        'yaml-alias',
        line,
        `"*${node.source}" stands for another part of the file; write the part out here`,
      );
      return null;
    }
    if (node.tag !== undefined) {
      refuse('yaml-tag', line, `"${node.tag.slice(0, 40)}" is a tag, and a garage has none; remove it`);
      return null;
    }
    if (isSeq(node)) {
      return node.items.map((item, index) => plain(item, [...path, index]));
    }
    if (isMap(node)) {
      const object: { [key: string]: Plain } = {};
      const seen = new Map<string, number>();
      for (const pair of node.items) {
        const keyLine = lineAtOffset(pair.key.range[0]);
        const key = isScalar(pair.key) ? String(pair.key.value) : null;
        if (key === null || pair.key.tag !== undefined) {
          refuse('yaml-key', keyLine, 'a name must be plain text; write it without brackets, tags or stars');
          continue;
        }
        if (isForbiddenName(key)) {
          refuse('key-forbidden', keyLine, `"${key}" cannot be a name here; choose another`);
          continue;
        }
        const first = seen.get(key);
        if (first !== undefined) {
          refuse(
            'duplicate-id',
            keyLine,
            `"${key.slice(0, 60)}" stands here and already on line ${first}; rename one of them or remove it`,
          );
          continue;
        }
        seen.set(key, keyLine);
        const inner = [...path, key];
        lineByPath.set(keyOf(inner), keyLine);
        const value = plain(pair.value, inner);
        if (value !== null) object[key] = value;
      }
      return object;
    }
    const { value } = node;
    if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
    return null;
  };

  const value = plain(contents, []);
  const [deepAt] = deep;
  if (deepAt !== undefined) return { ok: false, error: [tooDeep(name, deepAt)] };
  if (refusals.length > 0) return { ok: false, error: refusals };
  return { ok: true, value: { value, lineOf: lineFinder(lineByPath) } };
}

function parseSafely(text: string, lineCounter: LineCounter): Document.Parsed | null {
  try {
    return parseDocument(text.replace(/^\uFEFF/, ''), {
      version: '1.2',
      schema: 'core',
      merge: false,
      // Checked while walking: the parser's own check takes the square of the number of keys.
      uniqueKeys: false,
      prettyErrors: false,
      // 'silent' would also pass over a second document.
      logLevel: 'error',
      lineCounter,
    });
  } catch (error) {
    // The parser climbs; a file nested beyond the stack gets here in spite of the first look at its brackets.
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function keyOf(path: readonly PropertyKey[]): string {
  return path.map(String).join('\n');
}

function lineFinder(lines: ReadonlyMap<string, number>): Tree['lineOf'] {
  return (path) => {
    for (let length = path.length; length >= 0; length--) {
      const line = lines.get(keyOf(path.slice(0, length)));
      if (line !== undefined) return line;
    }
    return 1;
  };
}

function nothing(name: string): Refusal {
  return {
    id: 'file-empty',
    message: `${name} holds nothing but comments; write "waymend: 1" and a name, or start a new garage`,
  };
}

/** The parser's complaint, as what to look for. */
function sentenceOf(code: string): string {
  switch (code) {
    case 'BAD_INDENT':
    case 'TAB_AS_INDENT':
      return 'the indentation does not fit the lines around it; use two spaces for each step, and no tabs';
    case 'MISSING_CHAR':
      return 'a quote, a bracket or a colon is missing here or on a line before; close it';
    case 'MULTIPLE_DOCS':
      return 'a second document starts here ("---"); keep one garage in one file';
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
      return 'a star or an ampersand starts a reference here; put the text in quotes or write the part out';
    case 'BAD_DQ_ESCAPE':
      return 'a backslash in double quotes means something else; use single quotes or write two backslashes';
    case 'BLOCK_IN_FLOW':
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return 'a colon inside this value reads as a new entry; put the value in quotes';
    case 'TAG_RESOLVE_FAILED':
    case 'MULTIPLE_TAGS':
      return 'an exclamation mark starts a tag here, and a garage has none; put the text in quotes';
    case 'KEY_OVER_1024_CHARS':
      return 'a name is longer than a thousand characters; shorten it';
    default:
      return 'this cannot be read as YAML or JSON; look for a missing quote, bracket or colon on this line';
  }
}
