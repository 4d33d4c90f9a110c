/** Works the handle of a switch: what the blades then do is the switch's own affair. */
import { phasesOf } from '../../site/phasesOf'
import { findSwitch, requireSwitch } from '../../site/questions'
import { phases, type Phase } from '../../site/scenario'
import type { Action } from '../action'
import { changeSwitch, finishStep, tell } from '../changes'
import { atSwitch, handsFree } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'
import { bothHands } from '../touching'

type Position = 'open' | 'closed'

function workSwitch(id: string, to: Position, covers: readonly string[]): Action {
  return {
    id,
    covers,
    things: switches,
    check: all(atSwitch, handsFree(2), (site, order) => {
      const { handle, lock } = requireSwitch(site, thingIn(order))
      if (lock !== null) return refuse(order, 'handle-locked')
      return handle === to ? refuse(order, 'already-so') : undefined
    }),
    takes: () => 8,
    contacts: (_site, order) => bothHands(order.who, { kind: 'handle', id: thingIn(order) }),
    apply: (site, order) => {
      const device = thingIn(order)
      const hung = findSwitch(site, device)?.hungBlades ?? []
      const present = phasesOf(site.scenario.conductors)
      const blade = (phase: Phase): Position => {
        return !present.includes(phase) ? 'open' : hung.includes(phase) ? 'closed' : to
      }
      const [A, B, C] = phases.map(blade)
      const moved = changeSwitch(site, device, { handle: to, blades: { A: A ?? to, B: B ?? to, C: C ?? to } })
      return tell(finishStep(moved, device), order, device)
    },
  }
}

export const openSwitch = workSwitch('open-switch', 'open', ['A27', 'A30'])
export const closeSwitch = workSwitch('close-switch', 'closed', ['A89'])
