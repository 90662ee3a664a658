import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readGarage } from '../../src/file/read-garage.ts';
import { writeGarage } from '../../src/file/write-garage.ts';
import { SMALL } from '../small-garage.ts';

const FROZEN = readFileSync(new URL('../data/garage-v1.yaml', import.meta.url), 'utf8');

/** The refusals of a text, which must be refused. */
function refusalsOf(text: string, options = {}) {
  const result = readGarage(text, 'my.yaml', options);
  if (result.ok) throw new Error('was read');
  return result.error;
}

const withLines = (...lines: readonly string[]): string => `${SMALL}\n${lines.join('\n')}\n`;

describe('what is read', () => {
  it('reads the frozen file of version 1 as it was read when it was frozen', () => {
    const result = readGarage(FROZEN, 'garage-v1.yaml');
    if (!result.ok) throw new Error(result.error.map(({ message }) => message).join('\n'));
    const { belongings, fittings, vehicles, legs, people, ...rest } = result.value;
    expect(rest.currency).toBe('AUD');
    expect(vehicles['ute']).toMatchObject({
      emptyFrontKg: 1180,
      ratedGrossKg: 3000,
      tyreOversizePct: 0,
      kind: 'vehicle',
    });
    expect(fittings['wheel-nuts']?.size).toBe('21 mm');
    // 1 lbf ft = 1.3558179483 N m (exact factors)
    expect(fittings['wheel-nuts']?.torqueNm).toBeCloseTo(128.8027, 4);
    // 154 lb = 69.85322 kg, 4.5 oz = 127.573 g, 18 in = 457.2 mm, 250 mi = 402.336 km
    expect(people['ana']?.massKg).toBeCloseTo(69.85322, 4);
    expect(belongings['w17']).toMatchObject({ copies: 2, grams: 127.572854, weighed: true, bag: 'roll' });
    expect(belongings['shop-bar']?.handleMm).toBe(457.2);
    expect(legs['l2']?.km).toBe(402.336);
    expect(belongings['box']).toMatchObject({ set: { carry: 'loose', caseGrams: 1500 } });
    expect(belongings['s19']).toMatchObject({ inside: 'box', pin: 'always' });
    expect(belongings['jar']?.note).toBe('=1+1 is only text');
    expect(rest.words).toEqual({ zonkers: { means: 'PR-L25' } });
  });

  it('[M15] keeps entities flat: every table maps an id to fields, and only references lead from one to another', () => {
    const result = readGarage(FROZEN, 'garage-v1.yaml');
    if (!result.ok) throw new Error('refused');
    const tables = Object.values(result.value).filter((value) => typeof value === 'object');
    expect(tables).toHaveLength(22);
    for (const table of tables) {
      for (const [id, entity] of Object.entries(table)) {
        expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
        expect(Array.isArray(entity)).toBe(false);
        expect(typeof entity).toBe('object');
      }
    }
  });

  it('reads JSON as well, by its content', () => {
    const result = readGarage(FROZEN, 'garage-v1.yaml');
    if (!result.ok) throw new Error('refused');
    expect(readGarage(JSON.stringify(result.value, null, 2), 'garage.txt')).toEqual(result);
  });

  it('reads what it writes to the same garage', () => {
    const result = readGarage(FROZEN, 'garage-v1.yaml');
    if (!result.ok) throw new Error('refused');
    const text = writeGarage(result.value);
    expect(readGarage(text, 'again.yaml')).toEqual(result);
    const again = readGarage(text, 'again.yaml');
    expect(again.ok && writeGarage(again.value)).toBe(text);
    expect(text.startsWith('waymend: 1\nname: two friends, one pickup\n')).toBe(true);
  });

  it('reads a garage that is still being written, without vehicle and trip, when asked to', () => {
    expect(readGarage('waymend: 1\nname: new', 'new.yaml', { for: 'edit' }).ok).toBe(true);
  });
});

