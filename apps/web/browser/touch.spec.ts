import { openDemo, proven, showSheet, titleField } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { PHONE, SHEETS } from './support/sheets.ts';

test.use({ hasTouch: true, isMobile: true, viewport: PHONE });

test('the whole way through by touch on a phone', async ({ page }) => {
  test.setTimeout(150_000);
  await page.goto('./');
  await page.getByRole('button', { name: 'Open the demo' }).tap();
  await expect(titleField(page, 'Trip')).toHaveText('Saltbush loop');
  await proven(page);
  const places = page.getByRole('navigation', { name: 'Places' });
  const headline = page.getByRole('heading', { level: 1 });

  await test.step('a lighter kit by one tap, and back', async () => {
    await places.getByRole('link', { name: 'Kit' }).tap();
    const before = await headline.textContent();
    await page.getByRole('button', { name: /^Lighter/ }).tap();
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
    await proven(page);
    await page.getByRole('button', { name: 'Undo' }).tap();
    await proven(page);
    await expect(headline).toHaveText(before ?? '');
  });

  await test.step('why a thing comes', async () => {
    await page.getByRole('list', { name: 'Comes along' }).getByRole('button').first().tap();
    const dialog = page.getByRole('dialog');
    await expect(dialog).toBeVisible();
    await dialog.getByRole('button', { name: 'Close' }).tap();
    await expect(dialog).toHaveCount(0);
  });

  await test.step('the four lists', async () => {
    for (const name of [/^Stays home/, /^Gaps/, /^Buy/, /^Comes along/]) {
      await page.getByRole('tab', { name }).tap();
      await expect(page.getByRole('tabpanel').getByRole('listitem').first()).toBeVisible();
    }
  });

  await test.step('where the load stands', async () => {
    await places.getByRole('link', { name: 'Vehicle' }).tap();
    await expect(headline).toContainText('left');
  });
});

test('whatever a finger presses on a phone is at least 48 px high and wide', async ({ page }) => {
  test.setTimeout(150_000);
  await openDemo(page);
  await proven(page);
  const small: string[] = [];
  for (const { path } of SHEETS) {
    await showSheet(page, path);
    small.push(...(await page.evaluate(smallTargets)).map((text) => `${path}: ${text}`));
  }
  expect(small).toEqual([]);
});

/** Links inside a sentence are exempt, as WCAG 2.2 (2.5.8) has it; so is what is only there for a screen reader. */
function smallTargets(): string[] {
  const least = 48;
  const found: string[] = [];
  const all = document.querySelectorAll<HTMLElement>(
    'button, a[href], input:not([type=file]), [role=slider], [role=tab], [role=radio], summary',
  );
  for (const element of all) {
    const { width, height } = (element.closest('label') ?? element).getBoundingClientRect();
    // For a screen reader only: there is nothing to touch.
    if (width <= 2 || height <= 2 || getComputedStyle(element).clipPath === 'inset(50%)') continue;
    if (element.closest('[style*="clip-path: inset(50%)"]') !== null) continue;
    if (element.matches('a') && element.parentElement?.matches('p, .sentence') === true) continue;
    // Half a pixel is lost to rounding.
    if (width < least - 0.5 || height < least - 0.5)
      found.push(
        `${element.tagName} "${(element.getAttribute('aria-label') ?? element.textContent).slice(0, 40)}" ${width.toFixed(0)} x ${height.toFixed(0)}`,
      );
  }
  return found;
}
