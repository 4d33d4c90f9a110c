/** Sets of things that a rule may ask for one by one (`forEach`); `$each` in its parameters stands for the member. */
import { feedersOf, traitsOf } from '../../site/liveningTraits'
import { phasesOf } from '../../site/phasesOf'
import type { Scenario } from '../../site/scenario'

export interface NamedSet {
  readonly says: string
  readonly members: (scenario: Scenario) => readonly string[]
}

const sets: Readonly<Record<string, NamedSet>> = {
  conductors: { says: 'the conductors of the section', members: (scenario) => scenario.conductors.map(({ id }) => id) },
  'lv-wires': {
    says: 'the low-voltage wires on the pole',
    members: (scenario) => scenario.lv.wires.map(({ id }) => id),
  },
  'central-lv-wires': { says: 'the two low-voltage wires beside the pole', members: listCentralWires },
  crew: {
    says: 'every person of the crew who is there from the start',
    members: (scenario) => scenario.crew.filter(({ arrivesAt }) => arrivesAt === undefined).map(({ id }) => id),
  },
  switches: {
    says: 'every switch that bounds the section',
    members: (scenario) => scenario.switches.map(({ id }) => id),
  },
  'closed-switches': {
    says: 'the switches that are closed when the job starts',
    members: (scenario) => scenario.switches.filter(({ closed }) => closed).map(({ id }) => id),
  },
  'remote-switches': {
    says: 'the switches that can be operated from afar',
    members: (scenario) => scenario.switches.filter(({ remote }) => remote).map(({ id }) => id),
  },
  blades: {
    says: 'each blade of every switch',
    members: (scenario) => bladesOf(scenario, scenario.switches),
  },
  'switched-blades': {
    says: 'each blade of the switches that are closed when the job starts',
    members: (scenario) =>
      bladesOf(
        scenario,
        scenario.switches.filter(({ closed }) => closed),
      ),
  },
  feeders: {
    says: 'every feeder that feeds or crosses the section',
    members: (scenario) => scenario.feeders.map(({ id }) => id),
  },
  'section-feeders': { says: 'the feeders that a switch joins to the section', members: listSectionFeeders },
  'crossing-feeders': { says: 'the feeders that could fall onto the section', members: listCrossingFeeders },
  hazards: {
    says: 'the real hazards on the site',
    members: (scenario) => scenario.hazards.filter(({ real }) => real).map(({ id }) => id),
  },
}

export const namedSets: ReadonlyMap<string, NamedSet> = new Map(Object.entries(sets))

function listCentralWires(scenario: Scenario): readonly string[] {
  return [...scenario.lv.wires]
    .sort((a, b) => Math.abs(a.x) - Math.abs(b.x) || (a.id < b.id ? -1 : 1))
    .slice(0, 2)
    .map(({ id }) => id)
}

/** One for each conductor of the section. */
function bladesOf({ conductors }: Scenario, switches: Scenario['switches']): readonly string[] {
  return switches.flatMap(({ id }) => phasesOf(conductors).map((phase) => `${id}/${phase}`))
}

function listSectionFeeders({ feeders, switches }: Scenario): readonly string[] {
  return feeders.map(({ id }) => id).filter((id) => switches.some(({ feeder }) => feeder === id))
}

function listCrossingFeeders(scenario: Scenario): readonly string[] {
  const crossing = scenario.livenings.flatMap((livening) => {
    return traitsOf(livening).by === 'crossing' ? feedersOf(scenario, livening) : []
  })
  return scenario.feeders.map(({ id }) => id).filter((id) => crossing.includes(id))
}

/** The same parameters with `$each` replaced by one member, at any depth. */
export function bindEach<T>(parameters: T, member: string): T {
  return bind(parameters, member) as T
}

function bind(value: unknown, member: string): unknown {
  if (typeof value === 'string') return value.replaceAll('$each', member)
  if (Array.isArray(value)) return value.map((part) => bind(part, member))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, bind(part, member)]))
}
