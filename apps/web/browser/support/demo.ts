import type { Page } from '@playwright/test';
import { expect } from './planner.ts';

/** Opens the planner with the demo, as the address that `npm start` prints does. */
export async function openDemo(page: Page, place = '/garage/begin'): Promise<void> {
  await page.goto('./#/garage/begin?demo');
  await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
  if (place !== '/garage/begin') await goTo(page, place);
}

/** Waits until the answer for the open trip is proven. */
export async function proven(page: Page): Promise<void> {
  await expect(titleField(page, 'Answer')).toHaveText('proven', { timeout: 60_000 });
}

export async function goTo(page: Page, place: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = `#${to}`;
  }, place);
}

/** Goes to a sheet and waits until it is drawn. */
export async function showSheet(page: Page, path: string): Promise<void> {
  await goTo(page, path);
  await expect(page.locator('main h1').first(), path).toBeVisible();
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
}

/** Goes to a sheet by its links, as an owner does. */
export async function clickTo(page: Page, path: string): Promise<void> {
  const [, place = ''] = path.split('/');
  await page.getByRole('navigation', { name: 'Places' }).locator(`a[href="#/${place}"]`).click();
  const sheets = page.getByRole('navigation', { name: 'Sheets of this place' });
  await sheets.locator(`a[href^="#/${place}/"]`).first().waitFor();
  const parent = sheets.locator(`a[href="#${path.split('/').slice(0, 3).join('/')}"]`);
  await parent.click();
  if (path.split('/').length === 3) {
    await expect(parent).toHaveAttribute('aria-current', 'page');
    return;
  }
  const link = page.locator(`main a[href="#${path}"]`).first();
  await link.click();
  await expect(page.locator('main h1').first(), path).toBeVisible();
}

/** A field of the title block, which is on every sheet. */
export const titleField = (page: Page, name: string) =>
  page
    .locator('.title-block .title-field')
    .filter({ has: page.locator('dt', { hasText: name }) })
    .locator('dd');
