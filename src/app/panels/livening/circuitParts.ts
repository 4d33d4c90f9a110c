/** Which part of the site a point or a way of the circuit belongs to: by how hazard/circuit names them. */

export const circuitParts = ['lead', 'ground', 'pole', 'section', 'low', 'source', 'other'] as const
export type CircuitPart = (typeof circuitParts)[number]

const patterns: readonly (readonly [RegExp, CircuitPart])[] = [
  [/^(lead|piece|clamp)\//, 'lead'],
  [/^(rod\/|electrode|soil)/, 'ground'],
  [/^(arm|cage|pole|stay|leg|bracket|terminal)/, 'pole'],
  [/^(lv|low)/, 'low'],
  [/@|^section\/|\/blade-|^clash/, 'section'],
  [/\/(emf|source|bus|end|star|station|line|neutral|shunt)/, 'source'],
]

/** @param ids the id itself, then what it hangs on: the first that is known decides */
export function partOf(ids: readonly string[]): CircuitPart {
  for (const id of ids) {
    const found = patterns.find(([pattern]) => pattern.test(id))
    if (found) return found[1]
  }
  return 'other'
}
