/**
 * Feet on the ground: standing 0.3 m apart, a pace 1.0 m, foot and knee 0.5 m, set along the steepest line through where
 * the person is. Each is a disc with its own spreading and raised by the other, a knee like a foot; closer to an
 * electrode than both radii a foot stands on it.
 */
import { magnitude, subtract, type Complex } from '../../math/complex'
import { discMutual, discSelf, distanceToElectrode, type GroundPoint } from '../../physics/soil'
import { distance } from '../../site/place'
import type { Stance } from '../../site/contact'
import type { Scenario } from '../../site/scenario'
import type { Ground } from '../circuit/ground'
import type { Terminal } from '../circuit/phaseView'
import { steepestDirection } from '../steepest'

export const stanceWidth = { standing: 0.3, pace: 1, kneeling: 0.5 } as const satisfies Record<Stance, number>

/**
 * Left foot first, then the right one or the knee: of a kneeling person's two the knee, which wears nothing, is where
 * the ground is lower, because a hand beside it is on what raises the ground. Centred on the place; where that straddles an electrode, so that both feet stand equally high beside
 * it, one foot stays at the place and the other goes away from it, if there is more between the two then.
 */
export function feetAt(
  ground: Ground,
  currents: readonly Complex[],
  at: GroundPoint,
  stance: Stance,
): readonly [GroundPoint, GroundPoint] {
  const along = steepestDirection(ground.system.slopeAt(at, currents))
  const width = stanceWidth[stance]
  const centred = [stepFrom(at, along, width / 2), stepFrom(at, along, -width / 2)] as const
  const under = nearestElectrode(ground, at)
  const potential = (point: GroundPoint): number => magnitude(ground.system.potentialAt(point, currents))
  const inOrder = ([a, b]: readonly [GroundPoint, GroundPoint]): readonly [GroundPoint, GroundPoint] => {
    return stance === 'kneeling' && potential(a) < potential(b) ? [b, a] : [a, b]
  }
  if (under === undefined || distance(under.at, at) > width / 2 + under.radius) return inOrder(centred)
  const apart = distance(under.at, at)
  // on the electrode itself every way leads outward
  const outward = apart === 0 ? along : { x: (at.x - under.at.x) / apart, y: (at.y - under.at.y) / apart }
  const away = [at, stepFrom(at, outward, width)] as const
  const between = ([a, b]: readonly [GroundPoint, GroundPoint]): number => {
    return magnitude(subtract(ground.system.potentialAt(a, currents), ground.system.potentialAt(b, currents)))
  }
  return inOrder(between(away) > between(centred) ? away : centred)
}

function stepFrom(at: GroundPoint, along: GroundPoint, by: number): GroundPoint {
  return { x: at.x + by * along.x, y: at.y + by * along.y }
}

function nearestElectrode(ground: Ground, at: GroundPoint): Ground['electrodes'][number] | undefined {
  return ground.electrodes
    .filter((it) => it.isAtSurface)
    .reduce<Ground['electrodes'][number] | undefined>((best, it) => {
      return best === undefined || distance(it.at, at) < distance(best.at, at) ? it : best
    }, undefined)
}

/** A foot as a terminal of the circuit: the ground beside the electrodes, or the electrode that it stands on. */
export function footTerminal(ground: Ground, footRadius: number, at: GroundPoint): Terminal {
  const under = ground.electrodes.find((it) => it.isAtSurface && distanceToElectrode(it.shape, at) < footRadius)
  return under ? { kind: 'node', node: under.node } : { kind: 'ground', mutual: ground.system.mutualTo(at) }
}

export interface FootSpreading {
  readonly self: number
  /** Ohm between two feet at that distance. */
  pair(distance: number): number
}

const spreadingByScenario = new WeakMap<Scenario['soil'], Map<string, number>>()

/** Spreading of feet in the scenario's soil; remembered, because each value is a sum over images. */
export function footSpreading(scenario: Scenario): FootSpreading {
  const { soil } = scenario
  const radius = scenario.contact.footRadius
  let known = spreadingByScenario.get(soil)
  if (known === undefined) spreadingByScenario.set(soil, (known = new Map()))
  const remembered = (name: string, make: () => number): number => {
    const value = known.get(name) ?? make()
    known.set(name, value)
    return value
  }
  const origin = { x: 0, y: 0 }
  return {
    self: remembered(`self ${radius}`, () => discSelf(soil, radius)),
    pair: (apart) => {
      // two people's feet stand beside each other, never in one another
      const between = Math.max(apart, 2 * radius)
      return remembered(`${radius} ${between}`, () => discMutual(soil, origin, { x: between, y: 0 }, radius))
    },
  }
}
