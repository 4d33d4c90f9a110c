// Changes the physics in small ways, one at a time, and sees whether a test notices. Slow: by hand, not in the tests.
// `npm run mutate -- --mutate 'src/engine/physics/soil/*.ts'` for one room.

export default {
  testRunner: 'vitest',
  vitest: { configFile: '.ci/mutation.vitest.mjs' },
  mutate: ['src/engine/physics/**/*.ts'],
  // A word in a message to ourselves, or a name: the first no test should pin, the second does not compile when wrong.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 1,
  timeoutMS: 20_000,
  tempDirName: '.mutation',
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: '.mutation-report.json' },
  clearTextReporter: { allowColor: false, logTests: false },
  thresholds: { high: 95, low: 85, break: 85 },
  ignorePatterns: ['dist', 'tests/gallery/out'],
}
