import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { openDemo, proven, showSheet } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { SHEETS, SIZES } from './support/sheets.ts';

/** WCAG 2.2 levels A and AA, and what axe-core counts as good practice besides. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** All that a scheme can change: the others look at what is there, not at how it is coloured. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'];

/** Colours do not hang on the size of the screen: all of them once, on a desk. */
const SCHEMES = { phone: ['light', 'night'], desk: ['light', 'dark', 'night', 'amber'] } as const;

for (const { name, viewport } of SIZES)
  test(`axe finds nothing on any sheet in any scheme, ${name}`, async ({ page }) => {
    test.setTimeout(480_000);
    await page.setViewportSize(viewport);
    await openDemo(page);
    await proven(page);
    const found: string[] = [];
    for (const { path } of SHEETS) {
      await showSheet(page, path);
      for (const scheme of SCHEMES[name]) {
        await page.evaluate((chosen) => document.documentElement.setAttribute('data-scheme', chosen), scheme);
        found.push(
          ...(await violations(page, scheme === 'light')).map((text) => `${path} ${scheme}: ${text}`),
        );
      }
    }
    expect(found).toEqual([]);
  });

test('the scheme that was chosen stands before the first paint', async ({ page }) => {
  await page.addInitScript(() => {
    localStorage.setItem('waymend.scheme', 'night');
    // No frame comes before the style sheets are there, so this one is what the first paint is made of.
    requestAnimationFrame(() => {
      document.documentElement.dataset['firstColour'] = getComputedStyle(
        document.documentElement,
      ).backgroundColor;
    });
  });
  await page.goto('./');
  await expect(page.locator('html')).toHaveAttribute('data-first-colour', 'rgb(0, 0, 0)');
});

async function violations(page: Page, whole: boolean): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  const { violations: all } = await (whole ? axe.withTags(RULES) : axe.withRules(OF_COLOUR)).analyze();
  return all.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => {
      const why = (failureSummary ?? '').split('\n').slice(1, 3).join(' ').trim();
      return `${id} ${JSON.stringify(target)} ${why}`;
    }),
  );
}
