// `npm run screens`: a picture of every sheet with the demo, on a phone and on a desk, into docs/screens. With --check it only
// says which sheet has no pair of pictures.
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, 'docs', 'screens');
const MOST_BYTES = 150_000;
const SIZES = [
  { name: 'phone', viewport: { width: 390, height: 844 } },
  { name: 'desk', viewport: { width: 1440, height: 900 } },
];

/** Every sheet with a name of its own: {name, path}; browser/sheets.spec.ts proves that none is missing. */
const sheets = JSON.parse(
  readFileSync(join(root, 'apps', 'web', 'browser', 'support', 'sheets.json'), 'utf8'),
);
const wanted = sheets.flatMap(({ name }) => SIZES.map((size) => `${name}-${size.name}.png`));

process.exitCode = process.argv.includes('--check') ? check() : await draw();

function check() {
  const there = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.png')) : [];
  const missing = wanted.filter((name) => !there.includes(name));
  const needless = there.filter((name) => !wanted.includes(name));
  const large = there.filter((name) => readFileSync(join(folder, name)).length > MOST_BYTES);
  for (const name of missing) console.error(`docs/screens/${name} is missing: npm run screens`);
  for (const name of needless) console.error(`docs/screens/${name} shows no sheet there is: npm run screens`);
  for (const name of large) console.error(`docs/screens/${name} is over ${MOST_BYTES / 1000} kB`);
  console.log(`${there.length} pictures of ${sheets.length} sheets`);
  return missing.length + needless.length + large.length === 0 ? 0 : 1;
}

async function draw() {
  const { chromium } = await import('@playwright/test');
  const { findBrowser } = await import('./browser.mjs');
  const { withFewColours } = await import('./png.mjs');
  const { serve } = await import('./serve.mjs');
  const browser = await findBrowser(root, console.log);
  if (!browser.ok) {
    console.error(browser.sentence);
    return 1;
  }
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (name.endsWith('.png')) rmSync(join(folder, name));
  const { server, address } = await serve(join(root, 'apps', 'web', 'dist'));
  const running = await chromium.launch({ executablePath: browser.path, args: ['--no-sandbox'] });
  for (const size of SIZES) {
    const context = await running.newContext({
      viewport: size.viewport,
      locale: 'en-GB',
      reducedMotion: 'reduce',
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    await page.goto(`${address}#/garage/begin?demo`);
    await page.getByText('proven', { exact: true }).first().waitFor({ timeout: 60_000 });
    // The curve follows the proof.
    await page.waitForTimeout(8000);
    for (const { name, path } of sheets) {
      await page.evaluate((to) => {
        location.hash = `#${to}`;
      }, path);
      await page.waitForTimeout(1200);
      await page.evaluate(() => scrollTo(0, 0));
      const file = `${name}-${size.name}.png`;
      const picture = withFewColours(await page.screenshot());
      writeFileSync(join(folder, file), picture);
      console.log(`wrote docs/screens/${file} (${Math.round(picture.length / 1000)} kB)`);
    }
    await context.close();
  }
  await running.close();
  server.close();
  server.closeAllConnections();
  return check();
}
