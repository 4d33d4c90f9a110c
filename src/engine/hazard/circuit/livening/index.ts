/** The register of mechanisms: one line each. */
import type { Element } from '../../../physics/network'
import type { Livening, Scenario, ThingId } from '../../../site/scenario'
import { clash } from './clash'
import { clashTwo } from './clashTwo'
import { switchClosed } from './switchClosed'

export const mechanisms = { clash, 'clash-two': clashTwo, 'switch-closed': switchClosed } as const

export function liveningFeeder(scenario: Scenario, livening: Livening): ThingId {
  switch (livening.kind) {
    case 'clash':
      return clash.feeder(scenario, livening)
    case 'clash-two':
      return clashTwo.feeder(scenario, livening)
    case 'switch-closed':
      return switchClosed.feeder(scenario, livening)
  }
}

export function liveningLinks(scenario: Scenario, livening: Livening): readonly Element[] {
  switch (livening.kind) {
    case 'clash':
      return clash.links(scenario, livening)
    case 'clash-two':
      return clashTwo.links(scenario, livening)
    case 'switch-closed':
      return switchClosed.links(scenario, livening)
  }
}
