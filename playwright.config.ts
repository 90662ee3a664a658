import { defineConfig } from '@playwright/test';
import { installedBrowser } from './scripts/browser.mjs';

const executablePath = installedBrowser(import.meta.dirname);

/** The planner as it is built, in a real Chromium. Each worker serves it on a port of its own (browser/support/planner.ts). */
export default defineConfig({
  testDir: 'apps/web/browser',
  outputDir: 'reports/browser',
  timeout: 90_000,
  expect: { timeout: 15_000 },
  fullyParallel: true,
  workers: 2,
  forbidOnly: true,
  // A real browser on a busy machine can be late once; what needed its second try is named before the last line.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: 'reports/playwright.json' }]],
  use: {
    locale: 'en-GB',
    launchOptions: {
      ...(executablePath === null ? {} : { executablePath }),
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    },
  },
  projects: [
    { name: 'screens', testIgnore: '**/speed/**', workers: 2 },
    // Times mean something only while nothing else runs.
    { name: 'speed', testMatch: '**/speed/*.spec.ts', workers: 1, dependencies: ['screens'] },
  ],
});
