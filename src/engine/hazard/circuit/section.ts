/**
 * The isolated section: its conductors in pieces between the switches, the worked pole, the crossing and the ends of
 * what runs beside it; each piece with earth return and half its capacitance at either end. Without that capacitance a
 * phase that no lead reaches would have no voltage at all. Its neutral wire and the conductors of a parallel circuit are
 * wires of the same pieces, coupled with it and with each other.
 */
import { scale, type Complex } from '../../math/complex'
import type { CoupledBranch, Element } from '../../physics/network'
import type { Conductor, NeutralWire, Scenario } from '../../site/scenario'
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { ladderImpedance } from './ladder'
import { pieceNeutral, placeEarth } from './neutralWire'
import { conductorNode } from './nodes'
import { capacitanceAdmittance, seriesOf, type Wire } from './overhead'
import { parallelPlaces } from './parallel'

interface SectionPlace {
  readonly name: string
  /** Metres along the line from the worked pole, positive towards the crossing. */
  readonly along: number
}

/** From one place to the next. */
interface Piece {
  readonly from: SectionPlace
  readonly to: SectionPlace
  readonly length: number
  /** The section's own first, then those of the circuits beside it. */
  readonly conductors: readonly Conductor[]
}

/** Places that fall together are one centimetre apart, so that no branch is without impedance. */
const leastLength = 0.01

/** From one end to the other. */
function sectionPlaces(scenario: Scenario): readonly SectionPlace[] {
  const places = [
    ...scenario.switches.map((it) => ({ name: it.id, along: it.along })),
    { name: 'pole', along: 0 },
    ...(scenario.nextPole ? [{ name: 'next', along: scenario.nextPole.along }] : []),
    { name: 'crossing', along: scenario.section.crossingAlong },
    ...(scenario.sectionJumpers ?? []).map((it) => ({ name: it.id, along: it.along })),
    ...(scenario.parallels ?? []).flatMap(parallelPlaces),
    ...(scenario.transformers ?? []).map((it) => ({ name: it.id, along: it.along })),
  ]
  return places.sort((a, b) => a.along - b.along || (a.name < b.name ? -1 : 1))
}

function piecesOf(scenario: Scenario, places: readonly SectionPlace[]): readonly Piece[] {
  return places.slice(1).map((to, i) => {
    const from = places[i]!
    const beside = (scenario.parallels ?? []).filter((it) => {
      const [start, end] = parallelPlaces(it).map(({ name }) => places.findIndex((place) => place.name === name))
      return start! <= i && i < end!
    })
    const conductors = [...scenario.conductors, ...beside.flatMap((it) => it.conductors)]
    return { from, to, length: to.along - from.along, conductors }
  })
}

export function section(scenario: Scenario): readonly Element[] {
  const places = sectionPlaces(scenario)
  const pieces = piecesOf(scenario, places)
  const neutral = findSectionNeutral(scenario)
  return [
    ...pieces.flatMap((piece) => pieceElements(scenario, piece, neutral)),
    ...places.flatMap((place, i) => shuntsAt(scenario, place, pieces[i - 1], pieces[i], neutral)),
    ...(neutral === undefined ? [] : polesOf(places).flatMap((place) => placeEarth(neutral, place))),
  ]
}

/** Places that fall together stand at one pole, which has one earth. */
function polesOf(places: readonly SectionPlace[]): readonly SectionPlace[] {
  return places.filter((it, i) => i === 0 || it.along - places[i - 1]!.along > leastLength)
}

function pieceElements(scenario: Scenario, piece: Piece, wire: NeutralWire | undefined): readonly Element[] {
  const { from, to, conductors } = piece
  const length = Math.max(piece.length, leastLength)
  const neutral = wire === undefined ? undefined : pieceNeutral(wire, from, to)
  const spans = neutral?.spans.map((span) => Math.max(span, leastLength)) ?? []
  return [
    ...(neutral?.earths ?? []),
    {
      id: `section/${from.name}-${to.name}`,
      kind: 'coupled',
      branches: [
        ...conductors.map(
          (it): CoupledBranch => ({
            id: `${it.id}/${from.name}-${to.name}`,
            from: conductorNode(it.id, from.name),
            to: conductorNode(it.id, to.name),
          }),
        ),
        ...(neutral?.branches ?? []),
      ],
      impedance: ladderImpedance(seriesOf(scenario, withNeutral(conductors, wire)), length, spans),
    },
  ]
}

function withNeutral(conductors: readonly Conductor[], wire: NeutralWire | undefined): readonly Wire[] {
  return wire === undefined ? conductors : [...conductors, wire]
}

/** Half of the capacitance of either piece; one element where the same wires run on through the place. */
function shuntsAt(
  scenario: Scenario,
  place: SectionPlace,
  before: Piece | undefined,
  after: Piece | undefined,
  wire: NeutralWire | undefined,
): readonly Element[] {
  const halves = [before, after].filter((it) => it !== undefined)
  const sets = new Map<string, readonly Piece[]>()
  for (const half of halves) {
    const name = half.conductors.map((it) => it.id).join(' ')
    sets.set(name, [...(sets.get(name) ?? []), half])
  }
  return [...sets.values()].map((same, k): Element => {
    const { conductors } = same[0]!
    const length = same.reduce((sum, it) => sum + it.length, 0)
    return {
      id: k === 0 ? `section/shunt-${place.name}` : `section/shunt-${place.name}-beside`,
      kind: 'shunt',
      nodes: [...conductors, ...(wire === undefined ? [] : [wire])].map((it) => conductorNode(it.id, place.name)),
      admittance: timesLength(capacitanceAdmittance(scenario.frequency, withNeutral(conductors, wire)), length / 2),
    }
  })
}

function timesLength(perMetre: readonly (readonly Complex[])[], length: number): readonly (readonly Complex[])[] {
  return perMetre.map((row) => row.map((value) => scale(value, Math.max(length, leastLength))))
}
