import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { loadText, massText } from '@waymend/planner/words/mass';
import { inWords } from '@waymend/planner/words/wording';
import { openDemo, proven, showSheet } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { DESK } from './support/sheets.ts';

/** The part of the command line's answer that is compared. */
interface Told {
  readonly status: string;
  readonly kit: {
    readonly massGrams: number;
    readonly items: readonly { readonly name: string; readonly grams: number; readonly copies: number }[];
  };
  readonly stayHome: readonly unknown[];
  readonly gaps: readonly { readonly title: string }[];
  readonly buy: readonly { readonly name: string }[];
  readonly unaided: { readonly kit: number };
  readonly load: Readonly<
    Record<'front' | 'rear' | 'gross' | 'roof', { readonly kg: number; readonly limitKg: number }>
  >;
}

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** The same garage, planned by the other program. */
function told(): Told {
  const text = execFileSync(
    process.execPath,
    ['apps/cli/bin/waymend.mjs', 'plan', 'examples/demo.garage.yaml', '--json', '--seconds', '600'],
    { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1e8 },
  );
  return JSON.parse(text) as Told;
}

/** A space of either kind. */
const plain = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

test('what the screen says of the demo is what `waymend plan --json` says', async ({ page }) => {
  test.setTimeout(180_000);
  const answer = told();
  expect(answer.status).toBe('proven');
  await page.setViewportSize(DESK);
  await openDemo(page);
  await proven(page);

  await showSheet(page, '/kit/answer');
  // 'About 1 trip in 7 needs help', 'About 6 trips in 10 need help': within the rounding that the words allow.
  const headline = plain(await page.locator('main h1').textContent());
  const said = /(\d+) trips? in ([\d.,]+)/.exec(headline);
  expect(said, headline).not.toBeNull();
  const needsHelp = 1 - answer.unaided.kit;
  const oneIn = Number((said?.[2] ?? '').replaceAll(',', '')) / Number(said?.[1]);
  expect(Math.abs(1 / oneIn - needsHelp) / needsHelp, headline).toBeLessThan(0.12);

  const pieces = answer.kit.items.reduce((sum, { copies }) => sum + copies, 0);
  const whole = page.locator('main p', { hasText: / of .* comes along, / });
  await expect(whole).toContainText(massText(answer.kit.massGrams, 'metric').replaceAll(' ', '\u00a0'));
  await expect(whole).toContainText(`${pieces}\u00a0pieces`);

  // Every item with its mass, in the same order.
  const along = page.getByRole('list', { name: 'Comes along' });
  const all = along.locator('xpath=ancestor::*[.//button[normalize-space()="Show all"]][1]');
  await all.getByRole('button', { name: 'Show all' }).first().click();
  const seen = new Map<number, string>();
  // Long lists keep only the rows in sight: read them while scrolling through.
  await expect
    .poll(async () => {
      const rows = await along.getByRole('listitem').evaluateAll((items) =>
        items.map((item, at) => ({
          at: Number(item.getAttribute('aria-posinset') ?? at + 1),
          label: item.querySelector('button')?.getAttribute('aria-label') ?? '',
        })),
      );
      for (const { at, label } of rows) seen.set(at, plain(label));
      await page.mouse.move(700, 600);
      await page.mouse.wheel(0, 400);
      return seen.size;
    })
    .toBe(answer.kit.items.length);
  const labels = [...seen].sort(([a], [b]) => a - b).map(([, label]) => label);
  for (const [n, item] of answer.kit.items.entries()) {
    // The command line speaks the catalogue's words; the screen the owner's, British unless said otherwise.
    const word = inWords(item.name, 'british');
    const name = item.copies > 1 ? `${item.copies} x ${word}` : word;
    const label = labels[n] ?? '';
    expect(label.startsWith(`${name}, `), `${n}: ${label} is not ${name}`).toBe(true);
    expect(label).toContain(`${massText(item.grams, 'metric')},`);
  }

  await showSheet(page, '/kit/gaps');
  await expect(page.locator('main h1')).toHaveText(`${answer.gaps.length}\u00a0failures have no answer`);
  for (const { name } of answer.buy)
    await expect(page.getByText(inWords(name, 'british')).first()).toBeVisible();

  await showSheet(page, '/vehicle/load');
  for (const [title, of] of [
    ['Front axle', answer.load.front],
    ['Rear axle', answer.load.rear],
    ['Gross mass', answer.load.gross],
    ['Roof', answer.load.roof],
  ] as const) {
    const group = page.getByRole('group', { name: title, exact: true });
    const number = loadText(of.kg, 'metric').replace(/ kg$/, '');
    await expect(group).toContainText(
      new RegExp(`${number}(.kg)? of.${loadText(of.limitKg, 'metric').replace(' ', '.')}`),
    );
  }
});
