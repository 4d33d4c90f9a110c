/**
 * The isolated section: its conductors in pieces between the switches, the worked pole and the crossing, each piece with
 * earth return and half its capacitance at either end. Without that capacitance a phase that no lead reaches would have
 * no voltage at all.
 */
import { scale, type Complex } from '../../math/complex'
import type { Element } from '../../physics/network'
import type { Scenario } from '../../site/scenario'
import { conductorNode } from './nodes'
import { capacitanceAdmittance, seriesOf } from './overhead'

interface SectionPlace {
  readonly name: string
  /** Metres along the line from the worked pole, positive towards the crossing. */
  readonly along: number
}

/** From one end to the other. */
function sectionPlaces(scenario: Scenario): readonly SectionPlace[] {
  const places = [
    ...scenario.switches.map((it) => ({ name: it.id, along: it.along })),
    { name: 'pole', along: 0 },
    { name: 'crossing', along: scenario.section.crossingAlong },
  ]
  return places.sort((a, b) => a.along - b.along || (a.name < b.name ? -1 : 1))
}

export function section(scenario: Scenario): readonly Element[] {
  const { conductors } = scenario
  const places = sectionPlaces(scenario)
  const perMetre = seriesOf(scenario, conductors)
  const shuntPerMetre = capacitanceAdmittance(scenario.frequency, conductors)
  const pieces = places.slice(1).map((to, i) => ({ from: places[i]!, to, length: to.along - places[i]!.along }))
  return [
    ...pieces.map(
      ({ from, to, length }): Element => ({
        id: `section/${from.name}-${to.name}`,
        kind: 'coupled',
        branches: conductors.map((it) => ({
          id: `${it.id}/${from.name}-${to.name}`,
          from: conductorNode(it.id, from.name),
          to: conductorNode(it.id, to.name),
        })),
        impedance: timesLength(perMetre, length),
      }),
    ),
    ...places.map((place, i): Element => {
      const length = (pieces[i - 1]?.length ?? 0) + (pieces[i]?.length ?? 0)
      return {
        id: `section/shunt-${place.name}`,
        kind: 'shunt',
        nodes: conductors.map((it) => conductorNode(it.id, place.name)),
        admittance: timesLength(shuntPerMetre, length / 2),
      }
    }),
  ]
}

/** Places that fall together are one centimetre apart, so that no branch is without impedance. */
function timesLength(perMetre: readonly (readonly Complex[])[], length: number): readonly (readonly Complex[])[] {
  return perMetre.map((row) => row.map((value) => scale(value, Math.max(length, 0.01))))
}
