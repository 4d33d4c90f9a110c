/**
 * A corner is one joint setting of everything that the scenario states as a range. `declared` leaves every value as
 * written; the others are the full factorial of low and high. Factors on the declared value.
 */
import { invariant } from '../units/invariant'
import type { Range, Scenario } from '../site/scenario'

export interface Corner {
  /** `declared`, or each range with its end: `concrete-low fixing-high soil-low`. */
  readonly id: string
  readonly soil: number
  readonly fixing: number
  readonly concrete: number
}

export const declaredCorner: Corner = { id: 'declared', soil: 1, fixing: 1, concrete: 1 }

/** Declared first, then 2ⁿ corners of n ranges, low before high. @throws on a range that is not 0 < low ≤ high. */
export function cornersOf(scenario: Pick<Scenario, 'ranges'>): readonly Corner[] {
  const ranges = [...scenario.ranges].sort((a, b) => (a.of < b.of ? -1 : 1))
  let corners: readonly Corner[] = [{ ...declaredCorner, id: '' }]
  for (const range of ranges) {
    invariant(range.low > 0 && range.high >= range.low, 'a range of factors above 0', range.of, range.low, range.high)
    corners = corners.flatMap((corner) => [atEnd(corner, range, 'low'), atEnd(corner, range, 'high')])
  }
  return ranges.length === 0 ? [declaredCorner] : [declaredCorner, ...corners]
}

function atEnd(corner: Corner, range: Range, end: 'low' | 'high'): Corner {
  const id = `${corner.id} ${range.of}-${end}`.trim()
  return { ...corner, id, [range.of]: corner[range.of] * range[end] }
}

/** The scenario as it would be in that corner. Its soil factor multiplies every layer, line and electrodes alike. */
export function inCorner(scenario: Scenario, corner: Corner): Scenario {
  if (corner.soil === 1 && corner.fixing === 1 && corner.concrete === 1) return scenario
  const { pole, soil, stay } = scenario
  return {
    ...scenario,
    soil: { layers: soil.layers.map((layer) => ({ ...layer, resistivity: layer.resistivity * corner.soil })) },
    stay: { ...stay, fixing: stay.fixing * corner.fixing },
    pole: {
      ...pole,
      armFixing: pole.armFixing * corner.fixing,
      stepBoltFixing: pole.stepBoltFixing * corner.fixing,
      concreteResistivity: pole.concreteResistivity * corner.concrete,
    },
  }
}
