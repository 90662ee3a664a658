import type { Page } from '@playwright/test';
import { goTo, openDemo, proven, showSheet } from './support/demo.ts';
import { pressOn, tabTo } from './support/keys.ts';
import { expect, test } from './support/planner.ts';
import { DESK, PHONE } from './support/sheets.ts';

const CARD = '/jobs/card/SS-04@rear';
const step = (page: Page, number: number) =>
  page
    .getByRole('listitem')
    .filter({ has: page.getByRole('checkbox') })
    .locator('.step-words')
    .nth(number - 1);

test.describe('by touch on a phone', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: PHONE });

  test('from a sign to a card, its steps, and the record', async ({ page }) => {
    test.setTimeout(120_000);
    await openDemo(page);
    await proven(page);
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Jobs' }).tap();
    const main = page.getByRole('main');
    const headline = page.getByRole('heading', { level: 1 });

    await test.step('a sign, one press an answer, and back without loss', async () => {
      await expect(headline).toHaveText('What do you notice?');
      await main.getByRole('button', { name: /^Brakes/ }).tap();
      await main.getByRole('link', { name: /Brake pedal soft/ }).tap();
      await expect(headline).toContainText('Brake pedal soft');
      const first = main.getByRole('region', { name: /^Look at the fluid/ });
      await first.getByRole('link', { name: 'Low, or it falls' }).tap();
      await expect(main.getByRole('region', { name: /^Where is it wet/ })).toBeVisible();
      await page.goBack();
      await expect(first).toBeVisible();
      await page.goForward();
      await main.getByRole('link', { name: 'Cannot tell' }).tap();
      await expect(main.getByRole('region', { name: 'What you answered' }).getByRole('listitem')).toHaveCount(
        2,
      );
    });

    await test.step('the likely jobs lead to a card', async () => {
      await main
        .getByRole('link', { name: /^Shut off one leaking wheel.*rear/ })
        .first()
        .tap();
      await expect(headline).toContainText('Shut off one leaking wheel');
      await expect(main.getByRole('status').first()).toContainText(/We can do it|Not now/);
    });

    await test.step('the card goes by what is said of it', async () => {
      await goTo(page, CARD);
      await expect(headline).toContainText('shock absorber');
      const verdict = main.getByRole('status', { name: 'Can it be done now' });
      await expect(verdict).toContainText('Not now');
      await main.getByText('All I own').tap();
      await expect(verdict).toContainText('We can do it');
      const before = await verdict.textContent();
      await main.getByText('Dark', { exact: true }).tap();
      await expect(verdict).toContainText('torchlight');
      expect(await verdict.textContent()).not.toBe(before);
    });

    await test.step('ticks outlive the page', async () => {
      await step(page, 1).tap();
      await step(page, 2).tap();
      await expect(main.getByText('2 of 4 done')).toBeVisible();
      await page.reload();
      await expect(main.getByText('2 of 4 done')).toBeVisible();
      await expect(main.getByRole('radio', { name: 'Dark' })).toBeChecked();
    });

    await test.step('its pieces are counted out', async () => {
      await main.getByRole('button', { name: /^Count out \d+ pieces/ }).tap();
      await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
      await expect(page).toHaveURL(/#\/bags\/muster/);
      await expect(headline).toBeVisible();
      await goTo(page, CARD);
      await expect(main.getByRole('link', { name: 'Count them back in' })).toBeVisible();
    });

    await test.step('what was done is recorded, and an odometer that goes back is not', async () => {
      await main.getByRole('link', { name: 'Done: record it' }).tap();
      await expect(headline).toContainText('Done: Replace a dead shock absorber');
      await main.getByText('Take the dead shock off and drive slower').tap();
      await expect(main.getByText('Trusted for 300 km.')).toBeVisible();
      const odometer = main.getByRole('textbox', { name: 'The odometer shows' });
      await odometer.fill('1000');
      await main.getByRole('button', { name: 'Record it' }).tap();
      await expect(main.getByRole('alert')).toContainText('replaced');
      await odometer.fill('187400');
      await main.getByRole('button', { name: 'Record it' }).tap();
      await expect(headline).toHaveText(/\d+ repairs? to watch/);
      const row = main.getByRole('listitem').filter({ hasText: 'Take the dead shock off' });
      await expect(row).toContainText('Trusted for 300 km more');
      await expect(row).toContainText('187,450 km on the odometer');
      await row.getByRole('button', { name: /^Looked: worse/ }).tap();
      await expect(row).toContainText('Found worse');
      await row.getByRole('button', { name: /^Mended for good/ }).tap();
      await expect(row).toHaveCount(0);
    });

    await test.step('a recorded job has no ticks left', async () => {
      await goTo(page, CARD);
      await expect(main.getByText('0 of 4 done')).toBeVisible();
    });
  });
});

test('the same by keyboard alone', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize(DESK);
  await openDemo(page);
  await proven(page);
  const main = page.getByRole('main');
  const headline = page.getByRole('heading', { level: 1 });
  await pressOn(page, page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Jobs' }));
  await tabTo(page, main.getByRole('searchbox', { name: 'Find a sign or a job' }));
  await page.keyboard.type('shock rear');
  await pressOn(page, main.getByRole('link', { name: /^Replace a dead shock absorber, rear/ }));
  await expect(headline).toContainText('shock absorber, rear');
  await tabTo(page, main.getByRole('radio', { name: 'Planned kit' }));
  await page.keyboard.press('ArrowDown');
  await expect(main.getByRole('radio', { name: 'All I own' })).toBeChecked();
  await tabTo(
    page,
    main.getByRole('checkbox', { name: /^1/ }).or(main.locator('.steps input').first()).first(),
  );
  await page.keyboard.press('Space');
  await expect(main.getByText('1 of 4 done')).toBeVisible();
  await pressOn(page, main.getByRole('link', { name: 'Done: record it' }));
  await pressOn(page, main.getByRole('button', { name: 'Record it' }));
  await expect(headline).toHaveText(/repairs? to watch/);
});

test('wire and fuse by what is fed', async ({ page }) => {
  await openDemo(page);
  await showSheet(page, '/jobs/wire');
  const headline = page.getByRole('heading', { level: 1 });
  await expect(headline).toHaveText(/mm² wire, 15\sA fuse/);
  const current = page.getByRole('textbox', { name: 'Current' });
  await current.fill('40');
  await current.press('Tab');
  await expect(headline).not.toHaveText(/15\sA fuse/);
});
