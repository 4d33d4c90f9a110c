/** What of the place a part of the job is about, in the order in which it is taken. */
import { findSectionNeutral } from '../site/findSectionNeutral'
import { mayConduct } from '../site/pole'
import { phasesOf } from '../site/phasesOf'
import { onNextPole } from '../site/nextPole'
import type { ItemId, ScenarioSwitch, ThingId } from '../site/scenario'
import type { Job } from './job'

interface Hanging {
  readonly id: ThingId
  readonly x: number
  readonly height: number
}

/** From the lowest up, and from one side to the other: nobody reaches over a wire that is not done yet. */
const inOrder = (wires: readonly Hanging[]): readonly ThingId[] =>
  [...wires].sort((a, b) => a.height - b.height || a.x - b.x).map(({ id }) => id)

/** At the pole that is worked on. */
export const conductorsOf = (job: Job): readonly ThingId[] =>
  inOrder(job.scenario.conductors).map((id) => here(job, id))

/** A thing of the pole that is worked on. */
export const here = ({ at }: Job, thing: ThingId): ThingId => (at.pole === 'next' ? onNextPole(thing) : thing)

/** What is changed at the pole that is worked on. */
export function workOf(job: Job): { readonly conductor: ThingId; readonly old: ItemId; readonly part: string } {
  const { scenario, at } = job
  const next = at.pole === 'next' ? scenario.nextPole?.work : undefined
  const { conductor, old } = next ?? scenario.work
  return { conductor: here(job, conductor), old, part: next ? 'next-part' : 'part' }
}

export const lowVoltageOf = ({ scenario }: Job): readonly ThingId[] => inOrder(scenario.lv.wires)

/** The wires that the pack wants guards on: the two beside the pole, or all; in the order in which they are tested. */
export function guardedWires(job: Job): readonly ThingId[] {
  const { wires } = job.scenario.lv
  const nearest = [...wires].sort((a, b) => Math.abs(a.x) - Math.abs(b.x) || (a.id < b.id ? -1 : 1))
  const wanted = (job.practice.guards === 'twoCentral' ? nearest.slice(0, 2) : nearest).map(({ id }) => id)
  return lowVoltageOf(job).filter((id) => wanted.includes(id))
}

/** Those that feed the section first, then the open ones; each in the order of the switching sheet. */
export function switchesOf({ scenario }: Job): readonly ScenarioSwitch[] {
  return [...scenario.switches.filter(({ closed }) => closed), ...scenario.switches.filter(({ closed }) => !closed)]
}

/** Those that no switch of the section parts from it: their line only goes over or along. */
export function crossingFeeders({ scenario }: Job): readonly ThingId[] {
  const behind = scenario.switches.map(({ feeder }) => feeder)
  return scenario.feeders.map(({ id }) => id).filter((id) => !behind.includes(id))
}

export function bladesOf({ scenario }: Job, { id }: ScenarioSwitch): readonly ThingId[] {
  return phasesOf(scenario.conductors).map((phase) => `${id}/${phase}`)
}

/** The pack earths by the neutral wire where the line has one: its earth at the pole takes the place of a rod. */
export const isEarthedByNeutral = ({ scenario, practice }: Job): boolean =>
  practice.isNeutralFirst && findSectionNeutral(scenario) !== undefined

/** The pole leads current, and the pack wants it covered then. */
export function isCovering({ scenario: { pole }, practice }: Job): boolean {
  return practice.isCoverAsked && mayConduct(pole)
}
