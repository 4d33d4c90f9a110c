/**
 * What an item between skin and surface is, electrically: an insulation with its class (a capacitance beside a leakage,
 * by contact area) or a plain resistance where it insulates nothing, is damaged, or has failed before. A label's date
 * changes nothing here.
 */
import { magnitude, type Complex } from '../../math/complex'
import { insulationRating, layerAdmittance, type InsulatingItem, type InsulationClass } from '../../physics/insulation'
import type { Limb } from '../../site/contact'
import { effectiveParameters, requireItem, type Parameters } from '../../site/questions'
import type { ContactValues, ItemId, Scenario, SheetValues } from '../../site/scenario'
import type { Site } from '../../site/site'
import { weatherAt } from '../../site/weather'
import { invariant } from '../../units/invariant'

export type Layer =
  | { readonly kind: 'resistance'; readonly item: ItemId; readonly ohm: number }
  | {
      readonly kind: 'insulation'
      readonly item: ItemId
      readonly admittance: Complex
      /** V rms. */
      readonly maxUse: number
      readonly proofTest: number
      /** Ohm once it has failed. */
      readonly failed: number
    }

/** Resistance of a layer that has failed under voltage, unless the item says otherwise. */
const failedResistance = 0

/**
 * @param scenario in its corner: moisture counts, and the rain
 * @param area of the contact, m²
 */
export function layerOf(site: Site, scenario: Scenario, id: ItemId, limb: Limb, area: number): Layer {
  const item = requireItem(site, id)
  const is = effectiveParameters(item)
  const sheet = sheetOf(item.type, scenario.contact)
  if (sheet === undefined)
    return { kind: 'resistance', item: id, ohm: plainOhm(item.type, scenario.contact, weatherAt(site).rain, is) }
  const failed = numberOr(is['failed'], failedResistance)
  if (item.failed) return { kind: 'resistance', item: id, ohm: failed }
  const conducts = conductsOf(is, limb)
  if (conducts !== undefined) return { kind: 'resistance', item: id, ohm: conducts }
  const { thickness, permittivity, leakage, wetLeakage } = sheet.made
  const { maxUse, proofTest } = insulationRating(sheet.as, classOf(is))
  const leaks = weatherAt(site).rain ? (wetLeakage ?? leakage) : leakage
  const admittance = layerAdmittance(scenario.frequency, area, thickness, permittivity, leaks)
  return { kind: 'insulation', item: id, admittance, maxUse, proofTest, failed }
}

interface Sheet {
  /** By which table it is rated. */
  readonly as: InsulatingItem
  readonly made: SheetValues
}

function sheetOf(type: string, contact: ContactValues): Sheet | undefined {
  switch (type) {
    case 'boots':
    case 'overshoes':
      return { as: 'boot', made: contact.sole }
    case 'lv-gloves':
    case 'switching-gloves':
    case 'sleeves':
      return { as: 'glove', made: contact.glove }
    case 'insulating-platform':
      return { as: 'cover', made: contact.sole }
    case 'blanket':
    case 'pole-cover':
      return { as: 'cover', made: contact.cover }
    case 'lv-guard':
      return { as: 'cover', made: contact.guard }
    default:
      return undefined
  }
}

/** What is a plain resistance: sticks and testers; all else counts as leather, or as nothing where it has a hole. */
function plainOhm(type: string, contact: ContactValues, isWet: boolean, is: Parameters): number {
  const stick = isWet ? (contact.wetStickLeakage ?? contact.stickLeakage) : contact.stickLeakage
  if (type === 'operating-stick' || type === 'hv-detector') return numberOr(is['leakage'], stick)
  if (type === 'lv-tester') return is['leadsWhole'] === false ? 0 : stick
  // A hole, or a wire through the palm: the hand itself touches.
  return is['whole'] === false ? 0 : contact.leather
}

function conductsOf(is: Parameters, limb: Limb): number | undefined {
  const side = limb.startsWith('left') ? is['conductsLeft'] : limb.startsWith('right') ? is['conductsRight'] : undefined
  const both = is['conducts']
  return typeof side === 'number' ? side : typeof both === 'number' ? both : undefined
}

function classOf(is: Parameters): InsulationClass {
  const value = is['class']
  invariant(typeof value === 'string' && ['00', '0', '1', '2', '3', '4'].includes(value), 'an insulation class', value)
  return value as InsulationClass
}

function numberOr(value: Parameters[string] | undefined, otherwise: number): number {
  return typeof value === 'number' ? value : otherwise
}

/** Volt across a layer that carries `current` ampere. */
export function layerVoltage(layer: Layer, current: number): number {
  return layer.kind === 'resistance' ? layer.ohm * current : current / magnitude(layer.admittance)
}
