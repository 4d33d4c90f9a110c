/** Letters of a role, as on the flags of the plan. */
import type { Belief } from '../../../engine'

const letters: Readonly<Record<string, string>> = {
  'person-in-charge': 'PIC',
  'pole-worker': 'PW',
  'ground-worker': 'GW',
  'switching-operator': 'SO',
}

export const lettersOf = (belief: Belief, who: string): string =>
  letters[belief.persons.find((person) => person.id === who)?.role ?? ''] ?? who
