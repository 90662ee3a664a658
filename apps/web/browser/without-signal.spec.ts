import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve } from '../../../scripts/serve.mjs';
import { goTo, proven, titleField } from './support/demo.ts';
import { BUILT, expect, test } from './support/planner.ts';

// A server of each test's own, so that it can be ended: that is further from a signal than any switch of the browser.

test('after one visit everything works with the server gone: reload, demo, plan, isolation', async ({
  page,
}) => {
  const { server, address } = await serve(BUILT);
  await page.goto(address);
  await expect(page.getByText('Works without signal.')).toBeVisible({ timeout: 30_000 });
  server.close();
  server.closeAllConnections();
  await expect(fetch(address)).rejects.toThrow();

  await page.reload();
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  expect(await page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  // Everything is from the cache: the page's script, the worker, the solver, the faces, the demo.
  await page.goto(`${address}#/garage/begin?demo`);
  await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
  await proven(page);
  expect(await page.evaluate(() => document.fonts.check('400 15px B612'))).toBe(true);
  for (const place of ['/vehicle', '/kit', '/garage/belongings', '/garage/settings']) {
    await goTo(page, place);
    await expect(page.locator('main h1, main h2').first()).toBeVisible();
  }
});

test('a new version waits, is offered in words, and takes over without losing anything', async ({ page }) => {
  const folder = mkdtempSync(join(tmpdir(), 'waymend-versions-'));
  cpSync(BUILT, folder, { recursive: true });
  const { server, address } = await serve(folder);
  try {
    await page.goto(`${address}#/garage/begin?demo`);
    await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
    await expect(page.getByText('Works without signal.')).toBeVisible({ timeout: 30_000 });

    // A later build: another page, and a list of the cache that says so.
    const index = join(folder, 'index.html');
    writeFileSync(
      index,
      readFileSync(index, 'utf8').replace('<title>Waymend</title>', '<title>Later</title>'),
    );
    const worker = join(folder, 'sw.js');
    const before = readFileSync(worker, 'utf8');
    const after = before.replace(/(url:"index\.html",revision:")[0-9a-f]+/, '$1later');
    expect(after).not.toBe(before);
    writeFileSync(worker, after);

    await page.reload();
    await expect.poll(() => page.evaluate(waits)).toBe(true);
    await expect(page).toHaveTitle('Waymend');
    const take = page.getByRole('button', { name: 'Use the new version' });
    // It moves nothing on the screen that is being read; the next place shows it.
    await expect(take).toHaveCount(0);
    await page.getByRole('link', { name: 'Kit', exact: true }).click();
    await take.click();
    await expect(page).toHaveTitle('Later');
    await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
  } finally {
    server.close();
    server.closeAllConnections();
    rmSync(folder, { recursive: true, force: true });
  }
});

async function waits(): Promise<boolean> {
  return ((await navigator.serviceWorker.getRegistration())?.waiting ?? null) !== null;
}
