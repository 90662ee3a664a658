// The last line of a CI run, counted from the test runner's own report: "N passed, N failed".
import { existsSync, readFileSync } from 'node:fs';

const file = process.argv[2] ?? 'reports/vitest.json';
if (!existsSync(file)) {
  console.log('0 passed, 1 failed');
  process.exit(1);
}
const report = JSON.parse(readFileSync(file, 'utf8'));
const failedSuites = report.testResults.filter(
  (t) => t.status === 'failed' && t.assertionResults.length === 0,
).length;
const failed = report.numFailedTests + failedSuites;
console.log(`${report.numPassedTests} passed, ${failed} failed`);
process.exit(failed === 0 && report.numPassedTests > 0 ? 0 : 1);
