import { openDemo, proven, showSheet } from './support/demo.ts';
import { expect, test } from './support/planner.ts';

test('how sure it is: the spread stands at once, the search says how far it is and can be stopped', async ({
  page,
}) => {
  await openDemo(page);
  await proven(page);
  await showSheet(page, '/kit/sure');
  await expect(
    page.getByRole('heading', { level: 1, name: /^Likely between 1 in \d+ and 1 in \d+$/ }),
  ).toBeVisible();
  await expect(page.getByRole('img', { name: /^Trips that need help: from 1 in/ })).toBeVisible();
  await page.getByRole('button', { name: 'Look into it' }).click();
  await expect(page.getByText(/^[1-9]\d* of \d+ other kits looked for/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByText('Stopped. Half of it is no answer.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Look again' })).toBeEnabled();
});
