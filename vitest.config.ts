import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['packages/*/test/**/*.test.ts', 'apps/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
    testTimeout: 60_000,
    // Else one core of the two that the suite is meant for stands idle. Tests that look at a clock allow for company.
    maxWorkers: 2,
    expect: { requireAssertions: true },
  },
});
