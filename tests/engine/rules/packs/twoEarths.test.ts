/** Every rule of the pack `two-earths`. */
import { add, all, before, by, change, drop, wait } from '../../../support/rules/edits'
import { aloft } from '../cases/aloft'
import { bucket } from '../cases/bucket'
import { changes } from '../cases/changes'
import { ground } from '../cases/ground'
import { isolation } from '../cases/isolation'
import { nextPole } from '../cases/nextPole'
import { office } from '../cases/office'
import { rating } from '../cases/rating'
import { response } from '../cases/response'
import { work } from '../cases/work'
import { barrierAt, describePack, type PackCases, sharedRows } from './describePack'

const earth = 'so earth-isolation-point'
const clear = 'so clear-isolation-earth'
const noGloves = drop('so wear G-31', 'so take-off G-31')
const glovesLater = before('so wear G-31', 'so take T-81')
const noCover = drop('pw fit-cover', 'pw look cover', 'pw remove-cover', 'pw lower C-15')
const fourthHand = add({ who: 'gw', do: 'walk', on: 'switch-27' }, earth)
const backEarly = all(
  add({ who: 'so', do: 'walk', on: 'switch-27' }, 'pic return-permit'),
  add({ who: 'so', do: 'put-down', on: 'M-1' }, 'pic return-permit'),
)

const own: PackCases = {
  'truck-clear': {
    breaks: change('gw park-truck', { values: { at: { x: -5.6, y: 5.6 } } }),
    near: change('gw park-truck', { values: { at: { x: -5.8, y: 5.8 } } }),
  },
  'barrier-wide': { breaks: barrierAt(3.9), near: barrierAt(4) },
  'switching-gloves': { breaks: noGloves, near: glovesLater },
  'cover-or-insulating-pole': { breaks: noCover, near: drop('pw look cover') },
  'main-earth-first': { breaks: drop(earth, clear), near: wait(300, earth) },
  'main-earth-by-whom': { breaks: all(fourthHand, by('gw', earth)), near: fourthHand },
  'main-earth-isolated-first': { breaks: before(earth, 'so open-switch'), near: before(earth, 'so look switch-27/A') },
  'main-earth-locked-first': { breaks: before(earth, 'so lock switch-27'), near: before(earth, 'so tag switch-27') },
  'main-earth-blades': { breaks: before(earth, 'so look switch-27/A'), near: before(earth, 'so look switch-27/B') },
  'main-earth-gloves': { breaks: noGloves, near: glovesLater },
  'main-earth-reported': {
    breaks: before('so report-isolated', earth),
    near: before('so report-isolated', 'so walk truck'),
  },
  'main-earth-stays': {
    breaks: all(backEarly, add({ who: 'so', do: 'clear-isolation-earth', on: 'switch-27' }, 'pic return-permit')),
    near: backEarly,
  },
  'main-earth-off': { breaks: drop(clear), near: before('so untag switch-27', clear) },
  'main-earth-step': {
    breaks: drop('so receive-step switch-27 #2'),
    near: drop('so read-label switch-27 #2'),
  },
}

describePack('two-earths', 'clean-two-earths', {
  ...sharedRows('two-earths', office, isolation, ground, aloft, work, response, rating, nextPole, bucket, changes),
  ...own,
})
