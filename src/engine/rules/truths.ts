/** What statements of the crew are compared with. */
import { feedersOf, traitsOf } from '../site/liveningTraits'
import { thingAt, workedPole } from './predicates/workedPole'
import { heardWords, permitLimits } from '../site/misheard'
import type { Entry } from '../timeline/timeline'
import type { Truth } from './language/kind'
import type { RunView } from './language/runView'

const all: readonly Truth[] = [
  {
    id: 'sources',
    says: 'every feeder that feeds, ties to or crosses the section, and the low voltage on the pole',
    right: ({ timeline: { scenario } }) => [
      ...scenario.feeders.map(({ id }) => id),
      ...(scenario.lv.wires.length > 0 ? ['lv'] : []),
    ],
    alsoRight: ({ timeline: { scenario } }) => scenario.switches.map(({ id }) => id),
  },
  {
    id: 'livening-from',
    says: 'the feeder that could fall onto the section; `nowhere` when none can',
    right: ({ timeline: { scenario } }) => {
      const from = scenario.livenings.flatMap((it) => (traitsOf(it).by === 'crossing' ? feedersOf(scenario, it) : []))
      return [...new Set(from)].slice(0, 1).concat(from.length === 0 ? ['nowhere'] : [])
    },
  },
  {
    id: 'livening-possible',
    says: 'yes when anything could put a voltage on one phase, else no',
    right: ({ timeline: { scenario } }) => [scenario.livenings.length > 0 ? 'yes' : 'no'],
  },
  {
    id: 'switch-label',
    says: 'the number on the device of the act',
    right: ({ timeline: { scenario } }, entry) =>
      scenario.switches.filter(({ id }) => id === entry.order.on).map(({ label }) => asHeard(entry, label)),
  },
  {
    id: 'permit-limits',
    says: 'pole number and all points of isolation',
    right: ({ timeline: { scenario } }, entry) => [asHeard(entry, permitLimits(scenario))],
  },
  {
    id: 'earthed-conductors',
    says: 'how many conductors carry an earth clamp',
    right: (_view, entry) => [countEarthed(entry)],
  },
  {
    id: 'clear-statement',
    says: 'crew clear, earths off, gear in',
    right: () => ['crew-clear earths-off gear-in'],
  },
  {
    id: 'crew-size',
    says: 'how many people are on the job',
    right: ({ timeline: { scenario } }: RunView) => [scenario.crew.length],
  },
]

export const truths: ReadonlyMap<string, Truth> = new Map(all.map((truth) => [truth.id, truth]))

/** Whoever repeats what came over a bad line has repeated it right: correcting it is the other side's. */
function asHeard({ before, order }: Entry, said: string): string {
  const heard = heardWords(before, said)
  return order.values['readBack'] === heard ? heard : said
}

function countEarthed({ before }: Entry): number {
  const wires = before.scenario.conductors.map(({ id }) => thingAt(id, workedPole(before)))
  return wires.filter((id) => before.clamps.some(({ on }) => on === id)).length
}
