/** Puts the motor operator of a switch to local, or back to remote. */
import { findSwitch, requireSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changeSwitch, finishStep, tell } from '../changes'
import { atSwitch } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { switches } from '../things'

function setControl(id: string, control: 'local' | 'remote', covers: readonly string[]): Action {
  return {
    id,
    covers,
    things: switches,
    check: all(atSwitch, (site, order) => {
      if (!findSwitch(site, thingIn(order))?.remote) return refuse(order, 'has-no-remote')
      return requireSwitch(site, thingIn(order)).control === control ? refuse(order, 'already-so') : undefined
    }),
    takes: () => 15,
    apply: (site, order) => {
      const device = thingIn(order)
      const set = changeSwitch(site, device, { control })
      return tell(control === 'remote' ? finishStep(set, device) : set, order, device)
    },
  }
}

export const setLocal = setControl('set-local', 'local', ['A30'])
export const setRemote = setControl('set-remote', 'remote', ['A90'])
