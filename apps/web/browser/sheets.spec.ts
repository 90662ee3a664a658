import { goTo, openDemo } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { SHEETS, SIZES } from './support/sheets.ts';

test('the list of sheets is what the planner itself links to, and each has a heading of its own', async ({
  page,
}) => {
  await openDemo(page);
  const linked = new Set<string>();
  for (const { path } of SHEETS) {
    await goTo(page, path);
    await expect(page.locator('main h1'), path).toHaveCount(1);
    const hrefs = await page
      .locator('nav a[href^="#/"]')
      .evaluateAll((links) => links.map((link) => (link.getAttribute('href') ?? '').slice(1)));
    for (const href of hrefs) linked.add(href);
  }
  // A place alone stands for its first sheet.
  const places = new Set([...linked].filter((path) => path.split('/').length === 2));
  const named = new Set(SHEETS.map(({ path }) => path));
  const missing = [...linked].filter((path) => !named.has(path) && !places.has(path));
  expect(missing).toEqual([]);
});

for (const { name, viewport } of SIZES)
  test(`no sheet is wider than a ${name}'s screen`, async ({ page }) => {
    await page.setViewportSize(viewport);
    await openDemo(page);
    const wide: string[] = [];
    for (const { path } of SHEETS) {
      await goTo(page, path);
      await expect(page.locator('main h1')).toBeVisible();
      const beyond = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (beyond > 0) wide.push(`${path} by ${beyond} px`);
    }
    expect(wide).toEqual([]);
  });
