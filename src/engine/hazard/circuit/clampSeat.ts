/**
 * State of a clamp's seat from how it was put on and what is wrong with it; the resistances of the states are those of
 * physics/conductor, a good seat that of the scenario. A tug finds a loose clamp, it does not tighten it.
 */
import { contactResistance, type ContactState } from '../../physics/conductor'
import { conductorOf } from '../../site/gaps'
import type { Scenario } from '../../site/scenario'
import type { Clamp, Site } from '../../site/site'
import { effectiveParameters, numberOf, requireItem, type Parameters } from '../../site/questions'

export function clampResistance(site: Site, clamp: Clamp): number {
  const state = seatState(site, clamp)
  return state === 'good' ? site.scenario.contact.clampGood : contactResistance[state].declared
}

/** Seated by hand only: a pull takes it off. */
export function isClampTight(site: Site, clamp: Clamp): boolean {
  const state = seatState(site, clamp)
  return state !== 'hand-tight' && state !== 'unbrushed-hand-tight'
}

function seatState(site: Site, clamp: Clamp): ContactState {
  const lead = effectiveParameters(requireItem(site, clamp.lead), clamp.end)
  const conductor = site.scenario.conductors.find((it) => it.id === conductorOf(clamp.on))
  if (isPainted(site, clamp, lead)) return 'painted'
  if (lead['metalClamp'] === false) return 'unbrushed-hand-tight'
  const isBright = (conductor === undefined || clamp.brushed) && lead['jawOxide'] !== true
  const isTight =
    !clamp.loosened &&
    clamp.turns >= numberOf(lead, 'seatTurns') &&
    lead['jawHolds'] !== false &&
    lead['springHolds'] !== false &&
    fitsJaw(lead, conductor) &&
    boltHolds(site, clamp, lead)
  if (isBright) return isTight ? 'good' : 'hand-tight'
  return isTight ? 'unbrushed' : 'unbrushed-hand-tight'
}

function isPainted(site: Site, clamp: Clamp, lead: Parameters): boolean {
  if (clamp.end === 'truck') return lead['truckSeat'] === 'painted'
  if (clamp.end !== 'earth') return false
  return lead['earthSeat'] === 'painted' || rodParameters(site, clamp)?.['seat'] === 'painted'
}

/** The screw of an earth end and of the rod's own clamp. */
function boltHolds(site: Site, clamp: Clamp, lead: Parameters): boolean {
  if (clamp.end !== 'earth') return true
  return lead['earthSeat'] !== 'loose' && rodParameters(site, clamp)?.['boltHolds'] !== false
}

function rodParameters(site: Site, clamp: Clamp): Parameters | undefined {
  const id = clamp.on.replace(/^rod\//, '')
  const item = Object.hasOwn(site.items, id) ? site.items[id] : undefined
  return item && effectiveParameters(item)
}

function fitsJaw(lead: Parameters, conductor: Scenario['conductors'][number] | undefined): boolean {
  const jawTo = lead['jawTo']
  return conductor === undefined || typeof jawTo !== 'number' || 2 * conductor.radius <= jawTo
}
