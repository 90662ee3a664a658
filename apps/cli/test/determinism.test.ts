import { parse, stringify } from 'yaml';
import { beforeAll, describe, expect, it } from 'vitest';
import { runOn } from './support/memory-io.ts';
import { WAGON, WAGON_FILE } from './support/wagon.ts';

type Fields = Readonly<Record<string, unknown>>;

function fields(value: unknown): Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(new Map<string, unknown>(Object.entries(value)))
    : {};
}

/** The wagon written out again with the entities, or the fields of each, of one part in another order. */
function reordered(part: string, order: <T>(list: readonly T[]) => readonly T[], inside: boolean): string {
  const file = fields(parse(WAGON));
  const entities = Object.entries(fields(file[part]));
  const shuffled: readonly (readonly [string, unknown])[] = inside
    ? entities.map(([id, entity]) => [id, Object.fromEntries(order(Object.entries(fields(entity))))] as const)
    : order(entities);
  return stringify({ ...file, [part]: Object.fromEntries(shuffled) });
}

const reversed = <T>(list: readonly T[]) => [...list].reverse();
/** Every other one first: neighbours part, and nothing stays where it was. */
const riffled = <T>(list: readonly T[]) => [
  ...list.filter((_, i) => i % 2 === 1),
  ...list.filter((_, i) => i % 2 === 0),
];

describe('the same question gets the same answer, byte for byte', () => {
  let first = '';
  beforeAll(async () => {
    first = (await runOn({ files: { [WAGON_FILE]: WAGON } }, 'plan', WAGON_FILE, '--json')).out;
    expect(first).toContain('"waymend.plan/1"');
  });

  const same = async (text: string) => {
    const ran = await runOn({ files: { [WAGON_FILE]: text } }, 'plan', WAGON_FILE, '--json');
    expect(ran.out).toBe(first);
  };

  it('asked twice', async () => {
    await same(WAGON);
  });

  it('written out anew by another program', async () => {
    await same(stringify(parse(WAGON)));
  });

  it('as JSON', async () => {
    await same(JSON.stringify(parse(WAGON)));
  });

  it('with the fields of every belonging in another order', async () => {
    await same(reordered('belongings', reversed, true));
  });

  it.each([
    ['belongings', 'reversed', reversed],
    ['belongings', 'riffled', riffled],
    ['fittings', 'reversed', reversed],
    ['people', 'reversed', reversed],
    ['legs', 'reversed', reversed],
  ] as const)('with the %s %s', async (part, _, order) => {
    const text = reordered(part, order, false);
    expect(text).not.toBe(stringify(parse(WAGON)));
    await same(text);
  });

  it('but a thing changed is seen', async () => {
    const ran = await runOn(
      { files: { [WAGON_FILE]: WAGON.replace('km: 340', 'km: 680') } },
      'plan',
      WAGON_FILE,
      '--json',
    );
    expect(ran.code).toBe(0);
    expect(ran.out).not.toBe(first);
  });
});
