/** The site before anybody acts, as the scenario says it truly is. */
import { phasesOf } from './phasesOf'
import type { GroundPoint } from './place'
import type { Item, MainSwitch, Person, Site, SwitchState } from './site'
import { startTruckState } from './truckState'
import type { Phase, Scenario, ScenarioPerson, ScenarioSwitch, ThingId } from './scenario'

export function startSite(scenario: Scenario): Site {
  return {
    scenario,
    time: 0,
    persons: byId(scenario.crew.map(startPerson)),
    items: byId(scenario.items.map((item) => startItem(item, scenario))),
    truck: startTruck(scenario),
    ...startTruckState(scenario),
    clamps: [],
    rods: [],
    cover: null,
    guards: [],
    barrier: null,
    hauled: [],
    switches: keyed(scenario.switches.map((it) => [it.id, startSwitch(it, phasesOf(scenario.conductors))] as const)),
    carriers: keyed((scenario.transformers ?? []).map((it) => [it.id, 'in'] as const)),
    mains: keyed(startMains(scenario)),
    brushed: [],
    insulator: 'cracked',
    feedersOut: [],
    paper: {
      step: null,
      recloseBlocked: Object.fromEntries(scenario.feeders.map((feeder) => [feeder.id, false])),
      permit: 'none',
      safeToWork: false,
      earthsReported: false,
      workDone: false,
      stopped: false,
      closed: false,
    },
    written: {},
    evidence: [],
    livening: null,
    marks: {},
  }
}

/** Whoever has a source of his own has it switched off and unlocked; the street lamps' switch waits for the dark. */
function startMains(scenario: Scenario): readonly (readonly [ThingId, MainSwitch])[] {
  const main = (id: ThingId, isClosed: boolean) =>
    [id, { position: isClosed ? 'closed' : 'open', lock: null, lockedBy: null }] as const
  return [
    ...(scenario.transformers ?? []).map((it) => main(it.id, it.lowVoltageClosed)),
    ...(scenario.embedded ?? []).map((it) => main(it.id, false)),
    // From outside nobody sees which of them has a source.
    ...(scenario.premises ?? []).map((it) => main(it.id, true)),
    ...scenario.lv.wires.filter((it) => it.isolator !== undefined).map((it) => main(it.id, true)),
    ...scenario.lv.wires.filter((it) => it.lamps !== undefined).map((it) => main(it.id, false)),
  ]
}

/** The truck stands where the ground worker starts, or else whoever starts on the ground. */
function startTruck(scenario: Scenario): GroundPoint {
  const starts = [...scenario.crew]
    .sort((a, b) => Number(b.role === 'ground-worker') - Number(a.role === 'ground-worker'))
    .flatMap((it) => ('switch' in it.startsAt ? [] : [it.startsAt]))
  return starts[0] ?? { x: 0, y: 0 }
}

/** In order of id, so that nothing depends on the order of a file. */
function keyed<T>(pairs: readonly (readonly [string, T])[]): Readonly<Record<string, T>> {
  return Object.fromEntries([...pairs].sort(([a], [b]) => (a < b ? -1 : 1)))
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Readonly<Record<string, T>> {
  return keyed(things.map((thing) => [thing.id, thing] as const))
}

function startPerson(person: ScenarioPerson): Person {
  return {
    id: person.id,
    place:
      'switch' in person.startsAt
        ? { kind: 'switch', id: person.startsAt.switch }
        : { kind: 'ground', at: person.startsAt },
    holds: [],
    wears: [],
    strapped: false,
    onMat: false,
    signedOn: false,
    briefed: false,
    mustered: false,
  }
}

/** What is to be changed stands in the line; all else is on the truck. */
function startItem(item: Scenario['items'][number], { work, nextPole }: Scenario): Item {
  return {
    id: item.id,
    type: item.type,
    label: item.label,
    defects: item.defects,
    faulted: false,
    failed: false,
    where: { kind: item.id === work.old || item.id === nextPole?.work?.old ? 'fitted' : 'truck' },
    bookedOut: false,
    bookedIn: false,
    verdict: null,
  }
}

/** A blade where the section has no conductor is not there: it counts as open. */
function startSwitch(it: ScenarioSwitch, present: readonly Phase[]): SwitchState {
  const blade = (phase: Phase): 'open' | 'closed' => {
    return present.includes(phase) && (it.closed || it.hungBlades.includes(phase)) ? 'closed' : 'open'
  }
  return {
    handle: it.closed ? 'closed' : 'open',
    blades: { A: blade('A'), B: blade('B'), C: blade('C') },
    control: it.remote ? 'remote' : 'local',
    lock: null,
    tag: null,
    lockedBy: null,
    earth: null,
  }
}
