/** Every question that a pack may ask of the site, by name. */
import type { SitePredicate } from '../language/predicate'
import { bodiesPredicates } from './bodies'
import { changesPredicates } from './changes'
import { crossingPredicates } from './crossing'
import { custodyPredicates } from './custody'
import { earthsPredicates } from './earths'
import { isolationPredicates } from './isolation'
import { peoplePredicates } from './people'
import { ratingPredicates } from './rating'
import { scenarioPredicates } from './scenario'
import { testsPredicates } from './tests'
import { truckPredicates } from './truck'

const all: readonly SitePredicate[] = [
  ...bodiesPredicates,
  ...changesPredicates,
  ...crossingPredicates,
  ...custodyPredicates,
  ...earthsPredicates,
  ...isolationPredicates,
  ...peoplePredicates,
  ...ratingPredicates,
  ...scenarioPredicates,
  ...testsPredicates,
  ...truckPredicates,
]

export const sitePredicates: ReadonlyMap<string, SitePredicate> = new Map(
  all.map((predicate) => [predicate.id, predicate]),
)
