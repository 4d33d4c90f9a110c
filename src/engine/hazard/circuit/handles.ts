/** The earth of a switch's handle, where the scenario states one: by itself in the soil, beside whoever works it. */
import type { Element } from '../../physics/network'
import type { Electrode } from '../../physics/soil'
import type { Scenario } from '../../site/scenario'
import type { Ground } from './ground'
import { handleNode } from './nodes'
import { statedEarth, statedEarthRod } from './statedEarth'

export function handleElectrodes({ switches }: Scenario): readonly Electrode[] {
  return switches.flatMap(({ id, along, handleEarth }) => {
    return handleEarth === undefined ? [] : [statedEarthRod(handleNode(id), { x: along, y: 0 })]
  })
}

export function handles({ switches }: Scenario, ground: Ground): readonly Element[] {
  return switches.flatMap(({ id, handleEarth }) => {
    return handleEarth === undefined ? [] : statedEarth(handleNode(id), handleEarth, ground)
  })
}
