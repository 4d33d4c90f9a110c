/** Takes one switching step from the control room and repeats the device's number. */
import { findSwitch } from '../../site/questions'
import type { Action } from '../action'
import { changePaper, perceive } from '../changes'
import { switchKnown } from '../conditions'
import { choiceIn, thingIn } from '../orderValues'
import { switches } from '../things'

export const receiveStep: Action = {
  id: 'receive-step',
  covers: ['A24'],
  speech: true,
  things: switches,
  values: {
    to: { kind: 'choice', many: false, of: () => ['closed', 'open'] },
    readBack: { kind: 'choice', many: false, of: (site) => site.scenario.switches.map((it) => it.label).sort() },
  },
  check: switchKnown,
  takes: () => 30,
  apply: (site, order) => {
    const device = thingIn(order)
    const label = findSwitch(site, device)?.label ?? ''
    const to = choiceIn(order, 'to') === 'open' ? 'open' : 'closed'
    const readBack = choiceIn(order, 'readBack')
    const answer = readBack === label ? 'control.correct' : 'control.not-correct'
    return perceive(
      changePaper(site, { step: { switch: device, to, readBack } }),
      order.who,
      { of: device, by: 'hear', says: `control.step-${to}`, values: { label } },
      { of: device, by: 'hear', says: answer, values: { label, readBack } },
    )
  },
}
