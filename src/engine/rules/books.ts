/** Everything that a pack's parameters may name. */
import { namedSets } from './language/each'
import type { Books } from './language/kind'
import { measures } from './measures'
import { sitePredicates } from './predicates'
import { truths } from './truths'

export const books: Books = { predicates: sitePredicates, measures, truths, sets: namedSets }
