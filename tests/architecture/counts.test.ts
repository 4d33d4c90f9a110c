// `npm test` cannot say that all is well when nothing was checked, or when a tool died.

import { describe, expect, test } from 'vitest'
import { countClosingLine, countImportRules, countOne, countPreparation, countVitest } from '../../.ci/counts.mjs'

describe('a test runner', () => {
  const file = (status: string, ...tests: string[]) => ({
    status,
    assertionResults: tests.map((each) => ({ status: each })),
  })
  const report = (passed: number, failed: number, ...testResults: object[]) =>
    JSON.stringify({ numPassedTests: passed, numFailedTests: failed, numPendingTests: 0, testResults })

  test.each([
    ['counts its tests', report(2, 1, file('failed', 'passed', 'passed', 'failed')), 1, 2, 1],
    ['fails with a file that does not load', report(2, 0, file('passed', 'passed', 'passed'), file('failed')), 1, 2, 1],
    ['fails with a fault outside of every test', report(2, 0, file('passed', 'passed', 'passed')), 1, 2, 1],
    ['fails without tests', report(0, 0), 0, 0, 1],
    ['fails without a report', undefined, 0, 0, 1],
    ['passes', report(1, 0, file('passed', 'passed')), 0, 1, 0],
  ])('%s', (_what, text, status, passed, failed) => {
    expect(countVitest(text, status)).toMatchObject({ passed, failed })
  })
})

describe('a closing line', () => {
  test.each([
    ['counts its cases', 'a: fine\n3 passed, 0 failed\n', 0, 3, 0],
    ['is the last one', '1 passed, 0 failed\n3 passed, 2 failed\n', 1, 3, 2],
    ['must be there', 'all fine', 0, 0, 1],
    ['cannot be empty', '0 passed, 0 failed', 0, 0, 1],
    ['does not excuse a bad end', '3 passed, 0 failed', 1, 3, 1],
  ])('%s', (_what, output, status, passed, failed) => {
    expect(countClosingLine(output, status)).toEqual({ passed, failed })
  })
})

test('import rules without modules have judged nothing', () => {
  expect(countImportRules('no dependency violations found (134 modules, 313 dependencies cruised)', 0).failed).toBe(0)
  expect(countImportRules('no dependency violations found (0 modules, 0 dependencies cruised)', 0).failed).toBe(1)
  expect(countImportRules('x 4 dependency violations. 134 modules, 313 dependencies cruised.', 4).failed).toBe(1)
})

test('a tool is one check, a preparation none, and both can fail', () => {
  expect([countOne(0), countOne(2)].map(({ passed, failed }) => [passed, failed])).toEqual([
    [1, 0],
    [0, 1],
  ])
  expect([countPreparation(0), countPreparation(1)].map(({ passed, failed }) => [passed, failed])).toEqual([
    [0, 0],
    [0, 1],
  ])
})
