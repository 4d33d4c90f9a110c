/** Site to belief: copies what was perceived, leaves what is hidden. */
import type { Belief, ConductorBelief, ItemBelief, MainBelief, SwitchBelief, WireBelief } from './belief'
import { farEnd, isOpened } from './gaps'
import { onNextPole } from './nextPole'
import { jobSheet } from './jobSheet'
import { findMain, mainsOf } from './mains'
import { findInCharge, isHere, isHurt } from './presence'
import { crewMember } from './questions'
import type { Phase, ScenarioSwitch, ThingId } from './scenario'
import { weatherAt } from './weather'
import type { Evidence, Item, Site } from './site'

export function believe(site: Site): Belief {
  const { scenario } = site
  return {
    sheet: jobSheet(scenario),
    time: site.time,
    truck: site.truck,
    ...(site.truckState ? { truckState: site.truckState } : {}),
    weather: { rain: weatherAt(site).rain, wind: weatherAt(site).wind },
    inCharge: findInCharge(site) ?? null,
    persons: Object.values(site.persons).map((person) => {
      const { role, bootSize } = crewMember(site, person.id)
      return { ...person, role, bootSize, isHere: isHere(site, person.id), isHurt: isHurt(site, person.id) }
    }),
    items: Object.values(site.items).map((item) => itemBelief(site, item)),
    conductors: scenario.conductors.map(({ id, phase }) => conductorBelief(site, id, phase)),
    jumpers: (scenario.jumpers ?? []).map((conductor) => ({
      id: farEnd(conductor),
      conductor,
      isOpen: isOpened(site, conductor),
      lastTest: standingTest(site, farEnd(conductor)),
    })),
    nextConductors: (scenario.nextPole ? scenario.conductors : []).map(({ id }) => ({
      id: onNextPole(id),
      lastTest: standingTest(site, onNextPole(id)),
    })),
    wires: scenario.lv.wires.map(({ id }) => wireBelief(site, id)),
    switches: scenario.switches.map((it) => switchBelief(site, it)),
    mains: mainsBelief(site),
    // That a clamp was turned loose nobody knows before it is pulled.
    clamps: site.clamps.some((it) => it.loosened) ? site.clamps.map(({ loosened: _, ...it }) => it) : site.clamps,
    rods: site.rods,
    cover: site.cover,
    guards: site.guards,
    platforms: site.platforms ?? [],
    barrier: site.barrier,
    hauled: site.hauled,
    insulator: site.insulator,
    feedersOut: site.feedersOut,
    paper: site.paper,
    written: site.written,
    evidence: site.evidence,
    marks: site.marks,
    livening: site.livening && { at: site.livening.at, provedOff: site.livening.provedOff },
  }
}

function lastOf(site: Site, thing: ThingId, by: Evidence['by']): Evidence | null {
  return site.evidence.findLast((it) => it.of === thing && it.by === by) ?? null
}

function itemBelief(site: Site, item: Item): ItemBelief {
  const evidence = site.evidence.filter((it) => it.of === item.id)
  return {
    id: item.id,
    type: item.type,
    where: item.where,
    bookedOut: item.bookedOut,
    bookedIn: item.bookedIn,
    verdict: item.verdict,
    label: evidence.some((it) => it.by === 'label') ? item.label : null,
    evidence,
  }
}

/** What ends a test whatever was found: the section may be made alive from then on. */
const makesLiveAgain: readonly string[] = [
  'did.close-main',
  'did.close-switch',
  'did.put-carriers-in',
  'control.jumpers-on',
  'control.permit-back',
]
const unearths: readonly string[] = ['did.unclamp', 'did.unclamp-by-hand']

/**
 * The last test of a conductor that still counts. It ends when a clamp comes off that conductor, when a switch is closed
 * or a fuse carrier put in, when the permit is given back, and when something came alive: from then on the conductor counts
 * as live. Common practice, no source.
 */
function standingTest(site: Site, id: ThingId): Evidence | null {
  const last = site.evidence.findLastIndex((it) => it.of === id && it.by === 'test')
  const test = site.evidence[last]
  if (!test || (site.livening && site.livening.at > test.at)) return null
  const isOver = site.evidence
    .slice(last + 1)
    .some((it) => makesLiveAgain.includes(it.says) || (it.of === id && unearths.includes(it.says)))
  return isOver ? null : test
}

function conductorBelief(site: Site, id: ThingId, phase: Phase): ConductorBelief {
  const lastTest = standingTest(site, id)
  const isClamped = site.clamps.some((clamp) => clamp.on === id)
  return {
    id,
    phase,
    state: isClamped ? 'clamped' : lastTest ? 'tested' : 'treat-as-live',
    lastTest,
    isBrushed: site.brushed.includes(id),
  }
}

function wireBelief(site: Site, id: ThingId): WireBelief {
  return {
    id,
    lastTest: lastOf(site, id, 'test'),
    guard: site.guards.find((it) => it.on === id)?.item ?? null,
    main: findMain(site.scenario, id) ? mainBelief(site, id) : null,
  }
}

function switchBelief(site: Site, { id, label }: ScenarioSwitch): SwitchBelief {
  const state = site.switches[id]!
  const seen = (phase: Phase): Evidence | null => lastOf(site, `${id}/${phase}`, 'look')
  return {
    id,
    label: lastOf(site, id, 'label') ? label : null,
    handle: state.handle,
    control: state.control,
    lock: state.lock,
    tag: state.tag,
    lockedBy: state.lockedBy,
    blades: { A: seen('A'), B: seen('B'), C: seen('C') },
    earth: state.earth?.item ?? null,
  }
}

const saysOfMains: readonly string[] = [
  'did.close-main',
  'did.open-main',
  'did.put-carriers-in',
  'did.take-carriers-out',
  'see.main-closed',
  'see.main-open',
  'see.transformer',
]

/** A wire of the low voltage with a switch of its own is among the wires already. */
function mainsBelief(site: Site): readonly MainBelief[] {
  const wires = site.scenario.lv.wires.map((it) => it.id)
  return mainsOf(site.scenario)
    .filter(({ id }) => !wires.includes(id))
    .map(({ id }) => mainBelief(site, id))
}

function mainBelief(site: Site, id: ThingId): MainBelief {
  return {
    id,
    last: site.evidence.findLast((it) => it.of === id && tellsMain(it)) ?? null,
    lock: site.mains[id]?.lock ?? null,
    tag: site.mains[id]?.tag ?? null,
    bag: site.carrierBags?.[id]?.item ?? null,
  }
}

const tellsMain = ({ says }: Evidence): boolean => saysOfMains.includes(says)
