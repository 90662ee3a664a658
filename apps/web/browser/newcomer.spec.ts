import type { Locator, Page } from '@playwright/test';
import { proven } from './support/demo.ts';
import { expect, test } from './support/planner.ts';
import { PHONE } from './support/sheets.ts';

/** A list as somebody would paste it from the notes on the phone. */
const LIST = `combination spanners 8-19 except 16
1/2 ratchet
1/2 deep sockets 17 19 21
1/4 ratchet and sockets 6-13
screwdrivers
2x locking pliers
hammer
bottle jack
wheel brace
spare wheel
tyre plug kit
12 V compressor
tyre gauge
multimeter
zip ties
duct tape
self-amalgamating tape
fuses
head torch
gloves
fire extinguisher
warning triangle
wheel chocks
jack base plate`;

/** Every tap, every field that is typed into and every paste is one input. */
class Hand {
  inputs = 0;
  private readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(thing: Locator): Promise<void> {
    this.inputs += 1;
    await thing.tap();
  }

  async paste(field: Locator, text: string): Promise<void> {
    await this.tap(field);
    this.inputs += 1;
    await this.page.keyboard.insertText(text);
  }
}

test.use({ hasTouch: true, isMobile: true, viewport: PHONE });

test('from an empty start to a useful plan in at most 15 inputs, by touch on a phone', async ({ page }) => {
  test.setTimeout(150_000);
  const hand = new Hand(page);
  await page.goto('./');
  await hand.tap(page.getByRole('button', { name: /^Pickup/ }));
  await hand.tap(page.getByRole('main').getByRole('link', { name: 'List what you own' }));
  await hand.tap(page.getByRole('main').getByRole('link', { name: 'Add from a list or file' }).first());
  await hand.paste(page.getByRole('textbox', { name: 'Your list' }), LIST);
  const add = page.getByRole('button', { name: /^Add these \d+/ });
  await expect(add).toBeEnabled();
  await hand.tap(add);
  await expect(page.getByText('added as one step')).toBeVisible();
  await hand.tap(page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Kit' }));
  await proven(page);

  // Useful: a kit of several things, an answer in a sentence, and gaps with their cures.
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/needs? help/);
  expect(await page.getByRole('list', { name: 'Comes along' }).getByRole('listitem').count()).toBeGreaterThan(
    5,
  );
  await hand.tap(page.getByRole('tab', { name: /^Gaps/ }));
  expect(await page.getByRole('tabpanel').getByRole('listitem').count()).toBeGreaterThan(3);
  expect(hand.inputs).toBeLessThanOrEqual(15);
  test.info().annotations.push({ type: 'inputs', description: String(hand.inputs) });
  console.log(`from an empty start to a plan: ${hand.inputs} inputs`);
});
