/** The work, and all of it off in reverse. */
import { add, after, again, all, before, by, change, drop, none, swapped, wait } from '../../../support/rules/edits'
import type { RuleCases } from '../../../support/rules/ruleCase'

const values = (it: Record<string, number | string>) => ({ values: it })

const toRod = (name: string) => add({ who: 'gw', do: 'walk', values: { to: { x: 2.6, y: -2.35 } } }, name)
/** First the words, then the look at the sky, and the work only after both. */
const safeFirst = all(swapped('pic declare-safe', 'pic read-weather #2'), wait(60, 'pw untie'))

export const work: RuleCases = {
  'checked-from-ground': { breaks: drop('pic check-from-ground'), near: again('pic check-from-ground') },
  'declared-safe': { breaks: drop('pic declare-safe'), near: again('pw untie') },
  watched: { breaks: drop('gw watch'), near: again('gw watch') },
  'weather-again': {
    breaks: drop('pic read-weather #2'),
    near: safeFirst,
  },
  'weather-before-safe': {
    breaks: safeFirst,
    near: again('pic check-from-ground'),
  },
  'left-alone': {
    breaks: add({ who: 'gw', do: 'walk', on: 'switch-27' }, 'pw untie'),
    near: add({ who: 'pic', do: 'walk', on: 'switch-27' }, 'pw untie'),
  },
  'work-done': { breaks: drop('pw swap-insulator', 'pw lower I-0'), near: drop('pw lower I-0') },
  'old-insulator-down': { breaks: drop('pw lower I-0'), near: swapped('pw lower I-0', 'pw retie') },
  'work-gloves': { breaks: drop('pw wear W-1'), near: before('pw wear W-1', 'pw untie') },
  'work-in-order': { breaks: before('pic confirm-complete', 'pw retie'), near: drop('pw swap-insulator') },
  'tied-in': { breaks: drop('pw retie'), near: drop('pw swap-insulator') },
  completed: { breaks: drop('pic confirm-complete'), near: again('pw retie') },
  'bond-off-line-first': {
    breaks: swapped('pw unbond-line', 'pw unbond-metal'),
    near: after('pw unbond-metal', 'pw remove-cover'),
  },
  'off-in-reverse': {
    breaks: swapped('pw unbond-metal', 'pw remove-cover'),
    near: swapped('pw lower C-15', 'pw lower B-02'),
  },
  'down-in-order': { breaks: swapped('pw lower C-15', 'pw lower B-02'), near: drop('pw lower C-15') },
  'clamps-off-across': {
    breaks: swapped('pw unclamp conductor-c', 'pw unclamp conductor-b'),
    near: drop('pw unclamp conductor-c'),
  },
  'unclamped-by-hand': {
    breaks: all(
      before('pw climb below-lv #2', 'pw unclamp conductor-b'),
      change('pw unclamp conductor-c', { do: 'unclamp-by-hand' }),
    ),
    near: again('pic call-clear #2'),
  },
  'earth-end-last': {
    breaks: all(before('gw unclamp-earth-end', 'pw unclamp conductor-c'), toRod('gw unclamp-earth-end')),
    near: all(before('gw unclamp-earth-end', 'pw lower S-11'), toRod('gw unclamp-earth-end')),
  },
  'guards-off-across': {
    breaks: swapped('pw remove-guard lv-n', 'pw remove-guard lv-b'),
    near: drop('pw remove-guard lv-n'),
  },
  'rod-after-lead': { breaks: drop('gw unclamp-earth-end'), near: wait(60, 'gw pull-rod') },
  'looked-up': { breaks: drop('pic look pole-top'), near: before('pic look pole-top', 'gw pull-rod') },
  'register-in': { breaks: drop('gw book-in S-11'), near: drop('gw book-in BT-43') },
  'booked-in-list-order': { breaks: swapped('gw book-in E-07', 'gw book-in B-02'), near: drop('gw book-in E-07') },
  'booked-in-late-list-order': {
    breaks: swapped('gw book-in BT-42', 'gw book-in Q-1'),
    near: drop('gw book-in BT-42'),
  },
  'booked-in-outside': { breaks: swapped('gw walk clear', 'gw book-in E-07'), near: again('pic look pole-top') },
  'nothing-aloft': {
    breaks: all(drop('pw lower D-04', 'gw book-in D-04', 'gw book-out D-04')),
    near: drop('gw book-in D-04'),
  },
  'heads-counted': { breaks: drop('pic head-count'), near: before('pic head-count', 'gw book-in N-1') },
  'crew-clear': {
    breaks: add({ who: 'pw', do: 'walk', values: { to: { x: 1, y: 2 } } }, 'gw book-in N-1'),
    near: add({ who: 'pw', do: 'walk', values: { to: { x: 0, y: 9 } } }, 'gw book-in N-1'),
  },
  'permit-back-read': {
    breaks: change('pic return-permit', values({ readBack: 'crew-clear earths-off' })),
    near: wait(30, 'pic return-permit'),
  },
  'permit-back': { breaks: drop('pic return-permit'), near: drop('pic close-job') },
  'job-closed': { breaks: drop('pic close-job'), near: wait(60, 'pic close-job') },
  'all-booked-in': { breaks: drop('gw book-in BT-43'), near: swapped('gw book-in BT-43', 'gw book-in BT-41') },
  'by-person-in-charge': { breaks: by('so', 'pic ask-reclose-on f1'), near: by('so', 'pic walk') },
  'by-switching-operator': { breaks: by('gw', 'so report-isolated'), near: by('pic', 'so look switch-27/A') },
  'by-register': { breaks: by('pw', 'gw book-in E-07'), near: none },
  'by-pole-reading': {
    breaks: add({ who: 'gw', do: 'match-pole', on: 'pole' }, 'gw drive-rod'),
    near: again('pic match-pole'),
  },
  'by-pole-inspection': {
    breaks: all(
      add({ who: 'gw', do: 'inspect-pole', on: 'pole' }, 'gw walk #1'),
      add({ who: 'gw', do: 'walk', on: 'pole-foot' }, 'gw inspect-pole'),
    ),
    near: again('pw inspect-pole'),
  },
  'done-twice': { breaks: again('pic read-weather'), near: add({ who: 'pic', do: 'read-weather' }, 'pic take-permit') },
}
