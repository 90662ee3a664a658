import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGarage } from '../../src/file/read-garage.ts';
import { textOfBytes } from '../../src/file/text-of-bytes.ts';
import { SMALL } from '../small-garage.ts';
import { spent } from '../processor-time.ts';

const ids = (text: string): readonly string[] => {
  const result = readGarage(text, 'hostile.yaml');
  return result.ok ? ['read'] : result.error.map(({ id }) => id);
};

/** Milliseconds that reading takes, the better of two goes: the machine may be busy. */
function timed(text: string): number {
  const once = (): number => {
    const start = spent();
    readGarage(text, 'hostile.yaml');
    return spent() - start;
  };
  return Math.min(once(), once());
}

describe('hostile files', () => {
  it('refuses an alias bomb at once', () => {
    const rows = ['a: &a [x, x, x, x, x, x, x, x, x]'];
    for (let i = 1; i < 12; i++) {
      const before = String.fromCharCode(96 + i);
      rows.push(
        `${String.fromCharCode(97 + i)}: &${String.fromCharCode(97 + i)} [${`*${before}, `.repeat(9)}]`,
      );
    }
    const bomb = `waymend: 1\nname: bomb\n${rows.join('\n')}`;
    expect(ids(bomb)[0]).toBe('yaml-alias');
    expect(timed(bomb)).toBeLessThan(200);
  });

  it.each([
    ['blocks 30 deep', Array.from({ length: 30 }, (_, i) => `${'  '.repeat(i)}a:`).join('\n')],
    ['brackets 30 deep', `waymend: 1\nname: ${'['.repeat(30)}${']'.repeat(30)}`],
    ['100,000 open brackets', `waymend: 1\nname: ${'['.repeat(100_000)}`],
    ['100,000 braces after a quote', `waymend: 1\nname: it's\nx: ${'{a: '.repeat(100_000)}`],
    ['lists in lists on one line', `waymend: 1\nname:\n  ${'- '.repeat(50_000)}x`],
    ['deep JSON', `${'{"a":'.repeat(5_000)}1${'}'.repeat(5_000)}`],
  ])('refuses %s', (_, text) => {
    expect(ids(text)).toEqual(['file-too-deep']);
    expect(timed(text)).toBeLessThan(500);
  });

  it('refuses 50 MB of text in less than 200 ms', () => {
    const text = 'a: 1\n'.repeat(10_000_000);
    expect(ids(text)).toEqual(['file-too-large']);
    expect(timed(text)).toBeLessThan(200);
  });

  it('refuses bytes that are 50 MB, a spreadsheet, or no text', () => {
    const idOf = (bytes: Uint8Array): string | undefined => {
      const result = textOfBytes(bytes, 'x');
      return result.ok ? undefined : result.error.id;
    };
    expect(idOf(new Uint8Array(50_000_000).fill(97))).toBe('file-too-large');
    expect(idOf(Uint8Array.from([0x50, 0x4b, 3, 4, 20]))).toBe('file-spreadsheet');
    expect(idOf(Uint8Array.from([0x89, 0x50, 0, 0, 1]))).toBe('file-binary');
  });

  it('reads UTF-8, UTF-16 and the Western code page', () => {
    expect(textOfBytes(new TextEncoder().encode('½ ž'), 'x')).toEqual({ ok: true, value: '½ ž' });
    expect(textOfBytes(Uint8Array.from([0xff, 0xfe, 0xbd, 0x00]), 'x')).toEqual({ ok: true, value: '½' });
    expect(textOfBytes(Uint8Array.from([0xbd, 0x22]), 'x')).toEqual({ ok: true, value: '½"' });
  });

  it('leaves the prototype of every object alone', () => {
    ids('waymend: 1\nname: x\nbags: {"__proto__": {polluted: true}}');
    ids('{"waymend": 1, "name": "x", "__proto__": {"polluted": true}}');
    ids(SMALL.replace('s10:', 'constructor:'));
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('keeps script and formulas as plain text', () => {
    const text = `${SMALL}\n  s1: { is: SK3-12, name: "<script>alert(1)</script>", note: "=HYPERLINK(1)" }`;
    const result = readGarage(text, 'x');
    expect(result.ok && result.value.belongings['s1']?.name).toBe('<script>alert(1)</script>');
  });

  it('reads 10,000 belongings in less than 5 s: time grows with the file, not with its square', () => {
    const many = Array.from({ length: 10_000 }, (_, i) => `  b${i}: { is: CW-17 }`).join('\n');
    expect(timed(`${SMALL}\n${many}`)).toBeLessThan(5_000);
  });

  it('never throws, whatever the text is', () => {
    const snippet = fc.constantFrom(
      ...[
        'waymend: 1\n',
        'name: x\n',
        ' ',
        '  ',
        '\n',
        '- ',
        '? ',
        ': ',
        '{',
        '}',
        '[',
        ']',
        '"',
        "'",
        '|\n',
        '>\n',
        '&a ',
        '*a',
        '!!map ',
        '<<: ',
        '%YAML 1.1\n',
        '---\n',
        '...\n',
        '\t',
        '#',
        '__proto__: ',
        'belongings:\n',
        '  a: ',
        'grams: -1\n',
        '\uFEFF',
        '0x1F',
        '1e999',
        '.nan',
        '~',
      ],
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc.array(snippet, { maxLength: 40 }).map((parts) => parts.join('')),
      fc
        .tuple(fc.nat(SMALL.length), fc.string({ maxLength: 12 }))
        .map(([at, what]) => SMALL.slice(0, at) + what + SMALL.slice(at)),
    );
    fc.assert(
      fc.property(text, (input) => {
        const result = readGarage(input, 'fuzz.yaml');
        if (result.ok) return;
        expect(result.error.length).toBeGreaterThan(0);
        expect(result.error.length).toBeLessThanOrEqual(20);
        for (const { message } of result.error) expect(message).toContain('fuzz.yaml');
      }),
      { numRuns: 1_500 },
    );
  });
});
