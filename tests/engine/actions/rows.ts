/** What a row says that tries one act: refused for a fact of the world, or carried out and what it leaves. */
import type { Site } from '../../../src/engine'
import type { Said } from '../../support/cleanStages'

export type Refused = readonly [act: string, fact: string, site: () => Site, who: string, said?: Said]

export type Applied = readonly [
  act: string,
  site: () => Site,
  who: string,
  said: Said,
  what: (s: Site) => unknown,
  is: unknown,
]
