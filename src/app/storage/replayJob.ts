/** A job from its head and its orders: what the open job, the grader and the records all start from. */
import { type OpenTimeline, type Order, type Part, drawScenario, extendTimeline, openTimeline } from '../../engine'
import { type OwnEdition, layEdition, requireScenario } from './library'
import { prepareSite } from './prepareSite'

interface Head {
  readonly scenario: string
  readonly seed: number
  readonly purpose: 'practise' | 'assess'
  readonly startsAt: string
  readonly own?: OwnEdition
}

export function beginJob(head: Head): OpenTimeline {
  layEdition(head.own)
  const scenario = drawScenario(requireScenario(head.scenario), head.seed, head.purpose)
  if (head.startsAt === 'beginning') return openTimeline(scenario)
  const { site, prepared } = prepareSite(scenario, head.startsAt as Part)
  return openTimeline(scenario, site, prepared)
}

export const replayJob = (head: Head, orders: readonly Order[]): OpenTimeline =>
  orders.reduce(extendTimeline, beginJob(head))
