// Changes the physics in small ways, one at a time, and sees whether a test notices. Slow: by hand, not in the tests.
// `npm run mutate -- --mutate 'src/engine/physics/soil/*.ts'` for one room.

// Each room stands at 85 in a hundred or above. What may be left alive, and why (in every room, so not to be chased again):
//   < for <=, > for >=      where both sides of the bound give the same: an end of a table, a node of it, the point where one
//                           part of a curve meets the next, a percentile of 50, the last number that is still in range; and
//                           one step past the end of an array, where there is nothing to read or to write
//   a place that is not     the earth has no row, a port on nothing none either: an array of numbers takes nothing at
//   there                   `undefined`, so that the question whether there is one can be left out
//   a shortcut left out     `reflection === 0`, equal layers, no current, the mean of one point, a small impedance's own
//                           current, both halves of what is symmetric, parallel wires: the long way comes to the same
//   either would do         which of two wires of one length is the first, as long as it is the same one from both sides;
//                           which end a projection starts from; points that lie even about a middle
//   how fine a sum is       where far images are taken in blocks, how far an expansion or a table reaches and how near it
//                           begins, one panel or two: the answer moves by less than its own tolerance
//   a guard that nothing    what the checks before it have made impossible: an answer with a backward error above 1e-10 from
//   comes to                a matrix whose condition is sound, one that is no number although all its parts are
//   a case that has none    a stranding without a constant: the catalogue has no such conductor; an arm or a `?.` that only
//                           the types ask for
// A change that makes a loop endless counts as caught when the clock below ends it.

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
