// `node scripts/icons.mjs`: draws the icons of the installed planner from apps/web/public/mark.svg. The maskable one has its
// drawing inside the middle four fifths, since a phone may cut a circle out of it.
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { findBrowser } from './browser.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const publicFolder = join(root, 'apps', 'web', 'public');
const PAPER = '#F2F4F0';

const ICONS = [
  { name: 'mark-192.png', size: 192, share: 1 },
  { name: 'mark-512.png', size: 512, share: 1 },
  { name: 'mark-maskable-512.png', size: 512, share: 0.72 },
  { name: 'mark-180.png', size: 180, share: 0.86 },
];

const browser = await findBrowser(root, console.log);
if (!browser.ok) {
  console.error(browser.sentence);
  process.exit(1);
}
const running = await chromium.launch({ executablePath: browser.path, args: ['--no-sandbox'] });
const mark = readFileSync(join(publicFolder, 'mark.svg'), 'utf8');
for (const { name, size, share } of ICONS) {
  const page = await running.newPage({ viewport: { width: size, height: size } });
  const inner = Math.round(size * share);
  const edge = Math.round((size - inner) / 2);
  await page.setContent(
    `<body style="margin:0;background:${PAPER}"><div style="position:absolute;left:${edge}px;top:${edge}px;width:${inner}px;height:${inner}px">${mark}</div></body>`,
  );
  writeFileSync(join(publicFolder, 'icons', name), await page.screenshot());
  await page.close();
  console.log(`wrote apps/web/public/icons/${name}`);
}
await running.close();
