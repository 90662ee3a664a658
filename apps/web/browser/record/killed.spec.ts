import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { BrowserContext, Page } from '@playwright/test';
import { chromium, expect, test } from '@playwright/test';
import { emptyGarage } from '@waymend/garage/log/empty-garage';
import type { Garage } from '@waymend/garage/record/schema';
import { actsOf, mulberry, statesOf } from './random-edits.ts';
import { serveRecord } from './served-record.ts';

const SEQUENCES = 200;
const ACTS = 30;

/** What the page has said it has written, for each garage, whatever happens to the page afterwards. */
async function listen(context: BrowserContext): Promise<ReadonlyMap<string, number>> {
  const acknowledged = new Map<string, number>();
  await context.exposeBinding('acknowledged', (_source, name: string, acts: number) => {
    acknowledged.set(name, Math.max(acts, acknowledged.get(name) ?? 0));
  });
  return acknowledged;
}

async function openBench(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => Reflect.has(window, 'bench'));
  return page;
}

/** The garage found again is the one after some act, and no act before it that was acknowledged is missing. */
function expectKept(found: Garage, sequence: number, acknowledged: number): number {
  const states = statesOf(emptyGarage(), actsOf(sequence, ACTS));
  const at = states.findLastIndex((state) => isDeepStrictEqual(state, found));
  expect(at, `sequence ${sequence}: half an act, or acts out of order: ${found.name}`).toBeGreaterThanOrEqual(
    0,
  );
  expect(at, `sequence ${sequence}: an acknowledged act is lost`).toBeGreaterThanOrEqual(acknowledged);
  return at;
}

test('a page torn out at any moment of 200 random sequences of edits has lost nothing acknowledged', async ({
  browser,
}) => {
  test.setTimeout(180_000);
  const { address, end } = await serveRecord();
  const context = await browser.newContext();
  const page = await openBench(context, address);
  let midway = 0;
  for (let sequence = 0; sequence < SEQUENCES; sequence += 1) {
    const name = `page ${sequence}`;
    const { acknowledged, found } = await page.evaluate(
      async ([garage, n, count, ms]) => ({
        acknowledged: await window.bench.runAndTear(garage, n, count, ms),
        found: await window.bench.read(garage),
      }),
      [name, sequence, ACTS, mulberry(sequence)() * 60] as const,
    );
    const at = expectKept(found, sequence, acknowledged);
    if (at > 0 && at < ACTS) midway += 1;
  }
  // The moments are spread: many sequences are cut in their middle, or this test would show little.
  expect(midway).toBeGreaterThan(SEQUENCES / 5);
  await context.close();
  end();
});

test('a tab that is closed or crashes in the middle of its edits has lost nothing acknowledged', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const { address, end } = await serveRecord();
  const context = await browser.newContext();
  const acknowledged = await listen(context);
  for (let sequence = 500; sequence < 520; sequence += 1) {
    const name = `tab ${sequence}`;
    const page = await openBench(context, address);
    const working = page
      .evaluate(([garage, n, count]) => window.bench.run(garage, n, count), [name, sequence, ACTS] as const)
      .catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, mulberry(sequence)() * 60));
    if (sequence % 2 === 0) {
      const session = await context.newCDPSession(page);
      await Promise.race([session.send('Page.crash').catch(() => undefined), page.waitForEvent('crash')]);
    }
    await page.close();
    await working;
    const reader = await openBench(context, address);
    const found = await reader.evaluate((garage) => window.bench.read(garage), name);
    expectKept(found, sequence, acknowledged.get(name) ?? 0);
    await reader.close();
  }
  await context.close();
  end();
});

test('a browser killed outright has lost nothing acknowledged', async ({ launchOptions }) => {
  test.skip(process.platform !== 'linux', 'the processes of the browser are found in /proc');
  const { address, end } = await serveRecord();
  const profile = mkdtempSync(join(tmpdir(), 'waymend-profile-'));
  for (let sequence = 1000; sequence < 1004; sequence += 1) {
    const name = `browser ${sequence}`;
    const context = await chromium.launchPersistentContext(profile, { ...launchOptions });
    const acknowledged = await listen(context);
    const page = await openBench(context, address);
    const working = page
      .evaluate(([garage, n, count]) => window.bench.run(garage, n, count), [name, sequence, ACTS] as const)
      .catch(() => undefined);
    await expect.poll(() => acknowledged.get(name) ?? 0).toBeGreaterThan(5);
    killBrowserOf(profile);
    await working;
    await context.close().catch(() => undefined);

    const again = await chromium.launchPersistentContext(profile, { ...launchOptions });
    const reader = await openBench(again, address);
    const found = await reader.evaluate((garage) => window.bench.read(garage), name);
    expectKept(found, sequence, acknowledged.get(name) ?? 0);
    await again.close();
  }
  rmSync(profile, { recursive: true, force: true });
  end();
});

/** Ends every process that was started with this profile, without a word of warning. */
function killBrowserOf(profile: string): void {
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      if (readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes(profile))
        process.kill(Number(pid), 'SIGKILL');
    } catch {
      // Gone between the list and the look.
    }
  }
}
