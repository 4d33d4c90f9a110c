/** The letters of a role, as on the flags of the drawings and in the log: the employer's own, if its pack has some. */
import { english } from './en'
import { makeSay } from './makeSay'

const say = makeSay(english)

export type LetteredRole = 'person-in-charge' | 'pole-worker' | 'ground-worker' | 'switching-operator'

export const roleLetters = (role: LetteredRole): string => say(`letters.${role}`)

interface Lettered {
  readonly id: string
  readonly role: LetteredRole
}

/** Of a person among the crew: who has a role after somebody else is counted, "PIC 2". The id of whoever is not of it. */
export function personLetters(crew: readonly Lettered[], id: string): string {
  const person = crew.find((it) => it.id === id)
  if (person === undefined) return id
  const place = crew.filter(({ role }) => role === person.role).indexOf(person)
  return place === 0 ? roleLetters(person.role) : `${roleLetters(person.role)}\u00a0${place + 1}`
}
