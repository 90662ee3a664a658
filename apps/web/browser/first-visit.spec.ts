import { openDemo, titleField } from './support/demo.ts';
import { expect, test } from './support/planner.ts';

test('an empty record opens on Begin', async ({ page }) => {
  await page.goto('./');
  await expect(page).toHaveURL(/#\/garage\/begin$/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(titleField(page, 'Trip')).toHaveText('none yet');
});

test('the address that npm start prints opens the demo, once, as a step that can be undone', async ({
  page,
}) => {
  await openDemo(page);
  await expect(page).toHaveURL(/#\/garage\/begin$/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(titleField(page, 'Trip')).toHaveText('none yet');
});

test('every answer of the server carries the policy', async ({ request }) => {
  for (const path of ['./', './sw.js', './manifest.webmanifest', './mark.svg', './nothing-here']) {
    const headers = (await request.get(path)).headers();
    expect(headers['content-security-policy'], path).toContain("default-src 'self'");
    expect(headers['cross-origin-opener-policy'], path).toBe('same-origin');
    expect(headers['cross-origin-embedder-policy'], path).toBe('require-corp');
    expect(headers['x-content-type-options'], path).toBe('nosniff');
  }
});
