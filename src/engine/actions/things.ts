/** Lists of things that actions can be done on, each in order of id. */
import { requireGearType } from '../gear/catalogue'
import { farEnd } from '../site/gaps'
import { phasesOf } from '../site/phasesOf'
import type { ItemId, ThingId } from '../site/scenario'
import { onNextPole } from '../site/nextPole'
import { findSectionNeutral } from '../site/findSectionNeutral'
import { mainsOf } from '../site/mains'
import type { Site } from '../site/site'

const sorted = (ids: readonly string[]): readonly string[] => [...ids].sort()

export const conductors = (site: Site): readonly ThingId[] => sorted(site.scenario.conductors.map((it) => it.id))
export const lvWires = (site: Site): readonly ThingId[] => sorted(site.scenario.lv.wires.map((it) => it.id))
export const switches = (site: Site): readonly ThingId[] => sorted(site.scenario.switches.map((it) => it.id))
export const feeders = (site: Site): readonly ThingId[] => sorted(site.scenario.feeders.map((it) => it.id))
/** Circuits that nothing joins to the section: they cross it or run beside it. */
export const crossingFeeders = (site: Site): readonly ThingId[] => {
  const joined = site.scenario.switches.map((it) => it.feeder)
  return feeders(site).filter((id) => !joined.includes(id))
}
export const hazards = (site: Site): readonly ThingId[] => sorted(site.scenario.hazards.map((it) => it.id))
export const items = (site: Site): readonly ItemId[] => Object.keys(site.items)

/** Conductors, and the neutral wire of the line, that a jumper carries past the pole. */
export const jumpers = (site: Site): readonly ThingId[] => sorted(site.scenario.jumpers ?? [])

/** Other poles of the section whose jumpers can be taken out. */
export const sectionJumpers = (site: Site): readonly ThingId[] =>
  sorted((site.scenario.sectionJumpers ?? []).map((it) => it.id))

/** Where a conductor can be got at: at the pole, at the far end of a jumper, at the next pole. */
export const conductorEnds = (site: Site): readonly ThingId[] =>
  sorted([...conductors(site), ...farEnds(site), ...nextConductors(site)])

/** The next pole by its one name, where the place has one. */
export const nextPoles = (site: Site): readonly ThingId[] => (site.scenario.nextPole ? ['next-pole'] : [])

/** What is untied, changed and tied in again, at the pole and at the next one. */
export const workedConductors = (site: Site): readonly ThingId[] =>
  sorted([...conductors(site), ...(site.scenario.nextPole ? conductors(site).map(onNextPole) : [])])

const nextConductors = (site: Site): readonly ThingId[] => {
  if (site.scenario.nextPole === undefined) return []
  return [...conductors(site), ...lineNeutrals(site)].map(onNextPole)
}

const farEnds = (site: Site): readonly ThingId[] => jumpers(site).map(farEnd)

/** Earth rods, in the ground or not: `rod/` and the id of the item. */
export const rods = (site: Site): readonly ThingId[] =>
  Object.values(site.items)
    .filter((item) => item.type === 'earth-rod')
    .map((item) => `rod/${item.id}`)

/** What the earth end of a lead can go on: a rod, the terminal of an earth cast into the pole, the neutral's own earth. */
export const earths = (site: Site): readonly ThingId[] => {
  const { pole } = site.scenario
  const terminal = pole.kind === 'concrete' ? pole.integralEarth : undefined
  return [
    ...(terminal !== undefined && terminal.height <= fromGround ? ['terminal'] : []),
    ...(findSectionNeutral(site.scenario) ? ['pole-earth'] : []),
    ...rods(site),
  ]
}

/** So high one works standing on the ground, metres. */
const fromGround = 2.2

export const rodItem = (thing: ThingId): ItemId => thing.slice('rod/'.length)

export const blades = (site: Site): readonly ThingId[] =>
  switches(site).flatMap((id) => phasesOf(site.scenario.conductors).map((phase) => `${id}/${phase}`))

/** The neutral of the low-voltage circuit, or the wire nearest to one: metal that a clamp can bite on. */
const lvNeutrals = (site: Site): readonly ThingId[] =>
  sorted(site.scenario.lv.wires.filter((it) => it.phase === 'N').map((it) => it.id))

/** The neutral wire of the line itself, where it has one. */
const lineNeutrals = (site: Site): readonly ThingId[] => {
  const wire = findSectionNeutral(site.scenario)
  return wire === undefined ? [] : [wire.id]
}

/** Bands, brackets and other metal on the pole, and the terminal of an earth conductor that is cast into it. */
const metalwork = ({ scenario: { metalwork: pieces = [], pole } }: Site): readonly ThingId[] => {
  const hasTerminal = pole.kind === 'concrete' && pole.integralEarth !== undefined
  return [...pieces.map((it) => it.id), ...(hasTerminal ? ['terminal'] : [])]
}

/** Where a conductor clamp of a lead can go on. */
export const clampSeats = (site: Site): readonly ThingId[] => sorted([...conductorEnds(site), ...metalSeats(site)])

/** Where the metal end of a bond can go on. */
export const metalSeats = (site: Site): readonly ThingId[] =>
  sorted([
    ...(site.scenario.nextPole ? ['arm', onNextPole('arm')] : ['arm']),
    ...metalwork(site),
    ...lvNeutrals(site),
    ...lineNeutrals(site),
  ])

/** Everything that can be pointed at. */
export function allThings(site: Site): readonly ThingId[] {
  return sorted([
    ...['pole', 'pole-top', 'arm', 'cover', 'barrier', 'ground', 'crossing', ...nextPoles(site)],
    ...(site.scenario.stay ? ['stay'] : []),
    ...conductorEnds(site),
    ...lvWires(site),
    ...lineNeutrals(site),
    ...metalwork(site),
    ...switches(site),
    ...blades(site),
    ...sectionJumpers(site),
    ...feeders(site),
    ...mainsOf(site.scenario).flatMap(({ id }) => (lvWires(site).includes(id) ? [] : [id])),
    ...hazards(site),
    ...rods(site),
    ...(findSectionNeutral(site.scenario) ? ['pole-earth'] : []),
    ...(site.scenario.truck?.boom ? ['bucket'] : []),
    ...items(site),
  ])
}

export const itemTypes = (isWanted: (id: string) => boolean): ((site: Site) => readonly ItemId[]) => {
  return (site) =>
    Object.values(site.items)
      .filter((item) => isWanted(item.type))
      .map((item) => item.id)
}

export const wearables = itemTypes((type) => requireGearType(type).worn !== undefined)
export const testables = itemTypes((type) => requireGearType(type).test !== undefined)
