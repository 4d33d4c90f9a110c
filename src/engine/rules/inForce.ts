/** Rules of a pack that are in force on the day of the job: all but those that say a later day of their own. */
import type { Scenario } from '../site/scenario'
import type { Pack, PackRule } from './finding'

/** ISO dates sort as text. */
export const rulesInForce = (pack: Pack, { date }: Pick<Scenario, 'date'>): readonly PackRule[] =>
  pack.rules.filter(({ effectiveFrom }) => effectiveFrom === undefined || effectiveFrom <= date)
