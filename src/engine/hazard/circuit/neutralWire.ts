/**
 * A neutral wire of its own, earthed at the station, at each pole of its feeder and of the section, and at the worked
 * pole, where its earth is an electrode of the site's soil (electrodes.ts). The other earths are far enough from each
 * other and from the site to be resistances. The wire is never switched: it stays when its feeder is dead.
 */
import type { CoupledBranch, Element } from '../../physics/network'
import { REMOTE_EARTH } from '../../physics/network'
import type { Feeder, NeutralWire, Scenario } from '../../site/scenario'
import { ladderImpedance, spansBetween } from './ladder'
import { stationEarth, stationNode } from './neutralEarthing'
import { conductorNode } from './nodes'
import { seriesOf } from './overhead'
import { resistor } from './parts'

/** Earths nearer than this to another place are at that place, metres. */
const samePlace = 0.01

/** Where the feeder's own stretch of the wire ends: at its switch on the section, or by itself at the crossing. */
export function neutralEnd(scenario: Scenario, feeder: Feeder, wire: NeutralWire): string {
  const at = scenario.switches.find((it) => it.feeder === feeder.id)
  return conductorNode(wire.id, at === undefined ? feeder.id : at.id)
}

/** Multiples of the distance between earths along a feeder: metres from the station, its end left to the section. */
function feederEarths({ length }: Feeder, { earthEvery }: NeutralWire): readonly number[] {
  return Array.from({ length: Math.ceil((length - samePlace) / earthEvery) - 1 }, (_, k) => (k + 1) * earthEvery)
}

export interface NeutralStretch {
  readonly branches: readonly CoupledBranch[]
  readonly spans: readonly number[]
  readonly earths: readonly Element[]
}

export function feederNeutral(scenario: Scenario, feeder: Feeder, wire: NeutralWire): NeutralStretch {
  const earths = feederEarths(feeder, wire)
  const nodes = earths.map((_, k) => conductorNode(wire.id, `${feeder.id}-${k + 1}`))
  return {
    branches: branchesAlong(`${wire.id}/${feeder.id}`, [
      stationNode(feeder),
      ...nodes,
      neutralEnd(scenario, feeder, wire),
    ]),
    spans: spansBetween(0, feeder.length, earths),
    earths: nodes.map((node, k) =>
      resistor(`${wire.id}/earth-${feeder.id}-${k + 1}`, node, REMOTE_EARTH, wire.earthResistance),
    ),
  }
}

/** Of a feeder that is not alive, with its station's earth: what hangs on the section through its neutral. */
export function idleNeutral(scenario: Scenario, feeder: Feeder): readonly Element[] {
  const { neutralWire: wire } = feeder
  if (wire === undefined || !scenario.switches.some((at) => at.feeder === feeder.id)) return []
  const { branches, spans, earths } = feederNeutral(scenario, feeder, wire)
  return [
    ...stationEarth(feeder),
    ...earths,
    {
      id: `${feeder.id}/neutral-wire`,
      kind: 'coupled',
      branches,
      impedance: ladderImpedance(seriesOf(scenario, [wire]), feeder.length, spans),
    },
  ]
}

/** One piece of the section, from one place to the next: metres along the line from the worked pole. */
export function pieceNeutral(
  wire: NeutralWire,
  from: { readonly name: string; readonly along: number },
  to: { readonly name: string; readonly along: number },
): NeutralStretch {
  const { id, earthEvery } = wire
  const first = Math.floor((from.along + samePlace) / earthEvery) + 1
  const last = Math.ceil((to.along - samePlace) / earthEvery) - 1
  const poles = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => first + k)
  const nodes = poles.map((pole) => conductorNode(id, `pole${pole}`))
  return {
    branches: branchesAlong(`${id}/${from.name}-${to.name}`, [
      conductorNode(id, from.name),
      ...nodes,
      conductorNode(id, to.name),
    ]),
    spans: spansBetween(
      from.along,
      to.along,
      poles.map((pole) => pole * earthEvery),
    ),
    earths: nodes.map((node, k) => resistor(`${id}/earth-pole${poles[k]!}`, node, REMOTE_EARTH, wire.earthResistance)),
  }
}

/** The earth of a pole that is itself a place of the section; the worked pole's is an electrode. */
export function placeEarth(
  wire: NeutralWire,
  at: { readonly name: string; readonly along: number },
): readonly Element[] {
  const off = Math.abs(at.along - Math.round(at.along / wire.earthEvery) * wire.earthEvery)
  if (off > samePlace || Math.abs(at.along) <= samePlace) return []
  return [resistor(`${wire.id}/earth-${at.name}`, conductorNode(wire.id, at.name), REMOTE_EARTH, wire.earthResistance)]
}

function branchesAlong(id: string, nodes: readonly string[]): readonly CoupledBranch[] {
  return nodes.slice(1).map((to, k) => ({ id: nodes.length === 2 ? id : `${id}-${k + 1}`, from: nodes[k]!, to }))
}
