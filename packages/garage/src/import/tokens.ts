import { spellFractions } from '../record/number-text.ts';

/** Units a list is typed with; lengths in mm, masses in g and volumes in ml once read. */
export type ListUnit =
  | 'mm'
  | 'g'
  | 'ml'
  | 't'
  | 'mm2'
  | 'V'
  | 'A'
  | 'W'
  | 'Nm'
  | 'bar'
  | 'min'
  | 'points'
  | 'pieces';

interface Placed {
  /** Inside brackets: likely a remark, but may hold sizes, masses and counts. */
  readonly bracket: boolean;
  /** After a dash between words: a remark. */
  readonly remark: boolean;
}

export interface NumberToken extends Placed {
  readonly kind: 'number';
  /** In the unit; as typed when `unit` is null. */
  readonly value: number;
  readonly unit: ListUnit | null;
  /** Typed in inches: the value is in mm all the same. */
  readonly inch: boolean;
  /** Typed as a fraction, '1/2' or '1-1/8', without or with an inch mark. */
  readonly fraction: string | null;
  /** 'two' rather than 2. */
  readonly spelt: boolean;
  /** As typed, without its unit. */
  readonly text: string;
}

export type Token =
  | NumberToken
  | (Placed & { readonly kind: 'word'; readonly word: string })
  | (Placed & { readonly kind: 'code'; readonly letter: 'T' | 'E' | 'M' | '#'; readonly value: number })
  | (Placed & { readonly kind: 'mark'; readonly mark: 'range' | 'times' | 'except' | 'and' | 'colon' });

