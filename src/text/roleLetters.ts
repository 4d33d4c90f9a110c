/** The letters of a role, as on the flags of the drawings and in the log: the employer's own, if its pack has some. */
import { english } from './en'
import { makeSay } from './makeSay'

const say = makeSay(english)

export type LetteredRole = 'person-in-charge' | 'pole-worker' | 'ground-worker' | 'switching-operator'

export const roleLetters = (role: LetteredRole): string => say(`letters.${role}`)
