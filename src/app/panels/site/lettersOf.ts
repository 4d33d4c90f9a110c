/** Letters of a person's role; the id of whoever is not of the crew. */
import type { Belief } from '../../../engine'
import { roleLetters } from '../../../text'

export function lettersOf(belief: Belief, who: string): string {
  const person = belief.persons.find(({ id }) => id === who)
  return person ? roleLetters(person.role) : who
}
