/** The crew in the order of the strip: keys 1 to 4. */
import type { Belief, PersonBelief } from '../../../engine'

const roles = ['person-in-charge', 'pole-worker', 'ground-worker', 'switching-operator']

export const crewInOrder = (belief: Belief): readonly PersonBelief[] =>
  [...belief.persons].sort((a, b) => roles.indexOf(a.role) - roles.indexOf(b.role))
