import { readFileSync } from 'node:fs';
import { BOXED_SETS } from '@waymend/catalogue/boxed-sets';
import { readGarage } from '@waymend/garage/file/read-garage';
import { openDemo, showSheet } from './support/demo.ts';
import { expect, test } from './support/planner.ts';

const LIST = `combination wrenches 8-12
3/8 ratchet 180 g
frobnicator`;

test('a typed list is understood, added as one step, and taken back as one', async ({ page }) => {
  await page.goto('./#/garage/belongings/paste');
  await page.getByRole('textbox', { name: 'Your list' }).fill(LIST);
  const lines = page.getByRole('list', { name: 'Lines as they were understood' });
  await expect(lines.getByText(/combination (wrench|spanner), 8, 9, 10, 11, 12 mm/)).toBeVisible();
  await expect(lines.getByText('Not understood')).toHaveCount(1);
  await page.getByRole('button', { name: 'Add these 6' }).click();
  await expect(page.getByText('6 things added as one step.')).toBeVisible();
  // What was not understood has not gone away.
  await expect(page.getByRole('textbox', { name: 'Your list' })).toHaveValue('frobnicator');
  await showSheet(page, '/garage/belongings');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('6 things');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing listed yet');
});

test('the same list again is asked about, and nothing is added twice unasked', async ({ page }) => {
  await page.goto('./#/garage/belongings/paste');
  const paper = page.getByRole('textbox', { name: 'Your list' });
  await paper.fill('3/8 ratchet\n2x locking pliers');
  await page.getByRole('button', { name: 'Add these 2' }).click();
  await expect(paper).toHaveValue('');
  await paper.fill('3/8 ratchet\n2x locking pliers\nball-peen hammer');
  await page.getByRole('button', { name: 'Add these 3' }).click();
  const asked = page.getByRole('dialog');
  await expect(asked).toContainText('2 of these are listed already');
  await asked.getByRole('button', { name: 'Add only the other one' }).click();
  await showSheet(page, '/garage/belongings');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('4 things');
});

test('a boxed set opens in the list, by keyboard alone', async ({ page }) => {
  await page.goto('./#/garage/belongings/paste');
  await page.getByRole('textbox', { name: 'Your list' }).fill('tyre repair box');
  await page.getByRole('button', { name: 'Add this one' }).click();
  await showSheet(page, '/garage/belongings');
  const rows = page.getByRole('list', { name: 'Belongings' }).getByRole('listitem');
  await expect(rows).toHaveCount(1);
  await rows.first().getByRole('button').first().focus();
  await page.keyboard.press('ArrowRight');
  const inside = BOXED_SETS.find(({ id }) => id === 'tyre-box')?.contents.length ?? Number.NaN;
  await expect(rows).toHaveCount(1 + inside);
  await page.keyboard.press('End');
  await expect(rows.last().getByRole('button').first()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('dialog').getByRole('button', { name: 'Take it out of its set' }),
  ).toBeVisible();
});

test('weighing takes a press for each digit and one for the next, and asks about the absurd', async ({
  page,
}) => {
  await openDemo(page);
  await showSheet(page, '/garage/belongings/weigh');
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('is still a guess');
  const scale = page.getByRole('region', { name: 'On the scale' });
  const first = await scale.getByRole('heading', { level: 2 }).innerText();
  const before = await heading.innerText();
  for (const digit of '8100') await scale.getByRole('button', { name: digit, exact: true }).click();
  await scale.getByRole('button', { name: 'Keep, next' }).click();
  await expect(scale.getByRole('heading', { level: 2 })).not.toHaveText(first);
  await expect(heading).not.toHaveText(before);
  // By the keyboard of a laptop as well; two grams of anything heavy are asked about and change nothing.
  const second = await scale.getByRole('heading', { level: 2 }).innerText();
  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.type('2');
  await page.keyboard.press('Enter');
  await expect(scale.getByRole('alert')).toContainText('Is that right?');
  await scale.getByRole('button', { name: 'No, type it again' }).click();
  await expect(scale.getByRole('heading', { level: 2 })).toHaveText(second);
});

test('the catalogue answers to the words of other places, and puts what is found on the buying list', async ({
  page,
}) => {
  await page.goto('./#/garage/belongings/catalogue');
  const list = page.getByRole('list', { name: 'Things of the catalogue' });
  await page.getByRole('searchbox', { name: 'Find' }).fill('spanner 17');
  await expect(list.getByRole('listitem').first()).toContainText('17');
  await list
    .getByRole('button', { name: /combination (wrench|spanner)/ })
    .first()
    .click();
  await page.getByRole('dialog').getByRole('button', { name: 'Put on buying list' }).click();
  await expect(page.getByRole('dialog').getByRole('status')).toContainText('On the buying list');
  await page.keyboard.press('Escape');
  await showSheet(page, '/garage/belongings');
  await expect(page.getByRole('list', { name: 'Belongings' }).getByRole('listitem')).toContainText(
    'for sale',
  );
});

test('a copy is a file that brings everything back; keeping it says so', async ({ page }) => {
  await openDemo(page);
  await showSheet(page, '/garage/record');
  await expect(page.getByText('1 step is only in this browser')).toBeVisible();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep a copy' }).click();
  const copy = await coming;
  expect(copy.suggestedFilename()).toMatch(/^ostrel-packer-saltbush-loop-\d{4}-\d{2}-\d{2}\.garage\.yaml$/);
  const read = readGarage(readFileSync(await copy.path(), 'utf8'), 'copy.yaml');
  expect(read.ok && Object.keys(read.value.belongings).length).toBeGreaterThan(300);
  await expect(page.getByText('Everything in it is also in the copy you kept.')).toBeVisible();
});
