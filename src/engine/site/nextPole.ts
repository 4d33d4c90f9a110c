/**
 * The next pole of the line, where a place of work has one: made like the worked pole, `along` metres further towards the
 * crossing. Things on it are named with `@next`: `conductor-b@next`, `arm@next`. No low voltage hangs there.
 */
import type { ThingId } from './ids'
import { distance, type GroundPoint } from './place'

export interface NextPole {
  readonly number: string
  /** Metres along the section from the worked pole; positive towards the crossing. */
  readonly along: number
  /** What is changed there too: the old part stands on that conductor, the item takes its place. */
  readonly work?: { readonly conductor: ThingId; readonly old: string; readonly item: string }
}

/** What may have one. */
interface WithNextPole {
  readonly nextPole?: NextPole
}

/** Which pole; the worked one when not said. */
export type PoleName = 'next'

const suffix = '@next'

export const onNextPole = (thing: ThingId): ThingId => `${thing}${suffix}`

export const isOnNextPole = (thing: ThingId): boolean => thing.endsWith(suffix)

/** The same thing of the worked pole. */
export const withoutPole = (thing: ThingId): ThingId => (isOnNextPole(thing) ? thing.slice(0, -suffix.length) : thing)

export function poleFoot({ nextPole }: WithNextPole, pole: PoleName | undefined): GroundPoint {
  return { x: pole === 'next' ? (nextPole?.along ?? 0) : 0, y: 0 }
}

/** The pole that somebody there would climb. */
export function nearestPole(scenario: WithNextPole, at: GroundPoint): PoleName | undefined {
  const { nextPole } = scenario
  if (nextPole === undefined) return undefined
  return distance(at, poleFoot(scenario, 'next')) < distance(at, poleFoot(scenario, undefined)) ? 'next' : undefined
}
