// Changes the physics in small ways, one at a time, and sees whether a test notices. Slow: by hand, not in the tests.
// `npm run mutate -- --mutate 'src/engine/physics/soil/*.ts'` for one room.

// What may be left alive, and why (in every room, so not to be chased again):
//   < for <=, > for >=      where both sides of the bound give the same: an end of a table, a node of it, the point where one
//                           part of a curve meets the next, a percentile of 50
//   a shortcut left out     `reflection === 0`, equal layers, no current: the long way comes to the same
//   how fine a sum is       where far images are taken in blocks, how far an expansion reaches: the answer moves by less than
//                           its own tolerance
//   a case that has none    a stranding without a constant: the catalogue has no such conductor

export default {
  testRunner: 'vitest',
  vitest: { configFile: '.ci/mutation.vitest.mjs' },
  mutate: ['src/engine/physics/**/*.ts'],
  // A word in a message to ourselves, or a name: the first no test should pin, the second does not compile when wrong.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 1,
  timeoutMS: 60_000,
  tempDirName: '.mutation',
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: '.mutation-report.json' },
  clearTextReporter: { allowColor: false, logTests: false },
  thresholds: { high: 95, low: 85, break: 85 },
  ignorePatterns: ['dist', 'tests/gallery/out'],
}
