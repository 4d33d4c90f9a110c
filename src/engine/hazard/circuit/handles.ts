/** The earth of a switch's handle, where the scenario states one: by itself in the soil, beside whoever works it. */
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import type { Ground } from './ground'
import { handleNode } from './nodes'
import { statedEarth, statedEarthRod } from './statedEarth'

/** A handle on its insulated rod, its earth lead broken off, ohm (own choice). */
const brokenOff = 1e8

export function handleElectrodes({ switches }: Scenario): readonly Electrode[] {
  return switches.flatMap(({ id, along, handleEarth }) => {
    return handleEarth === undefined ? [] : [statedEarthRod(handleNode(id), { x: along, y: 0 })]
  })
}

export function handles({ switches }: Scenario, ground: Ground): readonly Element[] {
  return switches.flatMap(({ id, handleEarth, handleEarthBroken }) => {
    if (handleEarth === undefined) return []
    return statedEarth(handleNode(id), handleEarthBroken ? brokenOff : handleEarth, ground)
  })
}
