/** Letters of a person of the crew; the id of whoever is not of it. */
import type { Belief } from '../../../engine'
import { personLetters } from '../../../text'

export const lettersOf = (belief: Belief, who: string): string => personLetters(belief.persons, who)
