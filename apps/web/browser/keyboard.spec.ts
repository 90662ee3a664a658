import { proven, titleField } from './support/demo.ts';
import { pressOn, tabTo } from './support/keys.ts';
import { expect, test } from './support/planner.ts';
import { DESK } from './support/sheets.ts';

test('the whole way through by keyboard alone', async ({ page }) => {
  test.setTimeout(180_000);
  await page.setViewportSize(DESK);
  await page.goto('./');

  await test.step('the first press of Tab offers the way past the border', async () => {
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.keyboard.press('Tab');
    await expect(page.getByRole('link', { name: 'To the sheet' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('main')).toBeFocused();
  });

  await test.step('open the demo', async () => {
    await pressOn(page, page.getByRole('button', { name: 'Open the demo' }));
    await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
    await proven(page);
  });

  const places = page.getByRole('navigation', { name: 'Places' });
  const headline = page.getByRole('heading', { level: 1 });
  await test.step('read the kit, and move the handle of the curve', async () => {
    await pressOn(page, places.getByRole('link', { name: 'Kit' }));
    await expect(headline).toContainText('1 trip in');
    const handle = page.getByRole('slider', { name: 'Kilograms of kit' });
    await tabTo(page, handle);
    const before = await handle.getAttribute('aria-valuetext');
    await page.keyboard.press('ArrowLeft');
    await expect(handle).not.toHaveAttribute('aria-valuetext', before ?? '');
    await page.keyboard.press('Home');
    const lightest = Number(await handle.getAttribute('aria-valuenow'));
    await page.keyboard.press('End');
    expect(Number(await handle.getAttribute('aria-valuenow'))).toBeGreaterThan(lightest);
  });

  await test.step('ask why a thing comes, mark it, and come back to where one was', async () => {
    const row = page.getByRole('list', { name: 'Comes along' }).getByRole('button').first();
    await tabTo(page, row);
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    await expect(dialog).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    await expect(row).toBeFocused();
  });

  await test.step('take the limit back that the handle has set', async () => {
    await pressOn(page, page.getByRole('button', { name: 'Undo' }));
    await proven(page);
  });

  await test.step('act on a gap', async () => {
    await pressOn(page, page.getByRole('link', { name: 'Gaps', exact: true }));
    await expect(headline).toContainText('have no answer');
    await pressOn(
      page,
      page
        .getByRole('main')
        .getByRole('button', { name: /^Renewed at home/ })
        .first(),
    );
    await proven(page);
  });

  await test.step('the vehicle: load, sizes', async () => {
    await pressOn(page, places.getByRole('link', { name: 'Vehicle' }));
    await expect(headline).toContainText('left');
    await pressOn(page, page.getByRole('button', { name: /^6, canopy floor/ }));
    await pressOn(page, page.getByRole('link', { name: 'Sizes' }));
    await expect(headline).toContainText('holes');
  });

  await test.step('find a belonging and change it', async () => {
    await pressOn(page, places.getByRole('link', { name: 'Garage' }));
    await pressOn(page, page.getByRole('link', { name: 'Belongings', exact: true }));
    await tabTo(page, page.getByRole('searchbox', { name: 'Find' }));
    await page.keyboard.type('bottle jack');
    const found = page.getByRole('list', { name: 'Belongings' }).getByRole('button', { name: /bottle jack/ });
    await pressOn(page, found.first());
    const dialog = page.getByRole('dialog');
    await expect(dialog).toBeVisible();
    await tabTo(page, dialog.getByRole('textbox', { name: 'Name' }));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('the old jack');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  });
});
