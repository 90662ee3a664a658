import type { Locator, Page } from '@playwright/test';

/** Presses Tab until the thing has the focus, as somebody without a mouse does; fails when it is never reached. */
export async function tabTo(page: Page, thing: Locator, most = 150): Promise<void> {
  for (let n = 0; n < most; n += 1) {
    if (await hasFocus(thing)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no ${most} presses of Tab reach ${String(thing)}`);
}

export async function pressOn(page: Page, thing: Locator, key = 'Enter'): Promise<void> {
  await thing.waitFor();
  await tabTo(page, thing);
  await page.keyboard.press(key);
}

async function hasFocus(thing: Locator): Promise<boolean> {
  return (await thing.count()) > 0 && thing.first().evaluate((element) => element === document.activeElement);
}
