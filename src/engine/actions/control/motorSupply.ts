/** Switches the supply of a switch's motor drive off in its box, or on again: without it nothing works it from afar. */
import { requireSwitch } from '../../site/questions'
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changeSwitch, tell } from '../changes'
import { atSwitch, handsFree } from '../conditions'
import { thingIn } from '../orderValues'
import { all, refuse } from '../refuse'

const withSupply = (site: Site): readonly string[] =>
  site.scenario.switches
    .filter((it) => it.motorSupply)
    .map((it) => it.id)
    .sort()

function setSupply(id: string, motorSupply: 'on' | 'off', covers: readonly string[]): Action {
  return {
    id,
    covers,
    things: withSupply,
    check: all(atSwitch, handsFree(1), (site, order) =>
      (requireSwitch(site, thingIn(order)).motorSupply ?? 'on') === motorSupply
        ? refuse(order, 'already-so')
        : undefined,
    ),
    takes: () => 20,
    apply: (site, order) => tell(changeSwitch(site, thingIn(order), { motorSupply }), order, thingIn(order)),
  }
}

export const motorSupplyOff = setSupply('motor-supply-off', 'off', ['A30'])
export const motorSupplyOn = setSupply('motor-supply-on', 'on', ['A90'])
