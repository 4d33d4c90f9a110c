/** Pulls at a clamp with the stick: it moves or it does not. */
import type { Action } from '../action'
import { perceive } from '../changes'
import { onPole, withStick } from '../conditions'
import { findUntried, isFirm } from '../leads'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'
import { clampSeats } from '../things'
import { stickOnThing } from '../touching'

export const tug: Action = {
  id: 'tug',
  covers: ['A57'],
  things: clampSeats,
  check: all(onPole, withStick, (site, order) =>
    findUntried(site, thingIn(order)) ? undefined : refuse(order, 'not-clamped-there'),
  ),
  takes: () => 10,
  contacts: stickOnThing,
  apply: (site, order) => {
    const held = findUntried(site, thingIn(order))
    const clamps = site.clamps.map((it) => (it === held ? { ...it, tugged: true } : it))
    const says = held && isFirm(site, held) ? 'feel.clamp-still' : 'feel.clamp-turns'
    return perceive({ ...site, clamps }, order.who, {
      of: thingIn(order),
      by: 'feel',
      says,
      values: { lead: held?.lead ?? '' },
    })
  },
}
