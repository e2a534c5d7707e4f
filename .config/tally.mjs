// Says in one line what vitest's own report says, and fails if a test was skipped or no browser test ran.
import { readFileSync } from 'node:fs';

const report = JSON.parse(readFileSync(new URL('../.build/test-report.json', import.meta.url), 'utf8'));
/** @type {{ name: string, status: string, assertionResults: { status: string }[] }[]} */
const files = report.testResults;
/** @param {string} status */
const count = (status) => files.reduce((sum, file) => sum + file.assertionResults.filter((test) => test.status === status).length, 0);

// A file that cannot be loaded has no tests to count, and is a failure all the same.
const failed = count('failed') + files.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
const passed = count('passed');
const neither = report.numTotalTests - count('passed') - count('failed');
const browser = files.filter((file) => file.name.includes('/tests/browser/')).flatMap((file) => file.assertionResults);

if (neither > 0) console.log(`${neither} did not run`);
if (!browser.some((test) => test.status === 'passed' || test.status === 'failed'))
  console.log('No browser test ran: that counts as a failure.');
console.log(`${passed} passed, ${failed} failed`);
if (failed > 0 || neither > 0 || browser.length === 0 || !report.success) process.exitCode = 1;
