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
    line: `${passed} passed, ${failed} failed`,
    good: failed === 0 && counts.every((c) => c.passed > 0),
  };
}

function ofVitest(report) {
  // A file that could not be read has no test to count.
  const broken = report.testResults.filter((t) => t.status === 'failed' && t.assertionResults.length === 0);
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
}

/** A test that passed only when tried again counts as failed; an error outside the tests too. */
function ofPlaywright({ stats, errors }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
}

const self = fileURLToPath(import.meta.url);
if (process.argv[1] === self) {
  const { line, good } = closingLine(dirname(dirname(self)));
  console.log(line);
  process.exit(good ? 0 : 1);
}
