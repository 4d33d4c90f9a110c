/** The permit: heard and taken from the control room and given back, each with a read-back. */
import { clearedUp, findTurned, heardWords, isTakenAsRight, permitLimits } from '../../site/misheard'
import type { Site } from '../../site/site'
import type { Action, Order } from '../action'
import { changePaper, mark, perceive, write } from '../changes'
import { choiceIn } from '../orderValues'
import { refuse, type Condition } from '../refuse'

/** Right first; the others differ in a number, leave out a point or the end, or are as a bad line has it. */
function limits(site: Site): readonly string[] {
  const { pole, switches, control } = site.scenario
  const said = permitLimits(site.scenario)
  const words = said.split(' ')
  const last = switches
    .map((it) => it.label)
    .sort()
    .at(-1)
  const turned = (word: string): string => said.replace(word, findTurned(word) ?? word)
  const garbled = (control.misheard ?? []).map((it) =>
    words.map((word) => (word.replace(/^#/, '') === it.message ? word.replace(it.message, it.saidAs) : word)).join(' '),
  )
  return [
    ...new Set([
      said,
      turned(pole.number),
      ...(switches.length > 1 ? [words.filter((it) => it !== last).join(' ')] : []),
      ...(control.permit ? [turned(control.permit.number), words.slice(0, -1).join(' ')] : []),
      ...garbled,
    ]),
  ]
}

/** Right first: whoever gives the permit back says all three. */
const clearances = ['crew-clear earths-off gear-in', 'crew-clear earths-off', 'earths-off gear-in'] as const

const notHeld: Condition = (site, order) => (site.paper.permit === 'held' ? refuse(order, 'already-so') : undefined)

const hear = (site: Site, order: Order, says: string, values = {}): Site =>
  perceive(site, order.who, { of: 'control', by: 'hear', says, values })

const isIsolated = (site: Site): boolean => site.marks['isolation-reported'] !== undefined

export const hearPermit: Action = {
  id: 'hear-permit',
  covers: ['A35'],
  speech: true,
  check: notHeld,
  takes: () => 45,
  apply: (site, order) => {
    if (!isIsolated(site)) return hear(site, order, 'control.no-isolation-report')
    return hear(site, order, 'control.permit-read', { readBack: heardWords(site, permitLimits(site.scenario)) })
  },
}

/** Every number of the permit that a bad line had garbled has been said again. */
const clearUp = (site: Site): Site =>
  (site.scenario.control.misheard ?? [])
    .filter((it) => permitLimits(site.scenario).split(' ').includes(it.message))
    .reduce((next, it) => mark(next, clearedUp(it.message)), site)

export const takePermit: Action = {
  id: 'take-permit',
  covers: ['A35'],
  speech: true,
  values: { readBack: { kind: 'choice', many: false, of: (site) => [...limits(site)].sort() } },
  check: notHeld,
  takes: () => 90,
  apply: (site, order) => {
    const readBack = choiceIn(order, 'readBack')
    if (!isIsolated(site)) return hear(site, order, 'control.no-isolation-report')
    const label = permitLimits(site.scenario)
    if (!isTakenAsRight(site, label, readBack))
      return hear(clearUp(site), order, 'control.permit-not-correct', { label, readBack })
    const held = mark(changePaper(site, { permit: 'held' }), 'permit-taken')
    return hear(readBack === label ? held : write(held, 'permit', readBack), order, 'control.permit', { readBack })
  },
}

export const returnPermit: Action = {
  id: 'return-permit',
  covers: ['A88'],
  speech: true,
  values: { readBack: { kind: 'choice', many: false, of: () => [...clearances].sort() } },
  check: (site, order) => (site.paper.permit === 'held' ? undefined : refuse(order, 'no-permit')),
  takes: () => 90,
  apply: (site, order) => {
    const readBack = choiceIn(order, 'readBack')
    if (readBack !== clearances[0]) return hear(site, order, 'control.not-complete', { readBack })
    // What control took out for the work goes back in with the permit.
    const returned = { ...changePaper(site, { permit: 'returned' }), feedersOut: [] }
    return hear(mark(returned, 'permit-returned'), order, 'control.permit-back', { readBack })
  },
}
