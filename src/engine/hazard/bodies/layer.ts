/**
 * What an item between skin and surface is, electrically: an insulation with its class (a capacitance beside a leakage,
 * by contact area) or a plain resistance where it insulates nothing, is damaged, or has failed before. A label's date
 * changes nothing here.
 */
import { magnitude, type Complex } from '../../math/complex'
import { insulationRating, layerAdmittance, type InsulatingItem, type InsulationClass } from '../../physics/insulation'
import type { Limb } from '../../site/contact'
import { effectiveParameters, requireItem, type Parameters } from '../../site/questions'
import type { ContactValues, ItemId, Scenario } from '../../site/scenario'
import type { Site } from '../../site/site'
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

type Sheet = ContactValues['sole']

/**
 * @param area of the contact, m²
 * @param scenario in its corner: moisture counts
 */
export function layerOf(
  site: Site,
  id: ItemId,
  limb: Limb,
  area: number,
  { contact, frequency }: Pick<Scenario, 'contact' | 'frequency'> = site.scenario,
): Layer {
  const item = requireItem(site, id)
  const is = effectiveParameters(item)
  switch (item.type) {
    case 'boots':
      return sheet(site, id, 'boot', contact.sole, area, frequency, is, conductsOf(is, limb))
    case 'lv-gloves':
    case 'switching-gloves':
      return sheet(site, id, 'glove', contact.glove, area, frequency, is, conductsOf(is, limb))
    case 'pole-cover':
      return sheet(site, id, 'cover', contact.cover, area, frequency, is, conductsOf(is, limb))
    case 'lv-guard':
      return sheet(site, id, 'cover', contact.guard, area, frequency, is, conductsOf(is, limb))
    case 'operating-stick':
    case 'hv-detector':
      return { kind: 'resistance', item: id, ohm: numberOr(is['leakage'], contact.stickLeakage) }
    case 'lv-tester':
      return { kind: 'resistance', item: id, ohm: is['leadsWhole'] === false ? 0 : contact.stickLeakage }
    default:
      return { kind: 'resistance', item: id, ohm: contact.leather }
  }
}

function sheet(
  site: Site,
  id: ItemId,
  item: InsulatingItem,
  made: Sheet,
  area: number,
  frequency: number,
  is: Parameters,
  conducts: number | undefined,
): Layer {
  if (requireItem(site, id).failed)
    return { kind: 'resistance', item: id, ohm: numberOr(is['failed'], failedResistance) }
  if (conducts !== undefined) return { kind: 'resistance', item: id, ohm: conducts }
  const rating = insulationRating(item, classOf(is))
  return {
    kind: 'insulation',
    item: id,
    admittance: layerAdmittance(frequency, area, made.thickness, made.permittivity, made.leakage),
    maxUse: rating.maxUse,
    proofTest: rating.proofTest,
    failed: numberOr(is['failed'], failedResistance),
  }
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
