/** Every rule of the pack `multi-ground`. */
import type { Scenario } from '../../../../src/engine'
import { add, after, all, before, by, change, drop, none, swapped } from '../../../support/rules/edits'
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

const noBond = drop('pw bond-metal', 'pw bond-line', 'pw unbond-line', 'pw unbond-metal')

/** The same line with a neutral wire of its own, on the arm beside conductor C. */
const withNeutral = (scenario: Scenario): Scenario => {
  const neutralWire = {
    id: 'line-neutral',
    x: 0.5,
    height: 8.3,
    radius: 0.004,
    gmr: 0.003,
    resistance: 0.0006,
    earthEvery: 300,
    earthResistance: 25,
    poleEarth: { at: { x: 1.2, y: 0 }, length: 1.8, radius: 0.008 },
  }
  const feeders = scenario.feeders.map((it) => (it.id === 'f1' ? { ...it, neutralWire } : it))
  return { ...scenario, feeders }
}

/** A second set is sent up beside the first. */
const secondSet = all(
  add({ who: 'gw', do: 'tie-on', on: 'E-09' }, 'gw tie-on E-07'),
  add({ who: 'pw', do: 'haul', on: 'E-09' }, 'pw haul E-07'),
)

const own: PackCases = {
  'truck-clear': {
    breaks: change('gw park-truck', { values: { at: { x: -2, y: 2 } } }),
    near: change('gw park-truck', { values: { at: { x: -2.2, y: 2.2 } } }),
  },
  'barrier-wide': { breaks: barrierAt(2.9), near: barrierAt(3) },
  'zone-chained': {
    breaks: change('pic choose-earths', { values: { arrangement: 'star' } }),
    near: change('pic choose-earths', { values: { place: 'isolation-points' } }),
  },
  'neutral-first': {
    breaks: { edit: none, place: withNeutral },
    near: { edit: change('pw clamp conductor-c', { on: 'line-neutral' }), place: withNeutral },
  },
  'single-point': { breaks: all(secondSet, change('pw clamp conductor-c', { with: 'E-09' })), near: secondSet },
  'rubber-with-stick': {
    breaks: before('pw take-off G-21 #1', 'pw brush conductor-b #2'),
    near: before('pw take-off G-21 #1', 'pw dress-leads'),
  },
  'rubber-on-jumper': {
    breaks: before('pw take-off G-21 #1', 'pw bond-metal'),
    near: before('pw take-off G-21 #1', 'pw bond-line'),
  },
  'zone-before-work': { breaks: noBond, near: drop('pw tug conductor-b #2') },
  'metal-before-line': {
    breaks: swapped('pw bond-metal', 'pw bond-line'),
    near: drop('pw bond-line', 'pw unbond-line'),
  },
  'bare-pole-between': { breaks: noBond, near: drop('pw tug conductor-b #2') },
  'jumper-last-to-come-off': {
    breaks: drop('pw unbond-line', 'pw unbond-metal'),
    near: swapped('pw unbond-line', 'pw unbond-metal'),
  },
  'bond-off-line-first': {
    breaks: swapped('pw unbond-line', 'pw unbond-metal'),
    near: after('pw unbond-metal', 'pic call-clear #2'),
  },
  'off-in-reverse': {
    breaks: before('pw remove-guard lv-n', 'pw unclamp conductor-a'),
    near: swapped('pw remove-guard lv-n', 'pw remove-guard lv-b'),
  },
  'called-clear-off': { breaks: drop('pic call-clear #2'), near: before('pic call-clear #2', 'pw unbond-line') },
  'by-pole-worker': { breaks: by('gw', 'pw say-dead conductor-a'), near: by('gw', 'pw read-label E-07') },
}

describePack('multi-ground', 'clean-multi-ground', {
  ...sharedRows('multi-ground', office, isolation, ground, aloft, work, response, rating, nextPole, bucket, changes),
  ...own,
})
