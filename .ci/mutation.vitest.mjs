// Only what tries the physics by itself, so that each change is answered within a second.
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    environment: 'node',
    // what hangs, the mutation run ends by a clock of its own
    testTimeout: 120_000,
    include: [
      'tests/engine/physics/**/*.test.ts',
      'tests/engine/math/**/*.test.ts',
      'tests/qualification/qualification.test.ts',
    ],
    // ten thousand random circuits for each change would take days: the first of each property
    env: { FUZZ_RUNS: '20' },
    setupFiles: ['tests/support/failOnConsole.ts', 'tests/support/sameDraws.ts'],
  },
})
