/**
 * A corner is one joint setting of everything that the scenario states as a range. `declared` leaves every value as
 * written; the others are the full factorial of low and high. Factors on the declared value.
 */
import { invariant } from '../units/invariant'
import type { ContactValues, Range, Scenario, SheetValues } from '../site/scenario'
import { woodPerMetre } from './circuit/poleWood'

export interface Corner {
  /** `declared`, or each range with its end: `concrete-low fixing-high soil-low`. */
  readonly id: string
  readonly soil: number
  readonly fixing: number
  readonly concrete: number
  /** On the area of every contact of a body. */
  readonly contact: number
  /** On what insulating layers and sticks leak through, and on the ohm of wood: below 1 is wetter. */
  readonly moisture: number
}

export const declaredCorner: Corner = { id: 'declared', soil: 1, fixing: 1, concrete: 1, contact: 1, moisture: 1 }

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
  if (factors.every((of) => corner[of] === 1)) return scenario
  const { metalwork, pole, soil, stay } = scenario
  return {
    ...scenario,
    soil: { layers: soil.layers.map((layer) => ({ ...layer, resistivity: layer.resistivity * corner.soil })) },
    ...(stay && { stay: { ...stay, fixing: stay.fixing * corner.fixing } }),
    pole: poleIn(pole, corner),
    ...(scenario.metalwork && {
      metalwork: scenario.metalwork.map((it) => ({ ...it, fixing: it.fixing * corner.fixing })),
    }),
    ...(metalwork && { metalwork: metalwork.map((it) => ({ ...it, fixing: it.fixing * corner.fixing })) }),
    contact: contactIn(scenario.contact, corner),
  }
}

const factors = ['soil', 'fixing', 'concrete', 'contact', 'moisture'] as const satisfies readonly Range['of'][]

function poleIn(pole: Scenario['pole'], { fixing, concrete, moisture }: Corner): Scenario['pole'] {
  const bolted = {
    ...pole,
    armFixing: pole.armFixing * fixing,
    stepBoltFixing: pole.stepBoltFixing * fixing,
    ...(pole.secondLeg && { secondLeg: { ...pole.secondLeg, armFixing: pole.secondLeg.armFixing * fixing } }),
  }
  switch (bolted.kind) {
    case 'concrete':
      return { ...bolted, concreteResistivity: bolted.concreteResistivity * concrete }
    case 'wood':
      return { ...bolted, resistance: woodPerMetre({ ...bolted, surface: 'dry' }) * moisture }
    case 'steel':
      return bolted
  }
}

function contactIn(contact: ContactValues, { contact: wide, moisture }: Corner): ContactValues {
  const { area } = contact
  const leaking = (sheet: SheetValues): SheetValues => ({
    ...sheet,
    leakage: sheet.leakage * moisture,
    ...(sheet.wetLeakage !== undefined && { wetLeakage: sheet.wetLeakage * moisture }),
  })
  return {
    ...contact,
    area: {
      thigh: area.thigh * wide,
      hand: area.hand * wide,
      sole: area.sole * wide,
      bootOnBolt: area.bootOnBolt * wide,
    },
    sole: leaking(contact.sole),
    cover: leaking(contact.cover),
    glove: leaking(contact.glove),
    guard: leaking(contact.guard),
    stickLeakage: contact.stickLeakage * moisture,
    ...(contact.wetStickLeakage !== undefined && { wetStickLeakage: contact.wetStickLeakage * moisture }),
  }
}
