// From the JSON reports of the test runners to three numbers.

/**
 * How many passed, failed and were skipped.
 * @typedef {Readonly<{ passed: number, failed: number, skipped: number }>} Tally
 */

/** @type {Tally} */
export const NOTHING = { passed: 0, failed: 0, skipped: 0 };
/** @type {Tally} */
const ONE_FAILED = { passed: 0, failed: 1, skipped: 0 };

/** A step without tests of its own: one passed or one failed. @param {number} code its exit code @returns {Tally} */
export function tallyOfCode(code) {
  return code === 0 ? { passed: 1, failed: 0, skipped: 0 } : ONE_FAILED;
}

/**
 * What a runner's own figures leave out: a run without any test, and a run that failed outside its tests.
 * @param {Tally} tally @param {number} code the runner's exit code @returns {Tally}
 */
function honest(tally, code) {
  const ran = tally.passed + tally.failed > 0;
  if (!ran || (code !== 0 && tally.failed === 0)) return { ...tally, failed: tally.failed + 1 };
  return tally;
}

/**
 * Vitest's JSON report (its shape is Jest's). A file that fails before its first test counts as one failed.
 * @param {any} report null when there is none @param {number} code @returns {Tally}
 */
export function tallyOfVitest(report, code) {
  if (report === null || !Array.isArray(report.testResults)) return ONE_FAILED;
  const brokenFiles = report.testResults.filter(
    (/** @type {any} */ file) =>
      file.status === 'failed' &&
      !file.assertionResults.some((/** @type {any} */ test) => test.status === 'failed'),
  ).length;
  return honest(
    {
      passed: report.numPassedTests,
      failed: report.numFailedTests + brokenFiles,
      skipped: report.numPendingTests + report.numTodoTests,
    },
    code,
  );
}

/**
 * Playwright's JSON report. A test that passed at the second try counts as passed; errors outside of tests count as one failed.
 * @param {any} report null when there is none @param {number} code @returns {Tally}
 */
export function tallyOfPlaywright(report, code) {
  if (report === null || report.stats === undefined) return ONE_FAILED;
  const { expected, flaky, unexpected, skipped } = report.stats;
  return honest({ passed: expected + flaky, failed: unexpected, skipped }, code);
}

/** @param {readonly Tally[]} tallies @returns {Tally} */
export function sum(tallies) {
  return tallies.reduce(
    (all, one) => ({
      passed: all.passed + one.passed,
      failed: all.failed + one.failed,
      skipped: all.skipped + one.skipped,
    }),
    NOTHING,
  );
}

/** The line that CI reads. @param {Tally} tally */
export function resultLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
