// How much did a step of `npm test` check, and how much of it failed? From what the tool wrote and how it ended.
// Nothing checked is a failure, and so is a bad exit code that no count explains.

/** @typedef {{ passed: number, failed: number, skipped?: number }} Counts */

/** @type {(status: number) => Counts} */
export function countOne(status) {
  return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }
}

/** @type {(status: number) => Counts} A preparation checks nothing, but it can fail. */
export function countPreparation(status) {
  return { passed: 0, failed: status === 0 ? 0 : 1 }
}

/**
 * A test file that does not load counts as one failure.
 * @param {string | undefined} report what vitest's json reporter wrote; undefined when it did not get that far
 * @param {number} status
 * @returns {Counts}
 */
export function countVitest(report, status) {
  if (report === undefined) return { passed: 0, failed: 1 }
  const { numPassedTests, numFailedTests, numPendingTests, testResults } = JSON.parse(report)
  const hasFailedTest = (file) => file.assertionResults.some((test) => test.status === 'failed')
  const unloaded = testResults.filter((file) => file.status === 'failed' && !hasFailedTest(file)).length
  return { ...explained(numPassedTests, numFailedTests + unloaded, status), skipped: numPendingTests }
}

/** @type {(output: string, status: number) => Counts} From a closing line `N passed, N failed`. */
export function countClosingLine(output, status) {
  const [, passed = '0', failed = '0'] = [...output.matchAll(/^(\d+) passed, (\d+) failed$/gm)].at(-1) ?? []
  return explained(Number(passed), Number(failed), status)
}

/**
 * With a TypeScript that it does not understand, the checker of import rules finds no module and is content.
 * @type {(output: string, status: number) => Counts}
 */
export function countImportRules(output, status) {
  return countOne(status === 0 && /\b[1-9]\d* modules/.test(output) ? 0 : 1)
}

function explained(passed, failed, status) {
  const isExplained = failed > 0 || (status === 0 && passed > 0)
  return { passed, failed: isExplained ? failed : 1 }
}
