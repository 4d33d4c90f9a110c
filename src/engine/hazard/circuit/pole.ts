/**
 * The worked pole, by what it is made of. Concrete: its reinforcement is one node, the butt is that node's electrode; the
 * arm's bolt is the only metal way into it from the top, and a cast-in earth conductor where it has one. Steel: one node.
 * Wood: a ladder by length (poleWood.ts). A body, a step bolt or a piece of metalwork comes in through a resistance of
 * its own. A second leg is made like the first; the arm ties both. So is the next
 * pole of the line, where there is one, by itself.
 */
import { PI } from '../../math/portable'
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { ConcretePole, Leg, Pole } from '../../site/pole'
import { poleFoot } from '../../site/nextPole'
import type { Scenario } from '../../site/scenario'
import { armNode, cageNode, nextArmNode, terminalNode } from './nodes'
import { resistor } from './parts'
import { buttNode, rungAt, spreadingInWood, woodLadder } from './poleWood'

export function pole(scenario: Scenario): readonly Element[] {
  const { pole: made } = scenario
  const { secondLeg } = made
  return [
    resistor('pole/arm-bolt', armNode, poleNode(scenario, made.armHeight), made.armFixing),
    ...legOf(scenario, 1),
    ...(secondLeg === undefined
      ? []
      : [
          resistor('pole-2/arm-bolt', armNode, poleNode(scenario, made.armHeight, 2), secondLeg.armFixing),
          ...legOf(scenario, 2),
        ]),
    ...(scenario.nextPole === undefined
      ? []
      : [
          resistor('pole-3/arm-bolt', nextArmNode, poleNode(scenario, made.armHeight, 3), made.armFixing),
          ...legOf(scenario, 3),
        ]),
  ]
}

function legOf(scenario: Scenario, leg: Leg): readonly Element[] {
  const { pole: made } = scenario
  if (made.kind === 'wood') return woodLadder(scenario, made, leg)
  if (made.kind !== 'concrete' || made.integralEarth === undefined || leg !== 1) return []
  return [resistor('pole/terminal', terminalNode, cageNode, made.integralEarth.terminal)]
}

/** What one meets inside the pole at that height above ground. */
export function poleNode(scenario: Scenario, height: number, leg: Leg = 1): string {
  const { pole: made } = scenario
  if (made.kind === 'wood') return rungAt(scenario, made, height, leg)
  return legName(made.kind === 'concrete' ? cageNode : 'steel', leg)
}

/** The node that is in the soil by its butt. */
export function poleFootNode({ pole: made }: Scenario, leg: Leg = 1): string {
  return legName(made.kind === 'concrete' ? cageNode : made.kind === 'steel' ? 'steel' : buttNode, leg)
}

function legName(node: string, leg: Leg): string {
  return leg === 1 ? node : `${node}-${leg}`
}

export function poleElectrodes(scenario: Scenario): readonly Electrode[] {
  const { secondLeg } = scenario.pole
  return [
    buttOf(scenario.pole, poleFootNode(scenario), { x: 0, y: 0 }),
    ...(secondLeg ? [buttOf(scenario.pole, poleFootNode(scenario, 2), secondLeg.at)] : []),
    ...(scenario.nextPole ? [buttOf(scenario.pole, poleFootNode(scenario, 3), poleFoot(scenario, 'next'))] : []),
  ]
}

function buttOf(made: Pole, id: string, at: { readonly x: number; readonly y: number }): Electrode {
  const shape = { id, at, top: 0, length: made.buttLength, radius: made.diameter / 2 }
  if (made.kind !== 'concrete') return { kind: 'rod', ...shape }
  return { kind: 'encased', ...shape, coreRadius: made.cageRadius, encasementResistivity: made.concreteResistivity }
}

/** From a patch of `area` m² on the pole's surface to what carries current in it, ohm. */
export function spreadingResistance(made: Pole, area: number): number {
  switch (made.kind) {
    case 'concrete':
      return spreadingInConcrete(made, area)
    case 'wood':
      return spreadingInWood(made, area)
    case 'steel':
      return 0
  }
}

/**
 * From a patch on the concrete to the reinforcement: the smaller of the slab between patch and cage, ρt/A, and an
 * equipotential disc on a half-space, ρ/4b. Both are upper bounds of the current's real way.
 */
function spreadingInConcrete({ concreteResistivity, concreteCover }: ConcretePole, area: number): number {
  return Math.min((concreteResistivity * concreteCover) / area, disc(concreteResistivity, area))
}

function disc(resistivity: number, area: number): number {
  return resistivity / (4 * Math.sqrt(area / PI))
}
