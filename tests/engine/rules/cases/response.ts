/** After the line came alive: edits of the recording in which it does. */
import { add, after, before, change, drop } from '../../../support/rules/edits'
import type { CaseRun, RuleCases } from '../../../support/rules/ruleCase'
import type { Edit } from '../../../support/rules/edits'

const livened = (edit: Edit): CaseRun => ({ edit, of: 'clean-livened' })

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
  'looked-after': {
    breaks: livened(drop('pw look cover #2', 'gw look E-09', 'gw look B-03', 'gw look R-2')),
    near: livened(before('pw look cover #2', 'pw prove D-04 #4')),
  },
  quarantined: { breaks: livened(drop('gw judge B-02')), near: livened(after('gw judge B-02', 'gw judge R-1')) },
}
