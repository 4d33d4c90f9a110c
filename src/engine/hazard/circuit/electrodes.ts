/**
 * Everything in the soil of the site as one resistance matrix: rods by the depth they were driven to, the pole's butts,
 * the stay's anchor, fences, the truck's pads, earths of handles and of others, and the distant earth of the low-voltage neutral. The last is stated as a resistance: it enters the
 * soil solution as one rod of unknown make, so that its distance counts, and its own resistance is then set as stated.
 */
import type { Element } from '../../physics/network'
import { isAtSurface, middleOf, solveElectrodes } from '../../physics/soil'
import type { Electrode } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import { findSectionNeutral } from '../../site/findSectionNeutral'
import { invariant } from '../../units/invariant'
import type { Fitted } from './fitted'
import type { Ground, SiteElectrode } from './ground'
import { groundThingElectrodes } from './groundThings'
import { handleElectrodes } from './handles'
import { nearEarthRods } from './nearEarths'
import { conductorAtPole, electrodesId, lowVoltageStarNode, rodNode, stayLowerNode } from './nodes'
import { poleElectrodes } from './pole'
import { truckElectrodes } from './truck'

const distantRod = { length: 2, radius: 0.008 }

export function groundOf(scenario: Scenario, fitted: Fitted): Ground {
  const shapes = electrodeShapes(scenario, fitted)
  const system = solveElectrodes(scenario.soil, shapes)
  const electrodes = shapes.map(
    (shape): SiteElectrode => ({
      node: shape.id,
      at: middleOf(shape),
      radius: 'radius' in shape ? shape.radius : 0,
      shape,
      isAtSurface: isAtSurface(shape),
      isOnSite: shape.id !== lowVoltageStarNode,
    }),
  )
  const stated = scenario.lv.neutralEarth.resistance
  const resistance = system.resistance.map((row, i) =>
    row.map((ohm, j) => (i === j && electrodes[i]!.node === lowVoltageStarNode ? stated : ohm)),
  )
  return { system, electrodes, resistance }
}

export function electrodesElement(ground: Ground): Element {
  return {
    id: electrodesId,
    kind: 'electrodes',
    nodes: ground.electrodes.map((it) => it.node),
    resistance: ground.resistance,
  }
}

/** Which scenario values and fitted things the soil solution depends on, for a cache. */
export function groundKey(scenario: Scenario, fitted: Fitted): string {
  return JSON.stringify([scenario.soil, scenario.lv.neutralEarth.resistance, electrodeShapes(scenario, fitted)])
}

function anchorOf({ stay }: Scenario): readonly Electrode[] {
  if (stay === undefined) return []
  const { anchor: at, anchorDepth: top, anchorLength: length, anchorRadius: radius } = stay
  return [{ id: stayLowerNode, kind: 'rod', at, top, length, radius }]
}

/** The earth of a neutral wire at the worked pole: one node with the wire, whose lead runs down the pole to it. */
function poleEarthOf(scenario: Scenario): readonly Electrode[] {
  const wire = findSectionNeutral(scenario)
  return wire === undefined ? [] : [{ id: conductorAtPole(wire.id), kind: 'rod', top: 0, ...wire.poleEarth }]
}

function electrodeShapes(scenario: Scenario, fitted: Fitted): readonly Electrode[] {
  const { lv } = scenario
  const shapes: Electrode[] = [
    ...poleElectrodes(scenario),
    ...anchorOf(scenario),
    ...(lv.wires.length > 0
      ? [{ id: lowVoltageStarNode, kind: 'rod', at: lv.neutralEarth.at, top: 0, ...distantRod } as const]
      : []),
    ...nearEarthRods(scenario),
    ...poleEarthOf(scenario),
    ...groundThingElectrodes(scenario),
    ...handleElectrodes(scenario),
    ...truckElectrodes(scenario, fitted),
    ...fitted.rods.map(
      (rod): Electrode => ({
        id: rodNode(rod.item),
        kind: 'rod',
        at: rod.at,
        top: 0,
        length: rod.depth,
        radius: rod.radius,
      }),
    ),
  ]
  invariant(lv.neutralEarth.resistance > 0, 'an earth of the low-voltage neutral', lv.neutralEarth.resistance)
  return shapes
}
