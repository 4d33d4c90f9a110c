/** Sheet, briefing, gear on the tarp. */
import { add, after, again, all, before, by, change, drop, none, swapped } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const values = (it: Record<string, number | string | readonly string[]>) => ({ values: it })
const cards = [
  'clamp-earth-end:E-07:rod/R-1',
  'test:D-04:conductor-a',
  'clamp:E-07:conductor-a',
  'fit-cover:C-15:pole',
  'bond-metal:B-02:arm',
  'bond-line:B-02:conductor-b',
]

export const office: RuleCases = {
  'sources-named': { breaks: drop('pic read-order'), near: swapped('pic read-order', 'pic choose-earths') },
  'sources-right': {
    breaks: change('pic read-order', values({ sources: ['f1', 'f2', 'lv'] })),
    near: change('pic read-order', values({ sources: ['lv', 'fx', 'f2', 'f1'] })),
  },
  'earths-chosen': { breaks: drop('pic choose-earths'), near: before('pic choose-earths', 'gw drive-rod') },
  'earths-at-work': {
    breaks: change('pic choose-earths', values({ place: 'isolation-points' })),
    near: change('pic choose-earths', values({ arrangement: 'star' })),
  },
  'area-planned': {
    breaks: change('pic choose-earths', values({ area: 24 })),
    near: change('pic choose-earths', values({ area: 35 })),
  },
  'plan-written': { breaks: drop('pic write-plan'), near: before('pic write-plan', 'pic hold-briefing') },
  'plan-whole': {
    breaks: change('pic write-plan', values({ cards: cards.slice(0, 5) })),
    near: change('pic write-plan', values({ cards })),
  },
  'plan-cover': {
    breaks: change('pic write-plan', values({ cards: cards.filter((card) => !card.startsWith('fit-cover')) })),
    near: change('pic write-plan', values({ cards: cards.slice(0, 4) })),
  },
  'plan-in-order': {
    breaks: change('pic write-plan', values({ cards: [...cards.slice(0, 4), cards[5]!, cards[4]!] })),
    near: change('pic write-plan', values({ cards: ['pull-rod:R-1:ground', ...cards] })),
  },
  'crew-checked': { breaks: drop('pic check-crew'), near: before('pic check-crew', 'pic hold-briefing') },
  'weather-read': { breaks: drop('pic read-weather #1'), near: before('pic read-weather', 'pic hold-briefing') },
  'office-in-order': {
    breaks: swapped('pic read-order', 'pic choose-earths'),
    near: swapped('pic mark-hazard #1', 'pic mark-hazard #6'),
  },
  'hazards-marked': {
    breaks: drop('pic mark-hazard hazard-fence'),
    near: add({ who: 'pic', do: 'mark-hazard', on: 'hazard-letter-box' }, 'pic answer-livening'),
  },
  'livening-asked': { breaks: drop('pic answer-livening'), near: before('pic answer-livening', 'pic hold-briefing') },
  'livening-possible': {
    breaks: change('pic answer-livening', values({ possible: 'no' })),
    near: change('pic answer-livening', values({ from: 'f1' })),
  },
  'livening-from': {
    breaks: change('pic answer-livening', values({ from: 'f1' })),
    near: change('pic answer-livening', values({ control: 'take-out' })),
  },
  'livening-control': {
    breaks: change('pic answer-livening', values({ control: 'nothing' })),
    near: change('pic answer-livening', values({ control: 'take-out' })),
  },
  'crossing-asked': { breaks: drop('pic ask-feeder-out'), near: before('pic ask-feeder-out', 'pic take-permit') },
  'pole-matched': { breaks: drop('pic match-pole'), near: before('pic match-pole', 'pic hold-briefing') },
  'pole-matched-again': { breaks: drop('pw match-pole'), near: after('pw match-pole', 'pw inspect-pole') },
  'pole-inspected': { breaks: drop('pw inspect-pole'), near: before('pw inspect-pole', 'pw climb') },
  'rescue-staged': { breaks: drop('gw stage-rescue'), near: before('gw stage-rescue', 'gw watch') },
  'rescuer-on-ground': {
    breaks: change('gw stage-rescue', values({ rescuer: 'pw' })),
    near: change('gw stage-rescue', values({ rescuer: 'so' })),
  },
  'truck-parked': { breaks: drop('gw park-truck'), near: before('gw park-truck', 'gw sign-on') },
  'truck-clear': {
    breaks: change('gw park-truck', { values: { at: { x: -9, y: 7.8 } } }),
    near: change('gw park-truck', { values: { at: { x: -9.6, y: 7.2 } } }),
  },
  'signs-set': { breaks: drop('gw set-signs'), near: before('gw set-signs', 'gw set-barrier') },
  'briefing-held': { breaks: drop('pic hold-briefing'), near: after('pic hold-briefing', 'so sign-on') },
  'signed-on': { breaks: drop('gw sign-on'), near: after('gw sign-on', 'so sign-on') },
  'signed-on-briefed': { breaks: before('gw sign-on', 'pic hold-briefing'), near: after('gw sign-on', 'so sign-on') },
  'nobody-unbriefed': {
    breaks: all(
      add({ who: 'gw', do: 'walk', on: 'switch-27' }, 'pic hold-briefing'),
      add({ who: 'gw', do: 'walk', on: 'truck' }, 'pic sign-on'),
    ),
    near: drop('so sign-on'),
  },
  'booked-out': { breaks: drop('gw book-out E-07'), near: after('gw book-out E-07', 'pw judge E-07') },
  'judged-boots': { breaks: drop('pw judge BT-42'), near: by('gw', 'pw judge BT-42') },
  'judged-insulation': { breaks: drop('pw judge L-52'), near: by('gw', 'pw judge L-52') },
  'judged-leads': { breaks: drop('pw judge B-02'), near: by('gw', 'pw judge B-02') },
  'judged-testers': { breaks: drop('pw judge T-06'), near: by('gw', 'pw judge T-06') },
  'judged-kit': { breaks: drop('gw judge H-1', 'pw judge K-1'), near: by('pw', 'gw judge RK-1') },
  'evidence-boots': { breaks: drop('pw look BT-42'), near: swapped('pw look BT-42', 'pw test-item BT-42') },
  'evidence-insulation': { breaks: drop('pw test-item C-15'), near: swapped('pw look C-15', 'pw test-item C-15') },
  'evidence-leads': { breaks: drop('pw read-label E-07'), near: swapped('pw read-label E-07', 'pw look E-07') },
  'evidence-testers': { breaks: drop('pw test-item D-04'), near: again('pw test-item D-04') },
  'evidence-labelled-kit': { breaks: drop('pw read-label Y-1'), near: swapped('pw read-label Y-1', 'pw look Y-1') },
  'evidence-kit': { breaks: drop('gw look Q-1'), near: again('gw look Q-1') },
  'defect-missed': {
    breaks: { edit: none, defects: { 'BT-42': 'nail-hole-left' } },
    near: { edit: none, defects: { 'BT-42': 'scratch' } },
  },
  'defect-missed-kit': {
    breaks: { edit: none, defects: { 'W-1': 'hole' } },
    near: { edit: none, defects: { 'W-1': 'worn-print' } },
  },
  'sound-refused': {
    breaks: change('pw judge BT-42', values({ verdict: 'quarantine' })),
    near: { edit: change('pw judge BT-42', values({ verdict: 'quarantine' })), defects: { 'BT-42': 'nail-hole-left' } },
  },
  'refused-used': {
    breaks: add({ who: 'pw', do: 'judge', on: 'D-04', values: { verdict: 'quarantine' } }, 'pw test conductor-a'),
    near: add({ who: 'gw', do: 'judge', on: 'D-09', values: { verdict: 'quarantine' } }, 'so judge K-71'),
  },
  'inspection-order': {
    breaks: swapped('pw look E-07', 'pw test-item E-07'),
    near: swapped('gw book-out L-51', 'gw book-out L-51'),
  },
  'one-item-at-a-time': {
    breaks: swapped('pw judge E-07', 'pw read-label B-02'),
    near: swapped('pw look E-07', 'pw test-item E-07'),
  },
  'tarp-first': { breaks: before('so take K-71', 'so judge G-31'), near: swapped('so take K-71', 'so take K-72') },
  'boots-class': {
    breaks: { edit: none, labels: { 'BT-42': { class: '0' } } },
    near: { edit: none, labels: { 'BT-42': { class: '2' }, 'BT-45': { class: '0' } } },
  },
  'boots-before-barrier': {
    breaks: after('gw wear BT-43', 'gw set-barrier'),
    near: swapped('gw wear BT-43', 'gw locate-services'),
  },
}
