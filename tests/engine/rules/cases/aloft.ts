/** Up past the low voltage, proved dead, earthed, covered, bonded. */
import { add, after, again, all, before, by, change, drop, none, swapped, wait } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const values = (it: Record<string, number | string>) => ({ values: it })
const noCover = drop('pw fit-cover', 'pw look cover', 'pw remove-cover', 'pw lower C-15')
const noBond = drop('pw bond-metal', 'pw bond-line', 'pw unbond-line', 'pw unbond-metal')

export const aloft: RuleCases = {
  'ready-to-climb': { breaks: swapped('pw wear G-21', 'pw take T-06'), near: swapped('pw take T-06', 'pw take P-08') },
  'tools-in-list-order': {
    breaks: swapped('pw take T-06', 'pw take P-08'),
    near: before('pw take T-06', 'pw wear G-21'),
  },
  'proved-where-used': { breaks: swapped('pw climb', 'pw prove T-06'), near: again('pw prove T-06') },
  'dead-in-order': {
    breaks: swapped('pw say-dead conductor-c', 'pw brush conductor-a'),
    near: swapped('pw brush conductor-a', 'pw brush conductor-c'),
  },
  strapped: { breaks: drop('pw strap-on', 'pw unstrap'), near: before('pw strap-on', 'pw inspect-pole') },
  'strapped-aloft': { breaks: before('pw unstrap', 'pw climb foot'), near: after('pw unstrap', 'pw climb foot') },
  'not-under-load': {
    breaks: add({ who: 'gw', do: 'walk', values: { to: { x: 0, y: 1.5 } } }, 'pw haul D-04'),
    near: add({ who: 'gw', do: 'walk', values: { to: { x: 0, y: 2.5 } } }, 'pw haul D-04'),
  },
  'lv-proved-before': { breaks: drop('pw prove T-06 #1'), near: wait(800, 'pw test lv-a') },
  'lv-proved-after': { breaks: drop('pw prove T-06 #2'), near: drop('pw prove T-06 #1') },
  'lv-tested': { breaks: drop('pw test lv-n'), near: swapped('pw test lv-n', 'pw test lv-b') },
  'lv-across': { breaks: swapped('pw test lv-n', 'pw test lv-b'), near: drop('pw test lv-n') },
  'lv-guarded': {
    breaks: drop('pw fit-guard lv-n', 'pw remove-guard lv-n'),
    near: change('pw fit-guard lv-n', { with: 'L-52' }),
  },
  'not-above-unearthed': {
    breaks: all(
      before('pw climb above-lv', 'pw prove D-04'),
      drop('pw unclamp conductor-a', 'pw unclamp conductor-b', 'pw unclamp conductor-c'),
    ),
    near: after('pw climb above-lv', 'pic report-earths'),
  },
  'gloves-at-lv': {
    breaks: before('pw take-off G-21', 'pw prove D-04'),
    near: before('pw take-off G-21', 'pw haul I-1'),
  },
  'gloves-past-lv': {
    breaks: swapped('pw wear G-21 #2', 'pw climb below-lv #2'),
    near: before('pw wear G-21 #2', 'pw lower W-1'),
  },
  'lv-gloves': { breaks: drop('pw wear G-21 #2'), near: swapped('pw wear G-21 #2', 'pw climb below-lv #2') },
  'lv-test-gloves': { breaks: drop('pw wear G-21 #1', 'pw take-off G-21 #1'), near: drop('pw wear G-21 #2') },
  'guards-across': { breaks: swapped('pw fit-guard lv-b', 'pw fit-guard lv-n'), near: drop('pw fit-guard lv-b') },
  'guard-class': {
    breaks: { edit: none, labels: { 'L-51': { class: '0' } } },
    near: { edit: none, labels: { 'L-51': { class: '2' }, 'L-61': { class: '0' } } },
  },
  'hv-proved-before': { breaks: drop('pw prove D-04 #1'), near: wait(500, 'pw test conductor-a') },
  'hv-proved-after': { breaks: drop('pw prove D-04 #2'), near: drop('pw prove D-04 #1') },
  'proving-heeded': {
    breaks: { edit: none, defects: { 'D-04': 'dead-battery' } },
    near: { edit: none, defects: { 'D-09': 'dead-battery' } },
  },
  'detector-band': {
    breaks: { edit: none, labels: { 'D-04': { bandLow: 11_001, bandHigh: 36_000 } } },
    near: { edit: none, labels: { 'D-04': { bandLow: 11_000, bandHigh: 36_000 } } },
  },
  'hv-tested': {
    breaks: drop('pw test conductor-b', 'pw say-dead conductor-b'),
    near: swapped('pw test conductor-a', 'pw test conductor-b'),
  },
  'hv-across': {
    breaks: swapped('pw test conductor-b', 'pw test conductor-c'),
    near: swapped('pw test conductor-a', 'pw test conductor-b'),
  },
  'hv-test-fresh': { breaks: wait(900, 'pw clamp conductor-a'), near: wait(400, 'pw clamp conductor-a') },
  'said-dead': {
    breaks: drop('pw say-dead conductor-b'),
    near: before('pw say-dead conductor-b', 'pw clamp conductor-a'),
  },
  'dead-across': {
    breaks: swapped('pw say-dead conductor-a', 'pw say-dead conductor-b'),
    near: drop('pw say-dead conductor-a'),
  },
  'said-dead-tested': { breaks: drop('pw test conductor-b'), near: drop('pw prove D-04 #2') },
  'indication-heeded': { breaks: { edit: none, hung: ['B'] }, near: { edit: none, defects: { 'D-04': 'worn-print' } } },
  'not-touched-before': {
    breaks: all(
      add({ who: 'pw', do: 'climb', values: { to: 'above-lv' } }, 'pw clamp conductor-b'),
      add({ who: 'pw', do: 'untie', on: 'conductor-b' }, 'pw clamp conductor-b'),
    ),
    near: drop('pw tug conductor-c'),
  },
  brushed: { breaks: drop('pw brush conductor-b'), near: before('pw brush conductor-b', 'pw clamp conductor-b') },
  'brush-across': {
    breaks: swapped('pw brush conductor-a', 'pw brush conductor-b'),
    near: drop('pw brush conductor-a'),
  },
  'clamps-across': {
    breaks: all(
      swapped('pw clamp conductor-b', 'pw clamp conductor-c'),
      swapped('pw tug conductor-b', 'pw tug conductor-c'),
    ),
    near: all(
      swapped('pw clamp conductor-a', 'pw clamp conductor-b'),
      swapped('pw tug conductor-a', 'pw tug conductor-b'),
    ),
  },
  'clamped-by-hand': {
    breaks: all(
      change('pw clamp conductor-b', { do: 'clamp-by-hand' }),
      before('pw climb above-lv', 'pw clamp-by-hand'),
    ),
    near: again('pw tug conductor-b'),
  },
  'clamps-turned': {
    breaks: change('pw clamp conductor-b', values({ turns: 5 })),
    near: change('pw clamp conductor-b', values({ turns: 7 })),
  },
  'clamp-tugged': { breaks: drop('pw tug conductor-b'), near: again('pw tug conductor-b') },
  'earthed-all': {
    breaks: drop('pw clamp conductor-c', 'pw tug conductor-c', 'pw unclamp conductor-c'),
    near: drop('pw tug conductor-c'),
  },
  'lv-neutral-free': {
    breaks: change('pw clamp conductor-a', { on: 'lv-n' }),
    near: change('pw clamp conductor-c', { on: 'arm' }),
  },
  'lead-area': {
    breaks: { edit: none, labels: { 'E-07': { area: 16 } } },
    near: { edit: none, labels: { 'E-07': { area: 35 } } },
  },
  'earths-reported': { breaks: drop('pic report-earths'), near: before('pic report-earths', 'pic declare-safe') },
  'earths-counted': {
    breaks: change('pic report-earths', values({ count: 2 })),
    near: after('pic report-earths', 'pw dress-leads'),
  },
  'earths-stay': {
    breaks: all(before('pw climb below-lv #2', 'pw untie'), before('pw unclamp conductor-c', 'pw untie')),
    near: drop('pw tug conductor-c'),
  },
  covered: { breaks: noCover, near: drop('pw look cover') },
  'cover-class': {
    breaks: { edit: none, labels: { 'C-15': { class: '0' } } },
    near: { edit: none, labels: { 'C-15': { class: '2' }, 'C-16': { class: '0' } } },
  },
  'cover-reaches': {
    breaks: change('pw fit-cover', values({ from: 7.8 })),
    near: change('pw fit-cover', values({ from: 7.7 })),
  },
  'cover-margin': {
    breaks: change('pw fit-cover', values({ from: 7.3 })),
    near: change('pw fit-cover', values({ from: 7 })),
  },
  'cover-reaches-up': {
    breaks: change('pw fit-cover', values({ to: 8.1 })),
    near: change('pw fit-cover', values({ to: 8.2 })),
  },
  'cover-checked': { breaks: drop('pw look cover'), near: before('pw look cover', 'pw dress-leads') },
  'cover-and-bond-in-order': {
    breaks: swapped('pw fit-cover', 'pw bond-metal'),
    near: after('pw take-off G-21', 'pw fit-cover'),
  },
  'aloft-in-order': { breaks: swapped('pw look cover', 'pw bond-metal'), near: drop('pw look cover') },
  bonded: { breaks: noBond, near: drop('pw dress-leads') },
  'bond-area': {
    breaks: { edit: none, labels: { 'B-02': { area: 16 } } },
    near: { edit: none, labels: { 'B-02': { area: 35 } } },
  },
  'bond-metal-first': {
    breaks: swapped('pw bond-metal', 'pw bond-line'),
    near: drop('pw bond-line', 'pw unbond-line'),
  },
  'bond-brushed': {
    breaks: drop('pw brush conductor-b #2'),
    near: after('pw brush conductor-b #2', 'pw bond-metal'),
  },
  'bond-tugged': { breaks: drop('pw tug conductor-b #2'), near: drop('pw tug conductor-b #1') },
  'leads-dressed': { breaks: drop('pw dress-leads'), near: again('pw dress-leads') },
  'bare-pole-between': {
    breaks: all(
      before('pw climb above-lv', 'pw clamp conductor-a'),
      change('pw clamp conductor-b', { do: 'clamp-by-hand' }),
    ),
    near: drop('pw bond-line', 'pw unbond-line'),
  },
  'by-pole-worker': { breaks: all(by('gw', 'pw say-dead conductor-a')), near: by('pic', 'pw look cover') },
}
