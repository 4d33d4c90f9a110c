/** For our own mistakes only: what a trainee or an outside file does wrong is a value (Refusal, Issue), never a throw. */

class InvariantError extends Error {
  override readonly name = 'InvariantError'
}

/**
 * Throws InvariantError when `condition` is false.
 * @param expected what should hold, in words
 * @param got what was found instead
 */
export function invariant(condition: unknown, expected: string, ...got: readonly unknown[]): asserts condition {
  if (condition) return
  throw new InvariantError(
    got.length === 0 ? `expected ${expected}` : `expected ${expected}, got ${got.map(String).join(', ')}`,
  )
}
