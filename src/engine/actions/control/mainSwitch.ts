/** Opens or closes a main switch on low voltage: of a transformer, of somebody's own source, of the street lamps. */
import type { Action } from '../action'
import { tell } from '../changes'
import { handsFree } from '../conditions'
import { atMain, canGetAt, changeMain, mains, requireMain } from '../mains'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'

function workMain(id: string, to: 'open' | 'closed', covers: readonly string[]): Action {
  return {
    id,
    covers,
    things: mains,
    check: all(atMain, canGetAt, handsFree(1), (site, order) => {
      const { position, lock } = requireMain(site, thingIn(order))
      if (lock !== null) return refuse(order, 'handle-locked')
      return position === to ? refuse(order, 'already-so') : undefined
    }),
    takes: () => 10,
    apply: (site, order) => tell(changeMain(site, thingIn(order), { position: to }), order, thingIn(order)),
  }
}

export const openMain = workMain('open-main', 'open', ['A32', 'A33'])
export const closeMain = workMain('close-main', 'closed', ['A90'])
