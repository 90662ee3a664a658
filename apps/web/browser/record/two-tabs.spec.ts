import { openDemo, titleField } from '../support/demo.ts';
import { expect, test } from '../support/planner.ts';

test('what one tab writes stands in the other, and undo in one is undo in both', async ({
  page,
  context,
}) => {
  const other = await context.newPage();
  await other.goto('./');
  await expect(titleField(other, 'Trip')).toHaveText('none yet');
  await openDemo(page);
  await expect(titleField(other, 'Trip')).toHaveText('Saltbush loop');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(titleField(page, 'Trip')).toHaveText('none yet');
  await expect(titleField(other, 'Trip')).toHaveText('none yet');
});

test('the demo is not opened over a record that holds something', async ({ page }) => {
  await openDemo(page);
  await page.getByText('Saved on this device.').waitFor();
  await page.goto('./#/garage/settings');
  await page.goto('./#/garage/begin?demo');
  await page.reload();
  await expect(page).toHaveURL(/begin$/);
  await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
  // One step to undo, not two: nothing was put in its place.
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(titleField(page, 'Trip')).toHaveText('none yet');
});
