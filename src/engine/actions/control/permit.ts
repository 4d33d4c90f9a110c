/** The permit: taken from the control room and given back, each with a read-back. */
import type { Site } from '../../site/site'
import type { Action } from '../action'
import { changePaper, mark, perceive } from '../changes'
import { choiceIn } from '../orderValues'
import { refuse } from '../refuse'

/** What the permit is for, right first: pole and points of isolation; the others differ in a number. */
function limits(site: Site): readonly string[] {
  const { number } = site.scenario.pole
  const labels = site.scenario.switches.map((it) => it.label).sort()
  return [
    `${number} ${labels.join(' ')}`,
    `${turned(number)} ${labels.join(' ')}`,
    `${number} ${labels.slice(0, 1).join(' ')}`,
  ]
}

/** The number with its last two places changed over. */
function turned(number: string): string {
  const head = number.slice(0, -2)
  return `${head}${number.slice(-1)}${number.slice(-2, -1)}`
}

/** Right first: whoever gives the permit back says all three. */
const clearances = ['crew-clear earths-off gear-in', 'crew-clear earths-off', 'earths-off gear-in'] as const

export const takePermit: Action = {
  id: 'take-permit',
  covers: ['A35'],
  speech: true,
  values: { readBack: { kind: 'choice', many: false, of: (site) => [...limits(site)].sort() } },
  check: (site, order) => (site.paper.permit === 'held' ? refuse(order, 'already-so') : undefined),
  takes: () => 90,
  apply: (site, order) => {
    const readBack = choiceIn(order, 'readBack')
    const hear = (at: Site, says: string, values = {}): Site =>
      perceive(at, order.who, { of: 'control', by: 'hear', says, values })
    if (site.marks['isolation-reported'] === undefined) return hear(site, 'control.no-isolation-report')
    if (readBack !== limits(site)[0])
      return hear(site, 'control.not-correct', { label: limits(site)[0] ?? '', readBack })
    return hear(mark(changePaper(site, { permit: 'held' }), 'permit-taken'), 'control.permit', { readBack })
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
    const hear = (at: Site, says: string): Site =>
      perceive(at, order.who, { of: 'control', by: 'hear', says, values: { readBack } })
    if (readBack !== clearances[0]) return hear(site, 'control.not-complete')
    // What control took out for the work goes back in with the permit.
    const returned = { ...changePaper(site, { permit: 'returned' }), feedersOut: [] }
    return hear(mark(returned, 'permit-returned'), 'control.permit-back')
  },
}
