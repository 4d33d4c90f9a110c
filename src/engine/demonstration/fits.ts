/** Whether a piece of gear is fit for this place, by what is printed on it: long enough, thick enough, of the right band. */
import { findPointOf, separation, shoulderAboveFeet } from '../actions/reach'
import { feetAt } from '../site/stations'
import type { GroundPoint } from '../site/place'
import type { ThingId } from '../site/scenario'
import { bondArea, leadArea } from './copper'
import type { Job } from './job'
import type { Printed } from './need'
import { conductorsOf } from './things'

/** Arm and lean of whoever holds the stick, metres (common practice, no source). */
const armAndLean = 1.1

export const printedNumber = (printed: Printed, name: string): number => Number(printed[name] ?? 0)

type Point = NonNullable<ReturnType<typeof findPointOf>>

/** The bare places of the wires and of metal do not change: the site as it is now tells them. */
function pointOf(job: Job, thing: ThingId): Point {
  return findPointOf(job.site(), thing) ?? { x: 0, y: 0, z: job.scenario.pole.armHeight }
}

/** From the rod to the first conductor, from each conductor to the next, and of the copper that the plan says. */
export function isLeadFit(job: Job, printed: Printed): boolean {
  const seats = conductorsOf(job).map((id) => pointOf(job, id))
  const down = separation(onGround(job.layout.rod), seats[0]!)
  const hops = seats.slice(1).map((seat, i) => separation(seats[i]!, seat))
  return (
    printedNumber(printed, 'area') >= leadArea(job) &&
    printedNumber(printed, 'length') >= down &&
    hops.every((hop) => printedNumber(printed, 'hop') >= hop)
  )
}

const onGround = ({ x, y }: GroundPoint): Point => ({ x, y, z: 0 })

export function isBondFit(job: Job, printed: Printed): boolean {
  const reach = separation(pointOf(job, 'arm'), pointOf(job, job.scenario.work.conductor))
  return printedNumber(printed, 'area') >= bondArea(job) && printedNumber(printed, 'length') >= reach
}

/** From below the low voltage to the farthest conductor. */
export function isStickFit(job: Job, printed: Printed): boolean {
  const shoulder = { x: 0, y: 0, z: feetAt(job.scenario.pole, 'below-lv') + shoulderAboveFeet }
  const reach = armAndLean + printedNumber(printed, 'reach')
  return conductorsOf(job).every((id) => separation(shoulder, pointOf(job, id)) <= reach)
}

/** The voltage of whatever feeds the section lies in its band. */
export function isDetectorFit({ scenario }: Job, printed: Printed): boolean {
  const fed = scenario.switches.map(({ feeder }) => feeder)
  return scenario.feeders
    .filter(({ id }) => fed.includes(id))
    .every(
      ({ voltage }) => voltage >= printedNumber(printed, 'bandLow') && voltage <= printedNumber(printed, 'bandHigh'),
    )
}

export function isCoverFit(job: Job, printed: Printed): boolean {
  const { from, to } = coverEdges(job)
  const isClass = printedNumber(printed, 'class') >= job.practice.coverClass
  return isClass && printedNumber(printed, 'length') >= to - from
}

/** From below the thigh of whoever works up there to the arm, in steps of 0.1 m. */
export function coverEdges({ scenario: { pole }, practice }: Job): { readonly from: number; readonly to: number } {
  return {
    from: Math.floor(10 * practice.coverFrom + 1e-9) / 10,
    to: Math.floor(10 * Math.min(pole.height, pole.armHeight) + 1e-9) / 10,
  }
}
