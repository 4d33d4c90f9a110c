/** Turns the eye screw of a clamp further, with the stick. */
import type { Action } from '../action'
import { tell } from '../changes'
import { onPole, withStick } from '../conditions'
import { findLoosest, turnsByStick, turnsSpec } from '../leads'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { clampSeats } from '../things'
import { stickOnThing } from '../touching'

export const tighten: Action = {
  id: 'tighten',
  covers: ['A57'],
  things: clampSeats,
  values: { turns: turnsSpec },
  check: all(onPole, withStick, (site, order) =>
    findLoosest(site, thingIn(order)) ? undefined : refuse(order, 'nothing-to-tighten'),
  ),
  takes: () => 20,
  contacts: stickOnThing,
  apply: (site, order) => {
    const held = findLoosest(site, thingIn(order))
    const turns = turnsByStick(site, order)
    const clamps = site.clamps.map((it) =>
      it === held ? { ...it, loosened: false, turns: Math.min(10, it.turns + turns), tugged: false } : it,
    )
    return tell({ ...site, clamps }, order, thingIn(order), { turns })
  },
}
