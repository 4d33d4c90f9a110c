/** The circuit's own way of saying "no answer": a value with the node where it went wrong, never zero volts. */

export type NodeName = string

/** The node that every voltage is measured against: earth far from every electrode. */
export const REMOTE_EARTH: NodeName = '0'

export interface Unsolvable {
  readonly kind: 'unsolvable'
  readonly node: NodeName
  /**
   * `too-large`: more unknowns than are solved at all; the node is the first of them. `not-computed`: not a matter of a
   * circuit at one frequency; told in words alone.
   */
  readonly reason: 'floating' | 'ill-conditioned' | 'not-finite' | 'no-convergence' | 'not-computed' | 'too-large'
}

export function unsolvable(node: NodeName, reason: Unsolvable['reason']): Unsolvable {
  return { kind: 'unsolvable', node, reason }
}

export function isUnsolvable(answer: unknown): answer is Unsolvable {
  return typeof answer === 'object' && answer !== null && 'kind' in answer && answer.kind === 'unsolvable'
}
