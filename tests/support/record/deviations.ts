/** What a crew does otherwise than one that does everything right: small pieces that a recorded run is put together from. */
import type { Conduct, Intent } from '../../../src/engine'

export type Deviation = NonNullable<Conduct['deviate']>
export type Job = Parameters<Deviation>[1]
type IsMeant = (intent: Intent, job: Job) => boolean

/** Each piece sees what the one before it makes of an order. */
export function together(...pieces: readonly Conduct[]): Conduct {
  const deviations = pieces.flatMap(({ deviate }) => deviate ?? [])
  const doubts = pieces.flatMap(({ heeds }) => heeds ?? [])
  return {
    reachesFor: pieces.flatMap(({ reachesFor = [] }) => reachesFor),
    heeds: (doubt, thing) => doubts.every((heeds) => heeds(doubt, thing)),
    deviate: (intent, job) =>
      deviations.reduce<readonly Intent[]>((now, deviate) => now.flatMap((it) => deviate(it, job) ?? it), [intent]),
  }
}

export const leavingOut = (isMeant: IsMeant): Conduct => ({
  deviate: (intent, job) => (isMeant(intent, job) ? [] : undefined),
})

export const instead = (isMeant: IsMeant, make: (intent: Intent, job: Job) => readonly Intent[]): Conduct => ({
  deviate: (intent, job) => (isMeant(intent, job) ? make(intent, job) : undefined),
})

/** Once only, the first time that it comes. */
export function once(isMeant: IsMeant): IsMeant {
  let isOver = false
  return (intent, job) => {
    const isNow = !isOver && isMeant(intent, job)
    isOver ||= isNow
    return isNow
  }
}

/** Passes these items whatever is seen of them. */
export const overlooking = (...items: readonly string[]): Conduct => ({
  heeds: (doubt, thing) => !(doubt === 'defect' && items.includes(thing)),
})

/** Whatever the detector says. */
export const unheeding: Conduct = { heeds: (doubt) => doubt !== 'indication' }

export const reachingFor = (...items: readonly string[]): Conduct => ({ reachesFor: items })

const typeOf = (job: Job, id: string | undefined): string | undefined =>
  job.scenario.items.find((it) => it.id === id)?.type

/** The act is done with or to an item of this type. */
export const isWith = (job: Job, intent: Intent, type: string): boolean =>
  [intent.with, intent.on].some((id) => typeOf(job, id) === type)

/** The cover stays on the truck. */
export const withoutCover = leavingOut(
  (intent, job) =>
    intent.on === 'cover' || (isWith(job, intent, 'pole-cover') && ['tie-on', 'haul', 'fit-cover'].includes(intent.do)),
)

const atTheTruck = ['sign-on', 'read-label', 'look', 'test-item', 'judge', 'keep-still', 'report-isolated']

/** Nobody goes to the switches; that it is isolated is said all the same. */
export const withoutSwitching = leavingOut(
  (intent, job) => intent.who === job.crew.so && (!atTheTruck.includes(intent.do) || isOfSwitch(job, intent.on ?? '')),
)

const isOfSwitch = (job: Job, thing: string): boolean =>
  job.scenario.switches.some(({ id }) => thing === id || thing.startsWith(`${id}/`))

/** Handles are turned and nobody looks what the blades did. */
export const withoutLookingAtBlades = leavingOut(
  (intent, job) => intent.do === 'look' && isOfSwitch(job, intent.on ?? '') && job.belief().paper.permit === 'none',
)

/** The last conductor has its clamp: what follows comes after it. */
export const isLastTug: IsMeant = (intent, job) => {
  const { clamps, conductors } = job.belief()
  return intent.do === 'tug' && conductors.every(({ id }) => clamps.some(({ on }) => on === id))
}

/** The ground worker steps back for the clamps to go on. */
export const isStandingBack: IsMeant = (intent, job) => {
  const { hauled, clamps, paper } = job.belief()
  const isToLookout = intent.do === 'walk' && intent.values?.['to'] === job.layout.lookout
  return isToLookout && hauled.length > 0 && !paper.workDone && clamps.every(({ end }) => end === 'earth')
}
