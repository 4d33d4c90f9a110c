/** After the line came alive: edits of the recording in which it does. */
import { add, after, all, before, change, drop, placesOf } from '../../../support/rules/edits'
import type { CaseRun, RuleCases } from '../../../support/rules/ruleCase'
import type { Edit } from '../../../support/rules/edits'

const livened = (edit: Edit): CaseRun => ({ edit, of: 'clean-livened' })

/** Nothing is replaced: what carried the fault stays on. */
const sameGear: Edit = (orders) => {
  const [first] = placesOf(orders, 'gw book-out E-09')
  const [last] = placesOf(orders, 'pw dress-leads #2')
  return orders.filter((_, i) => i < first! || i > last!)
}
const sameRod = all(drop('gw judge R-1'), change('gw drive-rod #2', { with: 'R-1' }))

/** The run ends with this act. */
const until =
  (name: string): Edit =>
  (orders) =>
    orders.slice(0, placesOf(orders, name)[0]! + 1)

export const response: RuleCases = {
  'kept-still': { breaks: livened(drop('gw keep-still')), near: livened(after('so keep-still', 'pic call-control')) },
  'control-called': {
    breaks: livened(change('pic call-control', { values: { message: 'all-well' } })),
    near: livened(change('pic call-control', { values: { message: 'need-ambulance' } })),
  },
  'source-off-first': {
    breaks: livened(drop('pic ask-source-off')),
    near: livened(add({ who: 'gw', do: 'look', on: 'pole-top' }, 'pic ask-source-off')),
  },
  'tested-again': {
    breaks: livened(drop('pw test conductor-b #2', 'pw test conductor-b #3')),
    near: livened(drop('pw test conductor-b #3')),
  },
  'source-asked': {
    breaks: livened(until('pic call-control')),
    near: livened(until('pic ask-source-off')),
  },
  'looked-after': {
    breaks: livened(drop('pw look L-51 #2')),
    near: livened(before('pw look cover #2', 'pw prove D-04 #4')),
  },
  'crossing-looked': {
    breaks: livened(change('pic look crossing', { on: 'pole-top' })),
    near: livened(before('pic look crossing', 'pic call-control')),
  },
  'fault-gear-relied': { breaks: livened(sameGear), near: livened(drop('gw judge B-02')) },
  'fault-gear-refitted': { breaks: livened(sameRod), near: livened(drop('gw judge B-02')) },
  quarantined: { breaks: livened(drop('gw judge B-02')), near: livened(after('gw judge B-02', 'gw judge R-1')) },
}
