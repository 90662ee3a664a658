import type { Refusal } from '@waymend/core/result';

/** A garage of a lifetime is a few hundred kilobytes; what is far above is a mistake or an attack. */
export const MOST_CHARACTERS = 5_000_000;
/** The deepest a garage goes is six; beyond this a file is not a garage. */
export const MOST_DEPTH = 12;

/** What to do about an empty or binary text, by what it should be. */
const ADVICE = {
  garage: {
    empty: 'write "waymend: 1" and a name, or start a new garage',
    binary: 'a garage is a YAML or JSON file, a spreadsheet is read by import',
    large: 'check that it is a garage file',
  },
  list: {
    empty: 'write one thing on a line',
    binary: 'a list is plain text or CSV, a spreadsheet ends in .xlsx',
    large: 'check that it is a list of belongings',
  },
} as const;

/** Looks at a text before anything is parsed: size, emptiness, binary. Null when it may be read. */
export function whyNoText(text: string, name: string, what: keyof typeof ADVICE): Refusal | null {
  const advice = ADVICE[what];
  if (text.length > MOST_CHARACTERS) {
    const size = (text.length / 1e6).toFixed(1);
    return {
      id: 'file-too-large',
      message: `${name} has ${size} million characters and at most 5 million are read; ${advice.large}`,
    };
  }
  if (text.trim() === '' || text === '\uFEFF')
    return { id: 'file-empty', message: `${name} is empty; ${advice.empty}` };
  const line = lineOfBinary(text);
  if (line === null) return null;
  return { id: 'file-binary', message: `${name}, line ${line}: this is not text; ${advice.binary}`, line };
}

/** The same for a garage, and brackets within brackets. */
export function whyUnreadable(text: string, name: string): Refusal | null {
  const refusal = whyNoText(text, name, 'garage');
  if (refusal !== null) return refusal;
  const deep = lineTooDeep(text);
  return deep === null ? null : tooDeep(name, deep);
}

export function tooDeep(name: string, line: number): Refusal {
  return {
    id: 'file-too-deep',
    message: `${name}, line ${line}: things are nested more than ${MOST_DEPTH} deep, a garage never is; move what is inside further out`,
    line,
  };
}

/** Line of a control character that no text editor writes, or null. */
function lineOfBinary(text: string): number | null {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code < 32 && (code < 9 || code > 13) && code !== 27) return lineAt(text, i);
  }
  return null;
}

/**
 * Counts brackets outside quotes and list dashes that open lists in lists, so that a hostile file is refused without the
 * parser climbing down it. Twice the limit: brackets in plain text also count here, the exact check comes after parsing.
 */
function lineTooDeep(text: string): number | null {
  let open = 0;
  let quote = '';
  let line = 1;
  for (let i = 0; i < text.length; i++) {
    const c = text[i] ?? '';
    if (c === '\n') {
      line += 1;
      // A quote in plain text ("12\" bar") must not hide the rest of the file.
      quote = '';
      if (/^(?:\s*[-?]\s){24}/.test(text.slice(i + 1, i + 200))) return line;
    } else if (quote !== '') {
      if (c === '\\' && quote === '"') i += 1;
      else if (c === quote) quote = '';
    } else if ((c === '"' || c === "'") && /[\s[{,:]/.test(text[i - 1] ?? ' ')) quote = c;
    else if (c === '[' || c === '{') {
      open += 1;
      if (open > 2 * MOST_DEPTH) return line;
    } else if ((c === ']' || c === '}') && open > 0) open -= 1;
  }
  return null;
}

/** 1-based line of a position in a text. */
export function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let i = text.indexOf('\n'); i >= 0 && i < offset; i = text.indexOf('\n', i + 1)) line += 1;
  return line;
}
