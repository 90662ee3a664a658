import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { goTo, openDemo, proven } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { SHEETS, SIZES } from './support/sheets.ts';

/** WCAG 2.2 levels A and AA, and what axe-core counts as good practice besides. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const SCHEMES = ['light', 'dark', 'night', 'amber'] as const;

for (const scheme of SCHEMES)
  for (const { name, viewport } of SIZES)
    test(`axe finds nothing on any sheet, ${scheme}, ${name}`, async ({ page }) => {
      test.setTimeout(180_000);
      await page.addInitScript((chosen) => {
        localStorage.setItem('waymend.scheme', chosen);
        localStorage.setItem('waymend.settings', JSON.stringify({ scheme: chosen }));
      }, scheme);
      await page.setViewportSize(viewport);
      await openDemo(page);
      await proven(page);
      await expect(page.locator('html')).toHaveAttribute('data-scheme', scheme);
      const found: string[] = [];
      for (const { path } of SHEETS) {
        await goTo(page, path);
        await expect(page.locator('main h1')).toBeVisible();
        found.push(...(await violations(page)).map((text) => `${path}: ${text}`));
      }
      expect(found).toEqual([]);
    });

async function violations(page: Page): Promise<string[]> {
  const { violations: all } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return all.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => {
      const why = (failureSummary ?? '').split('\n').slice(1, 3).join(' ').trim();
      return `${id} ${JSON.stringify(target)} ${why}`;
    }),
  );
}
