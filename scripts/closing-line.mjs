// The last line of a run of the tests, counted from the runners' own reports: "N passed, N failed".
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A runner that left no report counts as one failure. */
export function closingLine(root) {
  const counts = [
    ['vitest.json', ofVitest],
    ['playwright.json', ofPlaywright],
  ].map(([name, count]) => {
    const file = join(root, 'reports', name);
    return existsSync(file) ? count(JSON.parse(readFileSync(file, 'utf8'))) : { passed: 0, failed: 1 };
  });
  const passed = counts.reduce((sum, c) => sum + c.passed, 0);
  const failed = counts.reduce((sum, c) => sum + c.failed, 0);
  return {
    late: counts.flatMap(({ late = [] }) => late),
    line: `${passed} passed, ${failed} failed`,
    good: failed === 0 && counts.every((c) => c.passed > 0),
  };
}

function ofVitest(report) {
  // A file that could not be read has no test to count.
  const broken = report.testResults.filter((t) => t.status === 'failed' && t.assertionResults.length === 0);
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
}

/** A test that passed when tried again has passed, and is named; an error outside the tests is a failure. */
function ofPlaywright({ stats, errors, suites }) {
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + errors.length,
    late: suites.flatMap(passedLate),
  };
}

function passedLate({ suites = [], specs = [] }) {
  const own = specs.filter(({ tests }) => tests.some(({ status }) => status === 'flaky'));
  return [...own.map(({ title }) => title), ...suites.flatMap(passedLate)];
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] === self) {
  const { line, good, late } = closingLine(dirname(dirname(self)));
  for (const title of late) console.log(`passed at the second try: ${title}`);
  console.log(line);
  process.exit(good ? 0 : 1);
}
