import type { Page } from '@playwright/test';
import { openDemo, proven, showSheet } from './support/demo.ts';
import { pressOn } from './support/keys.ts';
import { expect, test } from './support/planner.ts';
import { PHONE } from './support/sheets.ts';

const headline = (page: Page) => page.getByRole('heading', { level: 1 });

test.describe('by touch on a phone', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: PHONE });

  test('a muster of the whole kit: one lost, one used up, closed, and what that changes', async ({
    page,
  }) => {
    test.setTimeout(150_000);
    await openDemo(page);
    await proven(page);
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Bags' }).tap();
    await expect(headline(page)).toHaveText('No muster is open');
    await page.getByRole('button', { name: 'Count it out' }).tap();
    await expect(headline(page)).toHaveText(/^0 of \d+ accounted for$/);
    const pieces = Number(/of (\d+)/.exec((await headline(page).textContent()) ?? '')?.[1]);
    let presses = 1;

    await test.step('one lost, one used up', async () => {
      for (const [name, fate] of [
        ['air filter', 'Lost'],
        ['blade fuses', 'Used up'],
      ] as const) {
        await page.getByRole('button', { name: new RegExp(`^Not back: ${name}`) }).tap();
        await page.getByRole('dialog').getByRole('button', { name: fate, exact: true }).tap();
        await expect(page.getByRole('dialog')).toHaveCount(0);
        presses += 2;
      }
      await expect(headline(page)).toHaveText(`2 of ${pieces} accounted for`);
    });

    await test.step('it stays open while something is unaccounted for, and says what', async () => {
      await page.getByRole('button', { name: 'Close the muster' }).tap();
      await expect(page.getByRole('alert')).toContainText('Not yet accounted for');
      await expect(headline(page)).toHaveText(`2 of ${pieces} accounted for`);
    });

    await test.step('all the rest is back', async () => {
      await page.getByRole('button', { name: 'All but ...' }).tap();
      await page.getByRole('dialog').getByRole('button', { name: 'Everything is back' }).tap();
      await expect(headline(page)).toHaveText(`${pieces} of ${pieces} accounted for`);
      await page.getByRole('button', { name: 'Close the muster' }).tap();
      presses += 3;
    });

    await expect(headline(page)).toHaveText(/^Closed on /);
    await expect(page.getByText(/^air filter: 1 lost$/)).toBeVisible();
    await expect(page.getByText('Air filter choked')).toBeVisible({ timeout: 30_000 });
    expect(presses / pieces).toBeLessThanOrEqual(1.2);

    await test.step('one undo opens it again', async () => {
      await page.getByRole('button', { name: 'Undo' }).tap();
      await expect(headline(page)).toHaveText(`${pieces} of ${pieces} accounted for`);
    });
  });
});

test('a bag is counted in by keyboard alone', async ({ page }) => {
  test.setTimeout(120_000);
  await openDemo(page);
  await proven(page);
  await showSheet(page, '/bags/muster');
  await pressOn(page, page.getByRole('button', { name: 'Count it out' }));
  await expect(headline(page)).toHaveText(/^0 of /);
  const first = page.getByRole('main').locator('.muster-tick').first();
  await pressOn(page, first, 'Space');
  await expect(first).toHaveAttribute('aria-pressed', 'true');
  await pressOn(page, page.getByRole('button', { name: /^Not back: / }).first());
  await page.getByRole('dialog').waitFor();
  await pressOn(page, page.getByRole('dialog').getByRole('button', { name: 'Damaged', exact: true }));
  await expect(headline(page)).toHaveText(/^2 of /);
});

test('care that is seen to today is off the list, and the days can be saved', async ({ page }) => {
  test.setTimeout(120_000);
  await openDemo(page);
  await proven(page);
  await showSheet(page, '/bags/care');
  const tasks = page.locator('.task-row');
  await expect(tasks.first()).toBeVisible({ timeout: 30_000 });
  const before = await tasks.count();
  await page
    .getByRole('button', { name: /^Done today: / })
    .first()
    .click();
  await expect(tasks).toHaveCount(before - 1, { timeout: 60_000 });
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the days as a calendar file' }).click();
  expect((await saved).suggestedFilename()).toMatch(/\.ics$/);
});

test('the kit is put away as proposed in one step, a piece moved by hand, and a bag made', async ({
  page,
}) => {
  test.setTimeout(150_000);
  await openDemo(page);
  await proven(page);
  await showSheet(page, '/bags/map');
  await page.getByRole('button', { name: 'Put away as proposed' }).click({ timeout: 60_000 });
  await expect(page.getByRole('button', { name: 'Take all out of the bags' })).toBeEnabled();

  await test.step('a piece moved to another bag says that it was put there by hand', async () => {
    const piece = page.locator('.piece-word').first();
    const name = (await piece.textContent()) ?? '';
    await piece.click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: /Bag$/ }).click();
    await page.getByRole('option').nth(3).click();
    await dialog.getByRole('button', { name: 'Put it there' }).click();
    await expect(dialog).toHaveCount(0);
    await page.getByRole('button', { name, exact: true }).first().click();
    await expect(dialog).toContainText('put there by hand', { timeout: 60_000 });
    await page.keyboard.press('Escape');
  });

  await test.step('a new bag stays home while nothing is in it', async () => {
    await page.getByRole('button', { name: 'New bag' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Bag of <b>cloths</b>');
    await page.getByRole('button', { name: 'Keep this bag' }).click();
    await expect(page.getByRole('button', { name: 'Change Bag of <b>cloths</b>' })).toBeVisible({
      timeout: 60_000,
    });
  });
});