describe('what is refused, with one plain sentence that says file, line and what to do', () => {
  it.each([
    ['file-empty', '', null],
    ['file-empty', ' \n\n', null],
    ['file-empty', '# nothing yet\n', null],
    ['file-binary', 'waymend: 1\nname: \u0000\u0001', 2],
    ['not-a-garage', '- one\n- two', 1],
    ['not-a-garage', 'combination wrenches 8-19 except 16', 1],
    ['version-missing', 'name: x', 1],
    ['version-unknown', 'waymend: one\nname: x', 1],
    ['version-unknown', 'name: x\nwaymend: 0', 2],
    ['version-unknown', 'name: x\nwaymend: 1.5', 2],
    ['version-newer', 'name: x\n\nwaymend: 7', 3],
    ['yaml-broken', 'waymend: 1\nname: "x\nvehicles: {', 3],
    ['yaml-broken', 'waymend: 1\nvehicles:\n  a: [1, 2', 3],
    ['yaml-broken', '{"waymend": 1, "name": "x",, }', 1],
    ['yaml-broken', 'waymend: 1\n---\nwaymend: 1', 2],
    ['yaml-tag', 'waymend: 1\nname: !!js/function "x"', 2],
    ['yaml-tag', 'waymend: 1\nname: !secret x', 2],
    ['yaml-alias', 'waymend: 1\nname: &a x\nvehicles: *a', 3],
    ['duplicate-id', 'waymend: 1\nname: x\nbags:\n  a: {name: one}\n  a: {name: two}', 5],
    ['duplicate-id', 'waymend: 1\nname: x\nname: y', 3],
    ['key-forbidden', 'waymend: 1\nname: x\nbags:\n  __proto__: {name: one}', 4],
    ['key-forbidden', '{"waymend": 1, "name": "x", "bags": {"constructor": {"name": "y"}}}', 1],
    ['key-unknown', 'waymend: 1\nname: x\nbelonging: {}', 3],
    ['key-unknown', 'waymend: 1\nname: x\nbags:\n  a:\n    nme: y\n    name: y', 5],
    ['id-unreadable', 'waymend: 1\nname: x\nbags:\n  "My Bag": {name: y}', 4],
    ['value-missing', 'waymend: 1\nname: x\nbags:\n  a: {grams: 3}', 4],
    ['value-wrong-kind', 'waymend: 1\nname: 12', 2],
    ['value-wrong-kind', 'waymend: 1\nname: x\nbags: [a]', 3],
    ['unit-unknown', 'waymend: 1\nname: x\nbags:\n  a: {name: y, grams: 3 stones}', 4],
    ['unit-wrong', 'waymend: 1\nname: x\nbags:\n  a: {name: y, grams: 3 mm}', 4],
    ['unit-doubtful', 'waymend: 1\nname: x\nberths:\n  a: {vehicle: b, name: y, xMm: 1, litres: 3 gal}', 4],
    ['number-ambiguous', 'waymend: 1\nname: x\nbags:\n  a: {name: y, grams: "1,200"}', 4],
    ['value-unknown', 'waymend: 1\nname: x\nunits: imperial', 3],
    ['value-out-of-range', 'waymend: 1\nname: x\npeople:\n  a: {name: A, skill: 9}', 4],
  ])('%s: %j', (id, text, line) => {
    const refusals = refusalsOf(text);
    const found = refusals.find((refusal) => refusal.id === id);
    expect(refusals.map((refusal) => refusal.id)).toContain(id);
    expect(found?.message).toContain('my.yaml');
    if (line === null) return;
    expect(found?.line).toBe(line);
    expect(found?.message).toContain(`line ${line}`);
  });

  it.each([
    ['vehicle-none', 'waymend: 1\nname: x', 'vehicles'],
    ['trip-none', 'waymend: 1\nname: x', 'trips'],
  ])('%s', (id, text, path) => {
    expect(refusalsOf(text)).toContainEqual(expect.objectContaining({ id, path }));
  });

  it.each([
    ['reference-dangling', ['  nowhere: { is: CW-17, berth: attic }'], 'belongings.nowhere.berth'],
    ['reference-dangling', ['  nowhere: { is: CW-17, inside: sett }'], 'belongings.nowhere.inside'],
    ['not-a-set', ['  a1: { is: CW-17 }', '  b1: { is: CW-19, inside: a1 }'], 'belongings.b1.inside'],
    ['catalogue-unknown', ['  a1: { is: CW-17x }'], 'belongings.a1.is'],
    ['mass-negative', ['  a1: { is: CW-17, grams: -130 }'], 'belongings.a1.grams'],
    ['mass-absurd-ask', ['  a1: { is: SK2-19, grams: 40 kg }'], 'belongings.a1.grams'],
    ['mass-absurd-ask', ['  a1: { name: odd thing, grams: 90 kg }'], 'belongings.a1.grams'],
    ['mass-absurd', ['  a1: { is: SK2-19, grams: 40 t, confirmed: true }'], 'belongings.a1.grams'],
    ['size-off-standard-ask', ['  a1: { is: CW-17, size: 18.5 mm }'], 'belongings.a1.size'],
    ['size-unknown', ['  a1: { is: CW-17, size: big }'], 'belongings.a1.size'],
    ['amount-absurd', ['  a1: { is: CW-17, copies: 20000 }'], 'belongings.a1.copies'],
  ])('%s in %j', (id, lines, path) => {
    const refusals = refusalsOf(withLines(...lines));
    const line = SMALL.split('\n').length + lines.length;
    expect(refusals).toEqual([expect.objectContaining({ id, path, line })]);
  });

  it.each([
    ['practised: [WT-99]', 'people.ana.practised.0'],
    ['skills: { wirring: 3 }', 'people.ana.skills.wirring'],
  ])('says what the catalogue does not know: %s', (field, path) => {
    const text = SMALL.replace('skill: 3 }', `skill: 3, ${field} }`);
    expect(refusalsOf(text)).toEqual([expect.objectContaining({ id: 'catalogue-unknown', path, line: 6 })]);
  });

  it('asks about a 40 kg socket and an odd size, and takes both once they are confirmed', () => {
    const odd = '  a1: { is: SK2-19, grams: 40 kg, size: 18.5 mm, confirmed: true }';
    expect(readGarage(withLines(odd), 'my.yaml').ok).toBe(true);
  });

  it('says the nearest name for a mistyped one', () => {
    expect(refusalsOf('waymend: 1\nname: x\nbelongins: {}')[0]?.message).toContain(
      'did you mean "belongings"?',
    );
    expect(refusalsOf(withLines('  a1: { is: CW17 }'))[0]?.message).toContain('did you mean "CW-17"?');
  });

  it('refuses a trip without legs and a route of 0 km', () => {
    expect(refusalsOf(SMALL.replace('km: 300', 'km: 0'))).toEqual([
      expect.objectContaining({ id: 'route-zero', path: 'trips.loop' }),
    ]);
    expect(refusalsOf(SMALL.replace(/^ {2}l1: .*$/m, ''))).toEqual([
      expect.objectContaining({ id: 'route-zero' }),
    ]);
    expect(refusalsOf(SMALL.replace('km: 300', 'km: -3')).map(({ id }) => id)).toEqual(['distance-negative']);
  });

  it('gives at most 20 refusals', () => {
    const many = Array.from({ length: 60 }, (_, i) => `  a${i}: { is: XX-${i} }`);
    expect(refusalsOf(withLines(...many))).toHaveLength(20);
  });
});

it('reads the demonstration garage of the examples', () => {
  const text = readFileSync(new URL('../../../../examples/demo.garage.yaml', import.meta.url), 'utf8');
  const result = readGarage(text, 'demo.garage.yaml');
  expect(result.ok ? [] : result.error).toEqual([]);
});