const UNITS: readonly (readonly [RegExp, ListUnit, number, inch?: true])[] = [
  [/^(?:mm2|mm²|sqmm|sq\.? ?mm)(?![\p{L}\d])/u, 'mm2', 1],
  [/^mm(?![\p{L}\d])/u, 'mm', 1],
  [/^cm(?![\p{L}\d])/u, 'mm', 10],
  [/^(?:m|metres?|meters?|mtrs?)(?![-\p{L}\d'])/u, 'mm', 1000],
  [/^(?:inch(?:es)?|in\.?)(?![-\p{L}\d])/u, 'mm', 25.4, true],
  [/^(?:"|'')/u, 'mm', 25.4, true],
  [/^(?:ft|feet|foot)(?![-\p{L}\d])/u, 'mm', 304.8, true],
  [/^(?:kgs?|kilos?)(?![\p{L}\d])/u, 'g', 1000],
  [/^(?:grams?|gramm|gms?|gr|g)(?![-\p{L}\d])/u, 'g', 1],
  [/^(?:lbs?|pounds?)(?![-\p{L}\d])/u, 'g', 453.59237],
  [/^(?:oz|ounces?)(?![\p{L}\d])/u, 'g', 28.349523],
  [/^(?:t|tons?|tonnes?)(?![-\p{L}\d])/u, 't', 1],
  [/^(?:ml|cc)(?![\p{L}\d])/u, 'ml', 1],
  [/^(?:litres?|liters?|ltrs?|lt|l)(?![-\p{L}\d])/u, 'ml', 1000],
  [/^(?:nm|n ?m)(?![\p{L}\d])/u, 'Nm', 1],
  [/^(?:volts?|v)(?![-\p{L}\d])/u, 'V', 1],
  [/^(?:amps?|ah?)(?![-\p{L}\d])/u, 'A', 1],
  [/^(?:watts?|w)(?![-\p{L}\d/])/u, 'W', 1],
  [/^bar(?![\p{L}\d])/u, 'bar', 1],
  [/^min(?:ute)?s?(?![\p{L}\d])/u, 'min', 1],
  [/^(?:pts?|points?)(?![\p{L}\d])/u, 'points', 1],
  [/^(?:pieces?|pcs?|pces?|pce|off|ea|each)(?![\p{L}\d])/u, 'pieces', 1],
];

const NUMBER_WORDS = new Map(
  ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'].map(
    (word, i) => [word, i + 1],
  ),
);

/** Number words that belong to a name: 'two-leg puller', 'four-way wrench'. */
const PART_OF_NAME =
  /^(?:points?|pt|sided|way|leg|legged|part|stage|stroke|cell|pin|peg|jaw|arm|ton)(?!\p{L})/u;

/** What leaves sizes out: '8-19 except 16'. */
const EXCEPT = /^(?:except(?:ing)?|excl(?:uding)?\.?|without|but not|not|minus|missing|less|no)(?=\s+\d)/u;

/** Lower case, one kind of dash, quote, times sign and space; fractions spelt out. */
export function plainLine(text: string): string {
  return spellFractions(text.normalize('NFC'))
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u201c-\u201f\u2033]/g, '"')
    .replace(/[\u2018\u2019\u201b\u2032`´]/g, "'")
    .replace(/[×✕]/g, 'x')
    .replace(/\s+/g, ' ')
    .trim();
}

const COUNTED = { kind: 'number', unit: 'pieces', inch: false, fraction: null, spelt: true } as const;

/** Longest line that is read; what is behind is dropped by the caller with a reason. */
export const LONGEST_LINE = 400;

/** Cuts a typed line into words, numbers with units, codes (T30, M8, no. 2) and marks (ranges, times, exceptions). */
export function tokensOf(line: string): readonly Token[] {
  const text = plainLine(line).slice(0, LONGEST_LINE);
  const tokens: Token[] = [];
  let depth = 0;
  let remark = false;
  let at = 0;
  const rest = (): string => text.slice(at);
  const place = (): Placed => ({ bracket: depth > 0, remark });
  const mark = (what: Extract<Token, { kind: 'mark' }>['mark'], length: number): void => {
    tokens.push({ kind: 'mark', mark: what, ...place() });
    at += length;
  };
  // '5, 6, 8, 10 in 3/8': the last of a list without units.
  const listed = (): boolean => {
    const before = tokens.at(-2);
    return tokens.at(-1)?.kind === 'mark' && before?.kind === 'number' && before.unit === null;
  };
  const lastIsNumber = (): boolean => {
    const last = tokens.at(-1);
    return last?.kind === 'number' || last?.kind === 'code';
  };

  while (at < text.length) {
    const c = text[at] ?? '';
    const here = rest();
    if (c === '(' || c === '[') {
      depth += 1;
      at += 1;
      continue;
    }
    if (c === ')' || c === ']') {
      depth = Math.max(0, depth - 1);
      at += 1;
      continue;
    }
    const through = /^(?: ?(?:-|\.\.+|…|~) ?|(?:up )?to |thro?ugh? |thru |until |bis )(?=[#tem]?\d)/u.exec(
      here,
    );
    if (through !== null && lastIsNumber()) {
      mark('range', through[0].length);
      continue;
    }
    const dash = /^ - (?=\p{L})/u.exec(here);
    if (dash !== null && depth === 0 && tokens.length > 0) {
      remark = true;
      at += dash[0].length;
      continue;
    }
    const except = /(?:^|[\s,(])$/u.test(text.slice(0, at)) ? EXCEPT.exec(here) : null;
    // 'no' leaves out only right after a number; 'screwdriver no 1' is a size.
    if (except !== null && tokens.length > 0 && (except[0] !== 'no' || lastIsNumber())) {
      mark('except', except[0].length);
      continue;
    }
    const code =
      /^(?:(tx?|e|m) ?(?=\d)(\d{1,3})(?:x\d+(?:[.,]\d+)?)?|(?:#|no\.? ?|nr\.? ?|ph|pz)(\d))(?![\d\p{L}])/u.exec(
        here,
      );
    if (code !== null && !/\p{L}$/u.test(text.slice(0, at)) && !/^[tem] /.test(code[0])) {
      const letter = code[1]?.[0]?.toUpperCase();
      tokens.push({
        kind: 'code',
        letter: letter === 'T' || letter === 'E' || letter === 'M' ? letter : '#',
        value: Number(code[2] ?? code[3]),
        ...place(),
      });
      at += code[0].length;
      continue;
    }
    const times =
      /^(?:x(?= ?\d)|\* ?(?=\d))/u.exec(here) ?? (lastIsNumber() ? /^ ?[x*](?![\p{L}])/u.exec(here) : null);
    if (times !== null) {
      mark('times', times[0].length);
      continue;
    }
    const number =
      /\d$/.test(text.slice(0, at)) && /^[.,]/.test(here)
        ? null
        : readNumber(here, listed(), /\d,$/.test(text.slice(0, at)));
    if (number !== null) {
      tokens.push({ ...number.token, ...place() });
      at += number.length;
      continue;
    }
    const word = /^\p{L}[\p{L}\d]*(?:'\p{L}+)?/u.exec(here);
    if (word !== null) {
      const spelt = NUMBER_WORDS.get(word[0]);
      const after = here.slice(word[0].length).replace(/^[ -]/, '');
      const last = tokens.at(-1);
      // 'the good one' is not a number.
      const pronoun = word[0] === 'one' && last !== undefined && last.kind !== 'mark';
      const inAll = /^(?:piece|pce?|pc)s?(?!\p{L})/u.exec(after);
      if (spelt !== undefined && inAll !== null) {
        tokens.push({ ...COUNTED, value: spelt, text: word[0], ...place() });
        at += 1 + inAll[0].length;
      } else if (spelt !== undefined && !pronoun && !PART_OF_NAME.test(after)) {
        tokens.push({
          kind: 'number',
          value: spelt,
          unit: null,
          inch: false,
          fraction: null,
          spelt: true,
          text: word[0],
          ...place(),
        });
      } else if (word[0] === 'and' || word[0] === 'plus')
        tokens.push({ kind: 'mark', mark: 'and', ...place() });
      else tokens.push({ kind: 'word', word: word[0], ...place() });
      at += word[0].length;
      continue;
    }
    if (c === ',' || c === ';' || c === '+' || c === '&' || c === '/' || c === '|') mark('and', 1);
    else if (c === ':' || c === '=') mark('colon', 1);
    else at += 1;
  }
  return tokens;
}

type Unplaced<T> = T extends unknown ? Omit<T, keyof Placed> : never;

/** A number or a digit that starts a name ('4 way wrench', '2nd'), from the start of the text. */
function readNumber(
  text: string,
  listed: boolean,
  afterComma: boolean,
): { readonly token: Unplaced<Token>; readonly length: number } | null {
  const ordinal = /^\d+(?:st|nd|rd|th)(?!\p{L})/u.exec(text);
  if (ordinal !== null) return { token: { kind: 'word', word: 'another' }, length: ordinal[0].length };
  const named = /^([2-8])[ -](?=(?:way|leg|legged|part|stage|pin|peg|jaw|arm)(?!\p{L}))/u.exec(text);
  if (named !== null) {
    const word = [...NUMBER_WORDS].find(([, n]) => n === Number(named[1]))?.[0] ?? '';
    return { token: { kind: 'word', word }, length: named[0].length };
  }
  const half = /^half (?:a |of a )?(?:litre|liter|l)(?!\p{L})/u.exec(text);
  if (half !== null) {
    const token = {
      kind: 'number',
      value: 500,
      unit: 'ml',
      inch: false,
      fraction: null,
      spelt: true,
      text: '0.5',
    } as const;
    return { token, length: half[0].length };
  }
  const inchWord =
    /^(half|quarter|three[ -]quarters?|three[ -]eighths?|3 eighths?)[ -]?(?:of an )?(?:inch|in|"|drive|dr|sq)(?!\p{L})/u.exec(
      text,
    );
  if (inchWord !== null) {
    const fraction =
      { h: '1/2', q: '1/4' }[inchWord[1]?.[0] ?? ''] ?? (inchWord[1]?.includes('q') === true ? '3/4' : '3/8');
    const length = inchWord[0].length - (/(?:drive|dr|sq)$/.exec(inchWord[0])?.[0].length ?? 0);
    return { token: inchNumber(fraction, inchWord[0]), length };
  }
  // 1-1/8, 1 1/16; "2 1/2 ratchets" are two of them, so a space needs a small denominator or an inch mark.
  const mixed = /^(\d)(-| )(\d{1,2})\/(2|4|8|16|32|64)(?![\d/])/u.exec(text);
  if (mixed !== null) {
    const [all, whole = '', gap = '', over = '', under = ''] = mixed;
    const unit = /^ ?(?:"|''|in(?:ch)?(?!\p{L}))/u.exec(text.slice(all.length));
    const sure =
      gap === '-' ||
      Number(under) >= 16 ||
      (whole === '1' && under === '8') ||
      (whole === '1' && unit !== null);
    if (sure && Number(over) < Number(under) && Number(whole) <= 4) {
      return {
        token: inchNumber(`${whole}-${over}/${under}`, all),
        length: all.length + (unit?.[0].length ?? 0),
      };
    }
  }
  const fraction = /^(\d{1,2})\/(2|4|8|16|32|64)(?![\d/])/u.exec(text);
  if (fraction !== null && Number(fraction[1]) < Number(fraction[2]) && Number(fraction[1]) % 2 === 1) {
    const unit = /^ ?(?:"|''|in(?:ch)?\.?(?!\p{L}))/u.exec(text.slice(fraction[0].length));
    return {
      token: inchNumber(fraction[0], fraction[0]),
      length: fraction[0].length + (unit?.[0].length ?? 0),
    };
  }
  const digits = /^(?:\d+(?:[.,]\d+)?|[.,]\d+)/u.exec(text);
  if (digits === null) return null;
  const typed = afterComma || wholeListAhead(text) ? (/^\d+/.exec(text)?.[0] ?? digits[0]) : digits[0];
  const value = Number(typed.replace(',', '.'));
  const after = text.slice(typed.length);
  const gap = /^[ -]?/.exec(after)?.[0].length ?? 0;
  const behind = after.slice(gap);
  for (const [pattern, unit, factor, inch] of UNITS) {
    const said = pattern.exec(behind);
    if (
      said === null ||
      (gap === 1 &&
        after.startsWith('-') &&
        unit !== 'mm' &&
        unit !== 'pieces' &&
        unit !== 'V' &&
        unit !== 'points')
    )
      continue;
    if (said[0] === 'in' && listed && /^in \d/.test(behind)) continue;
    // "12 in the drawer": a preposition, not an inch.
    if (
      said[0] === 'in' &&
      /^in (?:the|a|my|an|drawer|box|bag|roll|case|tin|door|back|front)(?!\p{L})/u.test(behind)
    )
      continue;
    // "2 a" is no ampere; "30a" is.
    if (unit === 'A' && gap === 1 && said[0] === 'a') continue;
    return {
      token: {
        kind: 'number',
        value: value * factor,
        unit,
        inch: inch === true,
        fraction: null,
        spelt: false,
        text: typed,
      },
      length: typed.length + gap + said[0].length,
    };
  }
  return {
    token: { kind: 'number', value, unit: null, inch: false, fraction: null, spelt: false, text: typed },
    length: typed.length,
  };
}

/** '10,12,13' and '8,10' are lists; '5,5', '1,6' and '0,75' are decimals. */
function wholeListAhead(text: string): boolean {
  const run = /^\d+(?:,\d+)+/.exec(text)?.[0];
  if (run === undefined) return false;
  const parts = run.split(',');
  const [whole = '', part = ''] = parts;
  if (parts.length > 2) return true;
  const massOrVolume = /^ ?(?:kg|kilo|l|lt|litre|liter|t|m|bar)(?!\p{L})/u.test(text.slice(run.length));
  return part.length > 1 && !massOrVolume && whole !== '0';
}

function inchNumber(fraction: string, text: string): Unplaced<NumberToken> {
  const [head = '', tail] = fraction.split('-');
  const [whole, part] = tail === undefined ? [0, head] : [Number(head), tail];
  const [over = '0', under = '1'] = part.split('/');
  const inches = whole + Number(over) / Number(under);
  return { kind: 'number', value: inches * 25.4, unit: 'mm', inch: true, fraction, spelt: false, text };
}
